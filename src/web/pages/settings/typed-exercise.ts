import type { Problem } from '#contract/problem.ts';
import {
  PATTERNS,
  QUALITIES,
  type BodySite,
  type CapacitySource,
  type Exercise,
  type ExerciseSubstitute,
  type Quality,
} from '#domain/catalogue.ts';
import { idOf, type ExerciseId } from '#domain/identity.ts';
import { chosenFrom, typedAmount, typedNumber, typedWords } from '../record/typed-values.ts';
import { CARRIED_AT, isShareModel } from './exercise-words.ts';
import { linesOf, spellingsOf } from './typed-lines.ts';

export interface TypedSubstitute {
  readonly key: string;
  readonly exercise: string;
  readonly covers: Readonly<Record<Quality, string>>;
}

/** An exercise as text, the way it stands in the fields. */
export interface TypedExercise {
  readonly name: string;
  readonly alsoKnownAs: string;
  readonly pattern: string;
  readonly bodyPart: string;
  readonly perSide: string;
  readonly shareModel: string;
  readonly carriedAt: string;
  readonly loads: readonly BodySite[];
  readonly machineKinds: Exercise['machineKinds'];
  readonly capacity: string;
  readonly repetitions: string;
  readonly ratioTo: string;
  readonly ratio: string;
  readonly roundKg: string;
  readonly roundLb: string;
  readonly seconds: string;
  readonly cues: string;
  readonly faults: string;
  readonly cautions: string;
  readonly settingFields: string;
  readonly substitutes: readonly TypedSubstitute[];
  readonly source: string;
}

/** Keys of the fields that hold one text each. */
export type TextOfExercise = Exclude<keyof TypedExercise, 'loads' | 'machineKinds' | 'substitutes'>;

const EMPTY: TypedExercise = {
  name: '',
  alsoKnownAs: '',
  pattern: PATTERNS[0],
  bodyPart: 'lower body',
  perSide: 'no',
  shareModel: 'none',
  carriedAt: 'none',
  loads: [],
  machineKinds: [],
  capacity: 'none',
  repetitions: '',
  ratioTo: '',
  ratio: '',
  roundKg: '2.5',
  roundLb: '5',
  seconds: '4',
  cues: '',
  faults: '',
  cautions: '',
  settingFields: '',
  substitutes: [],
  source: '',
};

export const typedExerciseOf = (exercise: Exercise | null): TypedExercise => {
  if (exercise === null) return EMPTY;
  const { capacity, roundTo } = exercise;
  return {
    name: exercise.name,
    alsoKnownAs: exercise.alsoKnownAs.join('\n'),
    pattern: exercise.pattern,
    bodyPart: exercise.bodyPart,
    perSide: exercise.perSide ? 'yes' : 'no',
    shareModel: exercise.shareModel,
    carriedAt: exercise.carriedAt,
    loads: exercise.loads,
    machineKinds: exercise.machineKinds,
    capacity: capacity.kind,
    repetitions: capacity.kind === 'repetition maximum' ? String(capacity.of) : '',
    ratioTo: capacity.kind === 'ratio' ? capacity.to : '',
    ratio: capacity.kind === 'ratio' ? String(capacity.ratio) : '',
    roundKg: roundTo.kg,
    roundLb: roundTo.lb,
    seconds: String(exercise.secondsPerRepetition),
    cues: exercise.cues.join('\n'),
    faults: exercise.faults.join('\n'),
    cautions: exercise.cautions.join('\n'),
    settingFields: exercise.settingFields.join('\n'),
    substitutes: exercise.substitutes.map(typedSubstituteOf),
    source: exercise.source,
  };
};

const typedSubstituteOf = ({ exercise, covers }: ExerciseSubstitute): TypedSubstitute => ({
  key: exercise,
  exercise,
  covers: coversAs((quality) => (covers[quality] === undefined ? '' : String(covers[quality]))),
});

const coversAs = (text: (quality: Quality) => string): TypedSubstitute['covers'] => ({
  strength: text('strength'),
  power: text('power'),
  aerobic: text('aerobic'),
  impact: text('impact'),
  grip: text('grip'),
});

/** A substitute that is not chosen yet. */
export const emptySubstitute = (key: string): TypedSubstitute => ({ key, exercise: '', covers: coversAs(() => '') });

/** A copy begins without name and spellings: those stand for the exercise that it was copied from. */
export const copyOf = (exercise: Exercise): TypedExercise => ({
  ...typedExerciseOf(exercise),
  name: '',
  alsoKnownAs: '',
  source: `Copied from ${exercise.name.toLowerCase()}: ${exercise.source}`,
});

type Known = readonly { readonly id: ExerciseId }[];

/** The exercise that the fields come to, or null with every problem said. */
export const exerciseOf = (
  typed: TypedExercise,
  id: ExerciseId | null,
  known: Known,
  problems: Problem[],
): Exercise | null => {
  const name = typedWords(typed.name, 'entry.exercise.name', problems);
  const capacity = capacityOf(typed, known, problems);
  const kg = typedAmount(typed.roundKg, '', 'entry.exercise.roundTo.kg', problems);
  const lb = typedAmount(typed.roundLb, '', 'entry.exercise.roundTo.lb', problems);
  const seconds = typedNumber(typed.seconds, 'entry.exercise.secondsPerRepetition', problems);
  const substitutes = substitutesOf(typed.substitutes, known, problems);
  const pattern = PATTERNS.find((each) => each === typed.pattern);
  const carriedAt = CARRIED_AT.find((each) => each === typed.carriedAt);
  const { shareModel } = typed;
  if (!pattern || !carriedAt || !isShareModel(shareModel)) return null;
  if (name === null || capacity === null || kg === null || lb === null || seconds === null || substitutes === null)
    return null;
  return {
    id: id ?? identityFor(name, known),
    name,
    alsoKnownAs: spellingsOf(typed.alsoKnownAs),
    pattern,
    bodyPart: typed.bodyPart === 'upper body' ? 'upper body' : 'lower body',
    perSide: typed.perSide === 'yes',
    shareModel,
    carriedAt,
    loads: typed.loads,
    capacity,
    roundTo: { kg: kg.text, lb: lb.text },
    secondsPerRepetition: seconds,
    cues: linesOf(typed.cues),
    faults: linesOf(typed.faults),
    cautions: linesOf(typed.cautions),
    settingFields: linesOf(typed.settingFields),
    machineKinds: typed.machineKinds,
    substitutes,
    source: typed.source.trim(),
  };
};

const capacityOf = (typed: TypedExercise, known: Known, problems: Problem[]): CapacitySource | null => {
  switch (typed.capacity) {
    case 'repetition maximum': {
      const of = typedNumber(typed.repetitions, 'entry.exercise.capacity.of', problems);
      return of === null ? null : { kind: 'repetition maximum', of };
    }
    case 'ratio': {
      const to = chosenFrom(known, typed.ratioTo, 'entry.exercise.capacity.to', problems);
      const ratio = typedNumber(typed.ratio, 'entry.exercise.capacity.ratio', problems);
      return to === null || ratio === null ? null : { kind: 'ratio', to: to.id, ratio };
    }
    case 'one-repetition maximum':
      return { kind: 'one-repetition maximum' };
    default:
      return { kind: 'none' };
  }
};

const substitutesOf = (
  typed: readonly TypedSubstitute[],
  known: Known,
  problems: Problem[],
): readonly ExerciseSubstitute[] | null => {
  const read = typed.flatMap(({ exercise, covers }, place): readonly ExerciseSubstitute[] => {
    const at = `entry.exercise.substitutes.${place}`;
    const chosen = chosenFrom(known, exercise, `${at}.exercise`, problems);
    const rated = QUALITIES.filter((quality) => covers[quality].trim() !== '').map(
      (quality) => [quality, typedNumber(covers[quality], `${at}.covers.${quality}`, problems)] as const,
    );
    if (chosen === null || rated.some(([, value]) => value === null)) return [];
    return [{ exercise: chosen.id, covers: Object.fromEntries(rated) as ExerciseSubstitute['covers'] }];
  });
  return read.length === typed.length ? read : null;
};

/** An identity that can be read in an address: the name in small letters, with a number where that is taken. */
const identityFor = (name: string, known: Known): ExerciseId => {
  const plain = name
    .normalize('NFKD')
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '-')
    .replaceAll(/^-|-$/g, '')
    .slice(0, 80);
  const base = plain === '' ? 'exercise' : plain;
  const taken = new Set<string>(known.map(({ id }) => id));
  let [free, number] = [base, 1];
  while (taken.has(free)) free = `${base}-${(number += 1)}`;
  return idOf(free);
};

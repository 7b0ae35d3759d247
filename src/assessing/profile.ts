import type { Day } from '#units/day.ts';
import { numberOf } from '#units/entered.ts';
import { STANDARD_GRAVITY } from '#units/gravity.ts';
import { kilograms } from '#units/quantity.ts';
import type { Side } from '#domain/effort.ts';
import type { Fact } from '#domain/fact.ts';
import type { FactId } from '#domain/identity.ts';
import { ofKind, type Known } from '#domain/known.ts';
import { newtonsOf, type Test } from '#domain/tested.ts';
import { uptakePercentile } from '#science/aerobic/uptake-percentile.ts';
import { gripScore } from '#science/hand/grip-score.ts';
import { HEEL_RAISE_NORM } from '#science/standards/heel-raise-norm.table.ts';
import { symmetryScore } from '#science/return/recovery-score.ts';

export type ProfileQuality = 'aerobic' | 'calf' | 'grip';

/** One line of a person's profile: a test against a norm, the other side, or the person's own past. */
export interface ProfileLine {
  readonly quality: ProfileQuality;
  readonly against: 'norm' | 'other side' | 'own past';
  readonly standing: 'low' | 'fine';
  readonly says: string;
  readonly facts: readonly FactId[];
  /** What the line is drawn by. */
  readonly source: string;
}

/** Strengths and weaknesses as tests beside lifts show them on a day. What was never tested has no line. */
export const profileOn = (known: Known, on: Day): readonly ProfileLine[] => {
  const tests = ofKind(known, 'tested').filter(({ day }) => day <= on);
  return [...aerobicLines(known, tests, on), ...calfLines(tests), ...gripLines(known, tests, on)];
};

type TestFact = Fact<'tested'>;
type Reading = { readonly value: number; readonly fact: TestFact };

/** Readings of one kind, oldest first; of one day in order of entry. */
const readings = (tests: readonly TestFact[], read: (test: Test) => number | null): readonly Reading[] =>
  tests
    .flatMap((fact) => {
      const value = read(fact.test);
      return value === null ? [] : [{ value, fact }];
    })
    .toSorted((a, b) => a.fact.day - b.fact.day);

const DAYS_PER_YEAR = 365.25;
const ageOn = ({ birthDate }: Known, on: Day): number | null =>
  birthDate === null ? null : Math.floor((on - birthDate) / DAYS_PER_YEAR);

const MEDIAN = 50;
/** Twice the usual error of a test of oxygen uptake (3 %), rounded: a smaller fall is not told from noise; our own line. */
const UPTAKE_FALL = 0.06;

const aerobicLines = (known: Known, tests: readonly TestFact[], on: Day): readonly ProfileLine[] => {
  const all = readings(tests, (test) => (test.what === 'greatest oxygen uptake' ? numberOf(test.value) : null));
  const newest = all.at(-1);
  if (!newest) return [];
  return [...uptakeNorm(known, newest, on), ...fallen('aerobic', all, UPTAKE_FALL, 'greatest oxygen uptake')];
};

const uptakeNorm = (known: Known, { value, fact }: Reading, on: Day): readonly ProfileLine[] => {
  const age = ageOn(known, on);
  const standing = age === null ? null : uptakePercentile(known.sex, age, value);
  if (standing === null || standing.kind === 'refused') return [];
  const percentile = standing.kind === 'percentile' ? standing.value : standing.percentile;
  const where =
    standing.kind === 'percentile'
      ? `at the ${Math.round(percentile)}th percentile`
      : `${standing.kind} the ${Math.round(percentile)}th percentile`;
  return [
    {
      quality: 'aerobic',
      against: 'norm',
      standing: percentile < MEDIAN ? 'low' : 'fine',
      says: `Greatest oxygen uptake ${value} mL/(kg min) stands ${where} of ${known.sex} people of ${age} years.`,
      facts: [fact.id],
      source: 'Kaminsky 2015; the line at the median is our own.',
    },
  ];
};

/** A newest value that has fallen by more than the error of the test against the person's own best. */
const fallen = (quality: ProfileQuality, all: readonly Reading[], by: number, what: string): readonly ProfileLine[] => {
  const [newest, before] = [all.at(-1), all.slice(0, -1)];
  if (!newest || before.length === 0) return [];
  const best = before.reduce((most, each) => (each.value > most.value ? each : most));
  const fall = 1 - newest.value / best.value;
  if (fall <= by) return [];
  return [
    {
      quality,
      against: 'own past',
      standing: 'low',
      says: `${what.charAt(0).toUpperCase()}${what.slice(1)} has fallen ${Math.round(fall * 100)} % from this person's own best.`,
      facts: [best.fact.id, newest.fact.id],
      source: 'A fall larger than the error of the test; the line is our own.',
    },
  ];
};

const SIDES = ['left', 'right'] as const satisfies readonly Side[];

const newestOf = (
  tests: readonly TestFact[],
  side: Side,
  read: (test: Test, side: Side) => number | null,
): Reading | null => readings(tests, (test) => read(test, side)).at(-1) ?? null;

const heelRaises = (test: Test, side: Side): number | null =>
  test.what === 'heel raises' && test.side === side ? numberOf(test.value) : null;

const calfLines = (tests: readonly TestFact[]): readonly ProfileLine[] => {
  const newest = SIDES.flatMap((side) => {
    const reading = newestOf(tests, side, heelRaises);
    return reading ? [{ side, ...reading }] : [];
  });
  const [norm] = HEEL_RAISE_NORM.rows;
  const byNorm = newest.map(({ side, value, fact }): ProfileLine => ({
    quality: 'calf',
    against: 'norm',
    standing: norm && value < norm.repetitions ? 'low' : 'fine',
    says: `${value} single-leg heel raises on the ${side}; ${norm?.repetitions ?? 0} are usual.`,
    facts: [fact.id],
    source: HEEL_RAISE_NORM.record.source.text,
  }));
  return [...byNorm, ...unlikeSides('calf', 'Single-leg heel raises', newest)];
};

/** Sides that differ by more than a tenth are looked at; common practice, no source. */
const LEAST_SYMMETRY = 90;

const unlikeSides = (
  quality: ProfileQuality,
  what: string,
  sides: readonly (Reading & { readonly side: Side })[],
): readonly ProfileLine[] => {
  const [left, right] = sides;
  if (!left || !right) return [];
  const symmetry = symmetryScore(left.value, right.value);
  if (!Number.isFinite(symmetry)) return [];
  const weaker = left.value < right.value ? left.side : right.side;
  return [
    {
      quality,
      against: 'other side',
      standing: symmetry < LEAST_SYMMETRY ? 'low' : 'fine',
      says: `${what}: ${Math.round(symmetry)} % symmetry${symmetry < LEAST_SYMMETRY ? `, the ${weaker} is the weaker` : ''}.`,
      facts: [left.fact.id, right.fact.id],
      source: 'A tenth between sides: common practice, no source.',
    },
  ];
};

const grip = (test: Test, side: Side): number | null =>
  test.what === 'greatest grip' && test.side === side ? newtonsOf(test.value) : null;

/** Lower than this among people of the same age and sex; our own line. */
const LOW_GRIP = -1;

const gripLines = (known: Known, tests: readonly TestFact[], on: Day): readonly ProfileLine[] => {
  const age = ageOn(known, on);
  const newest = SIDES.flatMap((side) => {
    const reading = newestOf(tests, side, grip);
    return reading ? [{ side, ...reading }] : [];
  });
  const byNorm = newest.flatMap(({ side, value, fact }): readonly ProfileLine[] => {
    if (age === null) return [];
    const inKilograms = kilograms(value / STANDARD_GRAVITY);
    const score = gripScore({ sex: known.sex, age, side, grip: inKilograms, from: 'best of three' });
    if (score.kind === 'refused') return [];
    return [
      {
        quality: 'grip',
        against: 'norm',
        standing: score.value < LOW_GRIP ? 'low' : 'fine',
        says: `Greatest grip of the ${side} hand ${Math.round(inKilograms)} kg, ${showScore(score.value)} among ${score.group}.`,
        facts: [fact.id],
        source: 'Mathiowetz 1985; the line at one standard deviation is our own.',
      },
    ];
  });
  return [...byNorm, ...unlikeSides('grip', 'Greatest grip', newest)];
};

const showScore = (score: number): string =>
  `${Math.abs(score).toFixed(1)} standard deviations ${score < 0 ? 'under' : 'over'} the mean`;

import type { Problem } from '#contract/problem.ts';
import type { BodySite } from '#domain/catalogue.ts';
import type { Effort, Side } from '#domain/effort.ts';
import type { FactBody, SetResult } from '#domain/fact.ts';
import type { CardId, ItemId, PersonId, SetId } from '#domain/identity.ts';
import type { Day } from '#units/day.ts';
import { decimalOf } from '#units/entered.ts';
import type { MassUnit } from '#units/mass.ts';
import { asTyped } from '../../parts/loads.ts';

/** One set as it is being typed. Empty repetitions: it was not done. */
export interface SetDraft {
  readonly repetitions: string;
  readonly load: string;
  readonly effort: string;
}

/** A work set of an issued card, as planned. */
export interface PlannedSet {
  readonly id: SetId;
  readonly name: string;
  readonly item: ItemId;
  readonly place: number;
  readonly side: Side | null;
  readonly repetitions: number;
  /** Decimal in the machine's unit. */
  readonly load: string;
  readonly unit: MassUnit;
}

export interface HurtDraft {
  readonly site: string;
  readonly side: string;
  readonly score: string;
  readonly when: 'during' | 'next morning';
  readonly item: string;
}

export interface ResultsDraft {
  readonly sets: Readonly<Record<string, SetDraft>>;
  readonly effortAs: Effort['kind'];
  readonly hurts: readonly HurtDraft[];
  readonly note: string;
  readonly noteOn: string;
  readonly sessionRpe: string;
  readonly minutes: string;
}

export interface ResultsOf {
  readonly person: PersonId;
  readonly day: Day;
  readonly card: CardId;
  readonly sets: readonly PlannedSet[];
}

export type ResultsReading =
  | { readonly kind: 'bodies'; readonly trained: FactBody | null; readonly beside: readonly FactBody[] }
  | { readonly kind: 'problems'; readonly problems: readonly Problem[] };

const wrong = (field: string, what: string, whatToDo: string): Problem => ({ field, what, why: '', whatToDo });

interface Read {
  readonly value: number | null;
  readonly problems: readonly Problem[];
}

/** A number in its range, or nothing where nothing was typed. */
const numberIn = (field: string, name: string, text: string, [low, high]: readonly [number, number]): Read => {
  if (text.trim() === '') return { value: null, problems: [] };
  const value = decimalOf(asTyped(text));
  return value === null || value < low || value > high
    ? {
        value: null,
        problems: [wrong(field, `${name}: “${text}” is no number from ${low} to ${high}.`, 'Type it again.')],
      }
    : { value, problems: [] };
};

const MOST_REPETITIONS = 1000;
const MOST_MINUTES = 1440;

const repetitionsOf = (field: string, name: string, text: string): Read => {
  const read = numberIn(field, name, text, [0, MOST_REPETITIONS]);
  return read.value === null || Number.isInteger(read.value)
    ? read
    : { value: null, problems: [wrong(field, `${name}: repetitions are whole numbers.`, 'Leave the broken one out.')] };
};

type SetReading = { readonly results: readonly SetResult[]; readonly problems: readonly Problem[] };

const readSet = (set: PlannedSet, draft: SetDraft | undefined, effortAs: Effort['kind']): SetReading => {
  if (!draft || draft.repetitions.trim() === '') return { results: [], problems: [] };
  const name = `${set.name}, set ${set.place + 1}`;
  const repetitions = repetitionsOf(`set ${set.id} repetitions`, name, draft.repetitions);
  const effort = numberIn(`set ${set.id} effort`, name, draft.effort, effortAs === 'RPE' ? [1, 10] : [0, 10]);
  const load = asTyped(draft.load === '' ? set.load : draft.load);
  const loadProblems =
    (decimalOf(load) ?? -1) < 0
      ? [
          wrong(
            `set ${set.id} load`,
            `${name}: “${draft.load}” is no load.`,
            'Type it as the machine showed it, such as 270.',
          ),
        ]
      : [];
  const problems = [...repetitions.problems, ...effort.problems, ...loadProblems];
  if (problems.length > 0 || repetitions.value === null) return { results: [], problems };
  return {
    results: [
      {
        set: set.id,
        repetitions: repetitions.value,
        load: { text: load, unit: set.unit },
        effort: effort.value === null ? null : { kind: effortAs, value: effort.value },
        side: set.side,
      },
    ],
    problems,
  };
};

type HurtReading = { readonly bodies: readonly FactBody[]; readonly problems: readonly Problem[] };

const readHurt = ({ person, day, card }: ResultsOf, draft: HurtDraft, place: number): HurtReading => {
  const score = numberIn(`hurt ${place}`, 'Discomfort', draft.score, [0, 10]);
  const missing =
    draft.site === '' || draft.score.trim() === ''
      ? [wrong(`hurt ${place}`, 'Discomfort needs its site and its number.', 'Choose where, and type 0 to 10.')]
      : [];
  const problems = [...score.problems, ...missing];
  if (problems.length > 0 || score.value === null) return { bodies: [], problems };
  return {
    bodies: [
      {
        kind: 'hurt',
        person,
        day,
        card,
        item: draft.item === '' ? null : (draft.item as ItemId),
        site: draft.site as BodySite,
        side: draft.side === '' ? null : (draft.side as Side),
        score: score.value,
        when: draft.when,
      },
    ],
    problems,
  };
};

const noteOf = ({ person, day, card }: ResultsOf, { note, noteOn }: ResultsDraft): readonly FactBody[] =>
  note.trim() === ''
    ? []
    : [{ kind: 'noted', person, day, card, item: noteOn === '' ? null : (noteOn as ItemId), text: note.trim() }];

/** What was typed as facts, or everything that is wrong with it at once. */
export const readResults = (of: ResultsOf, draft: ResultsDraft): ResultsReading => {
  const sets = of.sets.map((set) => readSet(set, draft.sets[set.id], draft.effortAs));
  const hurts = draft.hurts.map((hurt, place) => readHurt(of, hurt, place));
  const sessionRpe = numberIn('sessionRpe', 'Whole-session RPE', draft.sessionRpe, [0, 10]);
  const minutes = numberIn('minutes', 'Minutes', draft.minutes, [0, MOST_MINUTES]);
  const problems = [...sets, ...hurts, sessionRpe, minutes].flatMap((read) => read.problems);
  if (problems.length > 0) return { kind: 'problems', problems };
  const results = sets.flatMap((set) => set.results);
  const { person, day, card } = of;
  const trained: FactBody | null =
    results.length > 0
      ? {
          kind: 'trained',
          person,
          day,
          card,
          sets: results,
          pieces: [],
          sessionRpe: sessionRpe.value,
          minutes: minutes.value,
        }
      : null;
  const beside = [...hurts.flatMap((hurt) => hurt.bodies), ...noteOf(of, draft)];
  if (!trained && beside.length === 0)
    return {
      kind: 'problems',
      problems: [wrong('sets', 'Nothing was typed.', 'Type the repetitions of at least one set, or a note.')],
    };
  return { kind: 'bodies', trained, beside };
};

import type { Problem } from '#contract/problem.ts';
import type { BodySite } from '#domain/catalogue.ts';
import type { Effort, Side } from '#domain/effort.ts';
import type { FactBody, PieceResult, SetResult } from '#domain/fact.ts';
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
  /** "6", "6–8", "6+". */
  readonly asks: string;
  /** The card leaves it open how many, or whether at all. */
  readonly isOpen: boolean;
  /** Decimal in the machine's unit. */
  readonly load: string;
  readonly unit: MassUnit;
}

/** What was done of bouts or a drill, as it is being typed. Nothing done: nothing is recorded of it. */
export interface PieceDraft {
  readonly done: string;
  readonly minutes: string;
  readonly watts: string;
  readonly speed: string;
  readonly harness: string;
  readonly heartRate: string;
  readonly effort: string;
}

/** Bouts or a drill of an issued card, and what is to be written down of them. */
export interface PlannedPiece {
  readonly item: ItemId;
  readonly name: string;
  readonly kind: 'bouts' | 'drill';
  readonly planned: string;
  readonly of: number;
  readonly asks: readonly (keyof PieceDraft)[];
  /** Of the harness. */
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
  readonly pieces: Readonly<Record<string, PieceDraft>>;
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
  readonly pieces: readonly PlannedPiece[];
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
const MOST_LOAD = 1000;

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

type PieceReading = { readonly results: readonly PieceResult[]; readonly problems: readonly Problem[] };

const MOST_WATTS = 3000;
const MOST_SPEED = 100;
const HEART_RATES = [20, 260] as const;

const readPiece = (piece: PlannedPiece, draft: PieceDraft | undefined): PieceReading => {
  if (!draft || Object.values(draft).every((text: string) => text.trim() === '')) return { results: [], problems: [] };
  const at = (field: keyof PieceDraft): string => `piece ${piece.item} ${field}`;
  const read = (field: keyof PieceDraft, range: readonly [number, number]): Read =>
    numberIn(at(field), piece.name, draft[field], range);
  const done =
    draft.done.trim() === ''
      ? { value: null, problems: [wrong(at('done'), `${piece.name}: how much was done?`, `Type 0 to ${piece.of}.`)] }
      : repetitionsOf(at('done'), piece.name, draft.done);
  const minutes = read('minutes', [0, MOST_MINUTES]);
  const watts = read('watts', [0, MOST_WATTS]);
  const speed = read('speed', [0, MOST_SPEED]);
  const harness = read('harness', [0, MOST_LOAD]);
  const heartRate = read('heartRate', HEART_RATES);
  const effort = read('effort', [1, 10]);
  const problems = [done, minutes, watts, speed, harness, heartRate, effort].flatMap((each) => each.problems);
  if (problems.length > 0 || done.value === null) return { results: [], problems };
  const result: PieceResult = {
    item: piece.item,
    done: done.value,
    minutes: minutes.value,
    watts: watts.value,
    speed: speed.value,
    harness: harness.value === null ? null : { text: asTyped(draft.harness), unit: piece.unit },
    heartRate: heartRate.value,
    effort: effort.value === null ? null : { kind: 'RPE', value: effort.value },
  };
  return { results: [result], problems };
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
  const pieces = of.pieces.map((piece) => readPiece(piece, draft.pieces[piece.item]));
  const hurts = draft.hurts.map((hurt, place) => readHurt(of, hurt, place));
  const sessionRpe = numberIn('sessionRpe', 'Whole-session RPE', draft.sessionRpe, [0, 10]);
  const minutes = numberIn('minutes', 'Minutes', draft.minutes, [0, MOST_MINUTES]);
  const problems = [...sets, ...pieces, ...hurts, sessionRpe, minutes].flatMap((read) => read.problems);
  if (problems.length > 0) return { kind: 'problems', problems };
  const results = sets.flatMap((set) => set.results);
  const done = pieces.flatMap((piece) => piece.results);
  const { person, day, card } = of;
  const trained: FactBody | null =
    results.length > 0 || done.length > 0
      ? {
          kind: 'trained',
          person,
          day,
          card,
          sets: results,
          pieces: done,
          sessionRpe: sessionRpe.value,
          minutes: minutes.value,
        }
      : null;
  const beside = [...hurts.flatMap((hurt) => hurt.bodies), ...noteOf(of, draft)];
  if (!trained && beside.length === 0)
    return {
      kind: 'problems',
      problems: [wrong('sets', 'Nothing was typed.', 'Type what was done of at least one item, or a note.')],
    };
  return { kind: 'bodies', trained, beside };
};

import { z } from 'zod';
import type { ExerciseId } from '#domain/identity.ts';
import { idOf } from '#domain/identity.ts';

/** One cell as it stood in the file. A date cell of a workbook is written as an ISO date. */
export interface Cell {
  readonly text: string;
  readonly is: 'text' | 'number' | 'date' | 'yes or no' | 'error';
  /** The value came from a formula of the workbook; the formula itself was never run. */
  readonly formula: boolean;
}

/** A row that holds something, with its number in the file. */
export interface SheetRow {
  readonly number: number;
  readonly cells: readonly Cell[];
}

/** Cells drawn as one: rows as numbered in the file, columns counted from 0. */
export interface Merge {
  readonly top: number;
  readonly bottom: number;
  readonly left: number;
  readonly right: number;
}

export interface Sheet {
  /** Empty for a text file. */
  readonly name: string;
  /** Without blank rows. */
  readonly rows: readonly SheetRow[];
  readonly merged: readonly Merge[];
  /** What is wrong with its cells as such, whatever they mean. */
  readonly issues: readonly Issue[];
}

export interface ColumnPlace {
  readonly letter: string;
  readonly header: string;
}

/** Something about the file that a person must know. Only what is refused keeps the file out. */
export interface Issue {
  readonly kind: 'refused' | 'odd' | 'passed over';
  readonly what: string;
  readonly why: string;
  readonly whatToDo: string;
  readonly row: number | null;
  readonly column: ColumnPlace | null;
  /** The place as it is said: row 7, column D “Back squat 5RM (lb)”. */
  readonly where: string;
}

export type TableReading =
  | {
      readonly kind: 'read';
      readonly fileName: string;
      readonly format: 'CSV' | 'XLSX';
      /** How the text was read, such as "semicolons, UTF-8"; empty for a workbook. */
      readonly how: string;
      readonly sheets: readonly Sheet[];
      /** What holds for the whole file. */
      readonly issues: readonly Issue[];
    }
  | { readonly kind: 'refused'; readonly fileName: string; readonly issues: readonly Issue[] };

const massUnit = z.enum(['kg', 'lb']).nullable();
const side = z.enum(['left', 'right']).nullable();
const exercise = z.string().min(1).max(80).transform<ExerciseId>(idOf);

/** How the number of a column stands to what one repetition lifts. */
export const COUNTINGS = ['total', 'per side', 'per hand', 'both sides added'] as const;
export type Counting = (typeof COUNTINGS)[number];
const counted = z.enum(COUNTINGS).nullable();

const PLAIN_MEANINGS = [
  'left out',
  'name',
  'given name',
  'family name',
  'date',
  'exercise',
  'unit',
  'repetitions',
  'RPE',
  'repetitions in reserve',
  'side',
  'machine',
  'site',
  'birth date',
  'sex',
  'training age',
  'mission',
  'role',
  'team',
  'launch',
  'landing',
  'latest landing',
] as const;
/** A meaning that needs no further word. */
export type PlainMeaning = (typeof PLAIN_MEANINGS)[number];

/** What a column of the file means. `null` inside: the file does not say, so it is asked. */
export const columnMeaning = z.discriminatedUnion('is', [
  z.strictObject({ is: z.enum(PLAIN_MEANINGS) }),
  z.strictObject({ is: z.literal('load'), unit: massUnit, counted }),
  z.strictObject({
    is: z.literal('lift'),
    exercise,
    /** Repetitions that the header states, as 5 in "5RM". */
    repetitions: z.number().int().min(1).max(30).nullable(),
    unit: massUnit,
    counted,
    side,
  }),
  z.strictObject({ is: z.literal('body mass'), unit: massUnit }),
  z.strictObject({ is: z.literal('stature'), unit: z.enum(['cm', 'm', 'in']).nullable() }),
]);

/** A matching by hand. What it leaves out is matched by name. */
export const matchingByHand = z.strictObject({
  sheet: z.string().max(200).nullable(),
  headerRow: z.number().int().min(1).nullable(),
  /** By column letter, as in the file. */
  columns: z.record(z.string().regex(/^[A-Z]{1,3}$/), columnMeaning),
});

/** Answers by the id of their question. */
export const bringInAnswers = z.record(z.string().max(300), z.string().max(300));

export type ColumnMeaning = z.infer<typeof columnMeaning>;
export type MatchingByHand = z.infer<typeof matchingByHand>;
export type BringInAnswers = z.infer<typeof bringInAnswers>;

export interface MatchedColumn {
  readonly letter: string;
  readonly header: string;
  readonly meaning: ColumnMeaning;
  readonly by: 'its header' | 'hand' | 'nothing';
  readonly examples: readonly string[];
}

export interface Matching {
  readonly sheet: string;
  readonly headerRow: number | null;
  readonly columns: readonly MatchedColumn[];
}

export type QuestionSubject =
  | 'sheet'
  | 'date order'
  | 'day'
  | 'unit'
  | 'counting'
  | 'repetitions'
  | 'machine'
  | 'exercise'
  | 'rows without a name'
  | 'person'
  | 'sex'
  | 'unlikely load'
  | 'role'
  | 'site'
  | 'mission dates'
  | 'assignment';

/** Something that the file does not say and nobody may guess. */
export interface Question {
  readonly id: string;
  readonly about: QuestionSubject;
  readonly asks: string;
  readonly because: string;
  readonly row: number | null;
  readonly column: ColumnPlace | null;
  readonly where: string;
  /** Values of the file that the answer decides about. */
  readonly examples: readonly string[];
  readonly choices: readonly { readonly answer: string; readonly says: string }[];
  /** What may be typed beside the choices. */
  readonly typed: 'a day such as 2026-03-01' | 'a number of repetitions' | null;
  readonly suggested: string | null;
  /** The answer that was given and stands; null while the question is open. */
  readonly answer: string | null;
}

export interface PreviewLine {
  readonly rows: readonly number[];
  readonly says: string;
}

export interface PreviewPerson {
  readonly name: string;
  readonly isNew: boolean;
  readonly tests: number;
  readonly measurements: number;
  readonly lines: readonly PreviewLine[];
}

/** What would be recorded, and what would not. */
export interface Preview {
  readonly people: readonly PreviewPerson[];
  readonly missions: readonly PreviewLine[];
  readonly totals: {
    readonly people: number;
    readonly newPeople: number;
    readonly tests: number;
    readonly measurements: number;
    readonly missions: number;
    readonly facts: number;
  };
  readonly passedOver: readonly Issue[];
}

/** All that a screen needs of a bring-in under way. */
export interface BringInWindow {
  readonly matching: Matching;
  /** Open ones first. */
  readonly questions: readonly Question[];
  /** What is refused and what is odd, in order of the file. */
  readonly problems: readonly Issue[];
  readonly preview: Preview;
  /** No question is open, nothing is refused, and there is something to record. */
  readonly ready: boolean;
}

import { ADAPTATION } from './adaptation/chapters.ts';
import { AEROBIC } from './aerobic/chapters.ts';
import { BODY } from './body/chapters.ts';
import { BONE } from './bone/chapters.ts';
import type { Chapter, Part } from './chapter.ts';
import type { Check } from './check.ts';
import { CABIN } from './cabin/chapters.ts';
import { CRITICAL_POWER } from './critical-power/chapters.ts';
import { CROSSING } from './crossing/chapters.ts';
import { ESTIMATION } from './estimation/chapters.ts';
import { DOSE } from './dose/chapters.ts';
import type { AnyFormula, EntryRecord, Source } from './formula.ts';
import { HAND } from './hand/chapters.ts';
import { JUMP } from './jump/chapters.ts';
import type { AnyMethod } from './method.ts';
import { RESUMING } from './resuming/chapters.ts';
import { RETURN } from './return/chapters.ts';
import { NOVICE } from './novice/chapters.ts';
import { PROJECTION } from './projection/chapters.ts';
import { LOAD } from './load/chapters.ts';
import type { AnyTable } from './sourced-table.ts';
import { SCHEDULING } from './scheduling/chapters.ts';
import { STANDARDS } from './standards/chapters.ts';
import { STRENGTH } from './strength/chapters.ts';
import { VELOCITY } from './velocity/chapters.ts';

/** Everything that has a record, in the order of a textbook: the door of this folder. */
export const PARTS: readonly Part[] = [
  STRENGTH,
  BODY,
  CROSSING,
  ESTIMATION,
  BONE,
  STANDARDS,
  JUMP,
  VELOCITY,
  ADAPTATION,
  NOVICE,
  AEROBIC,
  CRITICAL_POWER,
  HAND,
  RETURN,
  PROJECTION,
  SCHEDULING,
  CABIN,
  DOSE,
  RESUMING,
  LOAD,
];

export const ALL_CHAPTERS: readonly Chapter[] = PARTS.flatMap(({ chapters }) => chapters);
export const ALL_FORMULAS: readonly AnyFormula[] = ALL_CHAPTERS.flatMap(({ formulas }) => formulas ?? []);
export const ALL_METHODS: readonly AnyMethod[] = ALL_CHAPTERS.flatMap(({ methods }) => methods ?? []);
export const ALL_TABLES: readonly AnyTable[] = ALL_CHAPTERS.flatMap(({ tables }) => tables ?? []);
export const ALL_CHECKS: readonly Check[] = ALL_CHAPTERS.flatMap(({ checks }) => checks);

export const ALL_RECORDS: readonly EntryRecord[] = [...ALL_FORMULAS, ...ALL_METHODS, ...ALL_TABLES].map(
  ({ record }) => record,
);

/** Every source that an entry or a check names, once, by its first author. */
export const ALL_SOURCES: readonly Source[] = [
  ...new Map(
    [
      ...ALL_RECORDS.flatMap(({ source, restsOn = [] }) => [source, ...restsOn]),
      ...ALL_CHECKS.map(({ source }) => source),
    ].map((source) => [source.text, source] as const),
  ).values(),
].toSorted((a, b) => (a.text < b.text ? -1 : 1));

import { z } from 'zod';
import { listUpTo } from '../facts/lists.schema.ts';
import { calendarDay, wholeFrom } from '../facts/numbers.schema.ts';
import { programmePhase, programmeVersion } from '../facts/programme.schema.ts';
import { identity } from '../facts/texts.schema.ts';
import type { PersonId, SignerId } from '#domain/identity.ts';

const { programme, name, follows } = programmeVersion.shape;

const MOST_PHASES = 50;
const phases = listUpTo(MOST_PHASES, programmePhase);

/** A programme as it was written, by the log's own rules: its number and identity are given when it is taken up. */
const draft = { programme, name, follows, phases };

const MOST_PEOPLE = 200;
const person = identity<PersonId>();

export const compareProgrammeRequest = z.strictObject({
  ...draft,
  /** The first day on which anybody would follow it. */
  from: calendarDay,
  /** Who would follow it; null: whoever follows the programme already. */
  people: z.array(person).max(MOST_PEOPLE).nullable(),
});

export const takeUpProgrammeRequest = z.strictObject({
  signer: identity<SignerId>(),
  ...draft,
  basis: wholeFrom(0, Number.MAX_SAFE_INTEGER),
  follow: z.array(z.strictObject({ person, from: calendarDay })).max(MOST_PEOPLE),
});

export type CompareProgrammeRequest = z.infer<typeof compareProgrammeRequest>;
export type TakeUpProgrammeRequest = z.infer<typeof takeUpProgrammeRequest>;

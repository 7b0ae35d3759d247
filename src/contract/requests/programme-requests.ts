import { z } from 'zod';
import { listUpTo } from '../facts/lists.schema.ts';
import { calendarDay, wholeFrom } from '../facts/numbers.schema.ts';
import { programmePhase, programmeVersion } from '../facts/programme.schema.ts';
import { identity } from '../facts/texts.schema.ts';
import type { PersonId, ProgrammeId, ProgrammeVersionId, SignerId } from '#domain/identity.ts';
import type { ProgrammePhase } from '#domain/programme.ts';
import type { Day } from '#units/day.ts';

const { programme, name, follows } = programmeVersion.shape;

const MOST_PHASES = 50;
const phases = listUpTo(MOST_PHASES, programmePhase);

/** A programme as it was written, by the log's own rules: its number and identity are given when it is taken up. */
const draft = { programme, name, follows, phases };

const MOST_PEOPLE = 200;
const person = identity<PersonId>();

interface Draft {
  readonly programme: ProgrammeId;
  readonly name: string;
  readonly follows: ProgrammeVersionId | null;
  readonly phases: readonly ProgrammePhase[];
}

export interface CompareProgrammeRequest extends Draft {
  readonly from: Day;
  readonly people: readonly PersonId[] | null;
}

export interface TakeUpProgrammeRequest extends Draft {
  readonly signer: SignerId;
  readonly basis: number;
  readonly follow: readonly { readonly person: PersonId; readonly from: Day }[];
}

export const compareProgrammeRequest = z.strictObject({
  ...draft,
  /** The first day on which anybody would follow it. */
  from: calendarDay,
  /** Who would follow it; null: whoever follows the programme already. */
  people: z.array(person).max(MOST_PEOPLE).nullable(),
}) satisfies z.ZodType<CompareProgrammeRequest>;

export const takeUpProgrammeRequest = z.strictObject({
  signer: identity<SignerId>(),
  ...draft,
  basis: wholeFrom(0, Number.MAX_SAFE_INTEGER),
  follow: z.array(z.strictObject({ person, from: calendarDay })).max(MOST_PEOPLE),
}) satisfies z.ZodType<TakeUpProgrammeRequest>;

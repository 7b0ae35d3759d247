import type { Day } from '#units/day.ts';
import type { MissionDates } from '#domain/mission-day.ts';
import type { PersonId } from '#domain/identity.ts';

/** The line above every page of a person. */
export interface PersonHead {
  readonly id: PersonId;
  readonly name: string;
  readonly sex: 'female' | 'male';
  readonly age: number | null;
  readonly mission: (MissionDates & { readonly name: string; readonly role: 'prime' | 'backup' }) | null;
  /** "Skerry Station · flight day 23 of 182". */
  readonly dayLabel: string;
  /** Cards of the last 14 days whose day is past. */
  readonly reported: {
    readonly of: number;
    readonly done: number;
    readonly calledOff: number;
    readonly notHeard: number;
  };
  readonly bodyMass: { readonly text: string; readonly day: Day } | null;
  readonly stature: string | null;
  /** People in the order of the Desk: one key goes to the next. */
  readonly next: { readonly id: PersonId; readonly name: string } | null;
  readonly place: number;
  readonly ofPeople: number;
  readonly programme: string | null;
}

import { type Day, addDays } from '#units/day.ts';
import { momentOf } from '../moment.ts';
import { ANSELM, WEN_LI } from '../people.ts';
import { SPECIALIST } from '../signers.ts';
import { LINDQVIST_HALL } from '../skerry-station.ts';
import { type ScriptEntry, entry } from './script-entry.ts';

/** Days from today of a journey to another hall. */
const LEAVES = 2;
const BACK = 4;
/** Minutes from Monday to Sunday: two blocks of two hours, because the rest of the week is lessons. */
const TWO_BLOCKS = [0, 120, 0, 120, 0, 0, 0];

/** Who has when time for what: one travels to lighter bars and a rower, one has two blocks a week. */
export const calendarScript = (today: Day): readonly ScriptEntry[] => [
  entry('available anselm', momentOf(addDays(today, -1), '16:20'), SPECIALIST.id, {
    kind: 'available',
    person: ANSELM.id,
    from: today,
    until: null,
    minutes: TWO_BLOCKS,
  }),
  entry('stays wen-li', momentOf(addDays(today, -6), '11:10'), SPECIALIST.id, {
    kind: 'stays',
    person: WEN_LI.id,
    site: LINDQVIST_HALL.id,
    from: addDays(today, LEAVES),
    until: addDays(today, BACK),
  }),
  entry('set aside wen-li', momentOf(addDays(today, -6), '11:12'), SPECIALIST.id, {
    kind: 'set aside',
    person: WEN_LI.id,
    from: addDays(today, LEAVES),
    until: addDays(today, LEAVES),
    what: 'travel',
    minutes: 0,
    text: 'On the road all day.',
  }),
];

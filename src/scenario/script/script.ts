import type { Day } from '#units/day.ts';
import { byMoment } from '../moment.ts';
import { calendarScript } from './calendar-script.ts';
import { careScript } from './care-script.ts';
import { houseScript } from './house-script.ts';
import { limitScript } from './limit-script.ts';
import { massScript } from './mass-script.ts';
import { missionScript } from './mission-script.ts';
import { outageScript } from './outage-script.ts';
import { peopleScript } from './people-script.ts';
import type { Moment, ScriptEntry } from './script-entry.ts';
import { staminaScript } from './stamina-script.ts';
import { testScript } from './test-script.ts';
import { walkScript } from './walk-script.ts';

/** Everything that was entered before today and is no card and no answer to one: in order of time, moment by moment. */
export const scriptUntil = (today: Day, seed: number): readonly Moment[] => {
  const moments: [ScriptEntry, ...ScriptEntry[]][] = [];
  for (const entry of allEntries(today, seed).toSorted(byMoment)) {
    const last = moments.at(-1);
    if (last?.[0].at === entry.at) last.push(entry);
    else moments.push([entry]);
  }
  return moments;
};

const allEntries = (today: Day, seed: number): readonly ScriptEntry[] => [
  ...houseScript(today),
  ...missionScript(today),
  ...peopleScript(today),
  ...massScript(today),
  ...testScript(today, seed),
  ...careScript(today),
  ...limitScript(today),
  ...staminaScript(today, seed),
  ...outageScript(today),
  ...walkScript(today),
  ...calendarScript(today),
];

import type { ComparedSession } from '#contract/windows/comparison-window.ts';

/** Sessions that change in the same way, with the days on which they do. */
export interface GroupedSessions {
  readonly alike: ComparedSession;
  readonly days: readonly Pick<ComparedSession, 'day' | 'missionDay' | 'state'>[];
}

/** Week after week the same change is told once, where it happens first. */
export const groupedSessions = (sessions: readonly ComparedSession[]): readonly GroupedSessions[] => {
  const groups = new Map<string, { alike: ComparedSession; days: GroupedSessions['days'][number][] }>();
  for (const session of sessions) {
    const { day, missionDay, state, ...change } = session;
    const key = JSON.stringify(change);
    const group = groups.get(key);
    if (group) group.days.push({ day, missionDay, state });
    else groups.set(key, { alike: session, days: [{ day, missionDay, state }] });
  }
  return [...groups.values()];
};

/** "flight day 32, 39 and 46": what the days have in common is said once. */
export const missionDaysInWords = (days: readonly string[]): string => {
  const [first = '', ...others] = days;
  const stem = /^\D*/.exec(first)?.[0] ?? '';
  const isAlike = others.every((each) => each.startsWith(stem) && /^\d+$/.test(each.slice(stem.length)));
  const rest = others.map((each) => (isAlike ? each.slice(stem.length) : each));
  const last = rest.at(-1);
  return last === undefined ? first : `${[first, ...rest.slice(0, -1)].join(', ')} and ${last}`;
};

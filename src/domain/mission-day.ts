import { type Day, addDays } from '#units/day.ts';

/** When a mission starts and, where it is known, ends. A landing may be a range. */
export interface MissionDates {
  readonly launch: Day;
  readonly landing: { readonly earliest: Day; readonly latest: Day } | null;
}

/** A day that moves with the mission, or one that does not. */
export type Anchor = { readonly on: Day } | { readonly from: 'launch' | 'landing'; readonly days: number };

/** A place on the mission's own calendar. Launch day is flight day 1 (and L−0), landing day is R+0. */
export type MissionDay =
  | { readonly kind: 'before launch'; readonly daysToLaunch: number }
  | { readonly kind: 'in flight'; readonly flightDay: number }
  | { readonly kind: 'after landing'; readonly daysSinceLanding: number };

export const missionDay = ({ launch, landing }: MissionDates, on: Day): MissionDay => {
  if (on < launch) return { kind: 'before launch', daysToLaunch: launch - on };
  if (landing && on > landing.latest) return { kind: 'after landing', daysSinceLanding: on - landing.latest };
  return { kind: 'in flight', flightDay: on - launch + 1 };
};

/** "L−12", "flight day 23", "R+9". */
export const showMissionDay = (dates: MissionDates, on: Day): string => {
  const place = missionDay(dates, on);
  if (place.kind === 'before launch') return `L−${place.daysToLaunch}`;
  if (place.kind === 'in flight') return `flight day ${place.flightDay}`;
  return `R+${place.daysSinceLanding}`;
};

/** The day an anchor stands on, or null where its landing is not known. A landing range counts from its latest day. */
export const dayOfAnchor = (anchor: Anchor, dates: MissionDates | null): Day | null => {
  if ('on' in anchor) return anchor.on;
  if (!dates) return null;
  if (anchor.from === 'launch') return addDays(dates.launch, anchor.days);
  return dates.landing ? addDays(dates.landing.latest, anchor.days) : null;
};

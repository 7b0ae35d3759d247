import { idOf, type MissionId } from '#domain/identity.ts';
import { type Day, addDays } from '#units/day.ts';

/** Days from today at which a mission starts and lands, as it is planned today and as it was planned at first. */
export interface InventedMission {
  readonly id: MissionId;
  readonly name: string;
  readonly launch: number;
  readonly landing: readonly [number, number] | null;
  readonly atFirst: {
    readonly launch: number;
    readonly landing: readonly [number, number] | null;
    /** Days from today on which the change was told. */
    readonly changedOn: number;
    readonly reason: string;
  } | null;
}

const mission = (name: string, launch: number, landing: InventedMission['landing']): InventedMission => ({
  id: idOf(name.toLowerCase().replace(' ', '-')),
  name,
  launch,
  landing,
  atFirst: null,
});

/** R+31 today. */
export const SKERRY_19 = mission('Skerry 19', -213, [-31, -31]);

/** R+9 today; its landing slipped by 19 days. */
export const SKERRY_20: InventedMission = {
  ...mission('Skerry 20', -190, [-9, -9]),
  atFirst: {
    launch: -190,
    landing: [-28, -28],
    changedOn: -36,
    reason: 'Landing moved by 19 days: the vehicle waits for its relief.',
  },
};

/** Flight day 118 today. */
export const SKERRY_21 = mission('Skerry 21', -117, [63, 70]);

/** Flight day 23 today; its launch slipped by 11 days, after the taper. */
export const SKERRY_22: InventedMission = {
  ...mission('Skerry 22', -22, [154, 161]),
  atFirst: {
    launch: -33,
    landing: [143, 150],
    changedOn: -36,
    reason: 'Launch moved by 11 days: a valve is changed on the pad.',
  },
};

/** L−9 today. */
export const SKERRY_23 = mission('Skerry 23', 9, [190, 197]);
/** L−96 today. */
export const SKERRY_24 = mission('Skerry 24', 96, [270, 284]);
/** L−412 today. */
export const SKERRY_27 = mission('Skerry 27', 412, null);
/** L−655 today. */
export const SKERRY_29 = mission('Skerry 29', 655, null);

export const SKERRY_MISSIONS: readonly InventedMission[] = [
  SKERRY_19,
  SKERRY_20,
  SKERRY_21,
  SKERRY_22,
  SKERRY_23,
  SKERRY_24,
  SKERRY_27,
  SKERRY_29,
];

export const missionWith = (id: MissionId): InventedMission => {
  const found = SKERRY_MISSIONS.find((one) => one.id === id);
  if (!found) throw new RangeError(`No invented mission is called ${id}.`);
  return found;
};

export const launchDay = (id: MissionId, today: Day): Day => addDays(today, missionWith(id).launch);

/** The day of a flight day: flight day 1 is the day of launch. */
export const dayOfFlight = (id: MissionId, today: Day, flightDay: number): Day =>
  addDays(launchDay(id, today), flightDay - 1);

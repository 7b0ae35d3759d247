import type { FactBody } from '#domain/fact.ts';
import { type Day, addDays } from '#units/day.ts';
import { type InventedMission, SKERRY_22, SKERRY_24, SKERRY_MISSIONS } from '../missions.ts';
import { momentOf } from '../moment.ts';
import { OONA, WEN_LI } from '../people.ts';
import { SPECIALIST } from '../signers.ts';
import { SKERRY_STATION } from '../skerry-station.ts';
import { dayTakenUp } from '../taken-up.ts';
import { type ScriptEntry, correcting, entry } from './script-entry.ts';

/** Missions as they were brought in, and every change of dates and crew since. */
export const missionScript = (today: Day): readonly ScriptEntry[] => [
  ...SKERRY_MISSIONS.map((mission) =>
    entry(
      `dated ${mission.id}`,
      momentOf(dayTakenUp(today), '08:20'),
      SPECIALIST.id,
      dated(mission, mission.atFirst ?? mission, today),
    ),
  ),
  ...SKERRY_MISSIONS.flatMap((mission) => movedDates(mission, today)),
  ...crewChange(today),
];

const dated = (
  { id, name }: InventedMission,
  { launch, landing }: Pick<InventedMission, 'launch' | 'landing'>,
  today: Day,
): FactBody => ({
  kind: 'dated',
  mission: id,
  name,
  site: SKERRY_STATION.id,
  launch: addDays(today, launch),
  landing: landing && { earliest: addDays(today, landing[0]), latest: addDays(today, landing[1]) },
});

const movedDates = (mission: InventedMission, today: Day): readonly ScriptEntry[] => {
  if (!mission.atFirst) return [];
  const at = momentOf(addDays(today, mission.atFirst.changedOn), '18:05');
  const moved = entry(`dated again ${mission.id}`, at, SPECIALIST.id, dated(mission, mission, today));
  return [correcting(`dated ${mission.id}`, mission.atFirst.reason, moved)];
};

const CREW_CHANGED = -70;

/** The backup becomes prime, and who was prime goes to a later mission. */
const crewChange = (today: Day): readonly ScriptEntry[] => {
  const at = momentOf(addDays(today, CREW_CHANGED), '11:00');
  const reason = 'The crew of Skerry 22 was changed.';
  return [
    correcting(
      `assigned ${OONA.id}`,
      reason,
      entry(`assigned again ${OONA.id}`, at, SPECIALIST.id, {
        kind: 'assigned',
        person: OONA.id,
        mission: SKERRY_22.id,
        role: 'prime',
        team: 'ours',
        spaceWalks: OONA.spaceWalks,
      }),
    ),
    correcting(
      `assigned ${WEN_LI.id}`,
      reason,
      entry(`assigned again ${WEN_LI.id}`, at, SPECIALIST.id, {
        kind: 'assigned',
        person: WEN_LI.id,
        mission: SKERRY_24.id,
        role: 'prime',
        team: 'ours',
        spaceWalks: WEN_LI.spaceWalks,
      }),
    ),
  ];
};

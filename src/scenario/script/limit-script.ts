import type { Side } from '#domain/effort.ts';
import type { FactBody } from '#domain/fact.ts';
import type { Restriction } from '#domain/restriction.ts';
import { type Day, addDays } from '#units/day.ts';
import { entered } from '#units/entered.ts';
import { dayOfFlight, launchDay } from '../missions.ts';
import { momentOf } from '../moment.ts';
import { KERTTU, OONA, RAFAEL } from '../people.ts';
import { PHYSICIAN, SPECIALIST } from '../signers.ts';
import { type ScriptEntry, correcting, entry, factNamed } from './script-entry.ts';

/** What the physician allows and forbids. */
export const limitScript = (today: Day): readonly ScriptEntry[] => [
  entry('breathing rafael', momentOf(addDays(launchDay(RAFAEL.mission, today), -13), '10:20'), PHYSICIAN.id, {
    kind: 'breathing set',
    person: RAFAEL.id,
    rule: 'brief brace on heavy sets',
    toldBy: PHYSICIAN.name,
  }),
  ...kerttusKnee(today),
  ...oonasShoulder(today),
];

/** A knee that was limited in squats for two weeks; the physician lifted it. */
const kerttusKnee = (today: Day): readonly ScriptEntry[] => {
  const from = dayOfFlight(KERTTU.mission, today, 38);
  const lifted = dayOfFlight(KERTTU.mission, today, 52);
  const limited: FactBody = {
    kind: 'restricted',
    person: KERTTU.id,
    restriction: {
      scope: { kind: 'pattern', pattern: 'squat' },
      limit: { kind: 'RPE at most', rpe: 6 },
      toldBy: PHYSICIAN.name,
      toldOn: from,
      confirmed: true,
      from,
      reviewOn: lifted,
    },
    medicalReason: 'Left kneecap tender after running; no swelling.',
  };
  return [
    entry('restricted kerttu', momentOf(from, '12:30'), PHYSICIAN.id, limited),
    entry('restriction of kerttu lifted', momentOf(lifted, '11:45'), PHYSICIAN.id, {
      kind: 'restriction lifted',
      person: KERTTU.id,
      restriction: factNamed('restricted kerttu'),
      toldBy: PHYSICIAN.name,
      on: lifted,
    }),
  ];
};

/** A limit told by telephone for the wrong shoulder, and put right two hours later in writing. */
const oonasShoulder = (today: Day): readonly ScriptEntry[] => {
  const day = addDays(today, -1);
  const told = entry('restricted oona', momentOf(day, '15:10'), SPECIALIST.id, {
    kind: 'restricted',
    person: OONA.id,
    restriction: shoulderLimit(day, 'left', false),
    medicalReason: null,
  });
  const right = entry('restricted oona, right side', momentOf(day, '17:25'), PHYSICIAN.id, {
    kind: 'restricted',
    person: OONA.id,
    restriction: shoulderLimit(day, 'right', true),
    medicalReason: 'Right shoulder, tendon irritated under load; full range, no weakness.',
  });
  return [told, correcting(told.name, 'Told by telephone for the wrong side.', right)];
};

const shoulderLimit = (day: Day, side: Side, confirmed: boolean): Restriction => ({
  scope: { kind: 'site', site: 'shoulder', side },
  limit: { kind: 'load at most', load: entered('150', 'lb') },
  toldBy: confirmed ? PHYSICIAN.name : `${PHYSICIAN.name}, by telephone`,
  toldOn: day,
  confirmed,
  from: addDays(day, 1),
  reviewOn: addDays(day, 14),
});

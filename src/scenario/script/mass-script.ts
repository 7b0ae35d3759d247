import type { FactBody } from '#domain/fact.ts';
import { type Day, addDays } from '#units/day.ts';
import { entered } from '#units/entered.ts';
import type { InventedPerson } from '../invented-person.ts';
import { momentOf } from '../moment.ts';
import { ADAEZE, ANSELM, INES, JOON_HO, KERTTU, MIRELA, NOOR, OONA, RAFAEL, TOMAS, WEN_LI, YUSUF } from '../people.ts';
import { SPECIALIST } from '../signers.ts';
import { dayEntered } from '../taken-up.ts';
import { type ScriptEntry, correcting, entry } from './script-entry.ts';

type Weighing = readonly [daysFromToday: number, kilograms: string];

/** Body masses as typed. One of them cannot be: two digits were swapped. */
const WEIGHINGS: readonly (readonly [InventedPerson, readonly Weighing[]])[] = [
  [
    INES,
    [
      [-150, '72.4'],
      [-80, '71.8'],
      [-26, '71.4'],
      [-8, '70.9'],
    ],
  ],
  [
    TOMAS,
    [
      [-150, '85.9'],
      [-80, '85.2'],
      [-26, '84.6'],
      [-8, '83.2'],
    ],
  ],
  [
    OONA,
    [
      [-140, '64.5'],
      [-70, '64.1'],
      [-26, '63.8'],
      [-8, '63.1'],
    ],
  ],
  [
    KERTTU,
    [
      [-200, '67.0'],
      [-121, '66.2'],
      [-88, '65.3'],
      [-58, '64.6'],
      [-28, '36.9'],
      [-6, '63.7'],
    ],
  ],
  [
    RAFAEL,
    [
      [-200, '105.1'],
      [-121, '103.8'],
      [-88, '102.9'],
      [-58, '102.2'],
      [-28, '101.8'],
      [-6, '101.5'],
    ],
  ],
  [
    MIRELA,
    [
      [-150, '61.9'],
      [-60, '61.4'],
      [-5, '61.2'],
    ],
  ],
  [
    YUSUF,
    [
      [-150, '80.2'],
      [-60, '79.3'],
      [-5, '78.9'],
    ],
  ],
  [
    WEN_LI,
    [
      [-150, '59.0'],
      [-75, '58.7'],
      [-12, '58.7'],
    ],
  ],
  [
    ADAEZE,
    [
      [-90, '69.9'],
      [-21, '69.5'],
    ],
  ],
  [ANSELM, [[-30, '74.2']]],
  [
    JOON_HO,
    [
      [-300, '81.0'],
      [-194, '80.3'],
      [-8, '77.9'],
      [-3, '78.6'],
    ],
  ],
  [
    NOOR,
    [
      [-310, '65.4'],
      [-217, '65.0'],
      [-29, '63.2'],
      [-4, '64.4'],
    ],
  ],
];

const SWAPPED = { person: KERTTU, day: -28, right: '63.9' } as const;

export const massScript = (today: Day): readonly ScriptEntry[] => [
  ...WEIGHINGS.flatMap(([person, weighings]) =>
    weighings.map((weighing) => {
      const day = addDays(today, weighing[0]);
      const at = momentOf(dayEntered(day, today), day === dayEntered(day, today) ? '07:30' : '09:00');
      return entry(nameOf(person, weighing[0]), at, SPECIALIST.id, massOf(person, day, weighing[1]));
    }),
  ),
  correctedMass(today),
];

const nameOf = (person: InventedPerson, daysFromToday: number): string => `mass ${person.id} ${daysFromToday}`;

const massOf = (person: InventedPerson, day: Day, kilograms: string): FactBody => ({
  kind: 'measured',
  person: person.id,
  day,
  what: 'body mass',
  value: entered(kilograms, 'kg'),
});

const correctedMass = (today: Day): ScriptEntry => {
  const { person, day, right } = SWAPPED;
  const weighed = addDays(today, day);
  const at = momentOf(addDays(weighed, 1), '09:15');
  return correcting(
    nameOf(person, day),
    'Two digits were swapped; read again from the film.',
    entry(`mass corrected ${person.id}`, at, SPECIALIST.id, massOf(person, weighed, right)),
  );
};

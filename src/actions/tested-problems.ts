import { numberOf, type Entered } from '#units/entered.ts';
import type { Problem } from '#contract/problem.ts';
import type { Fact, FactBody } from '#domain/fact.ts';
import type { House } from '#domain/known.ts';
import { newtonsOf, type Test } from '#domain/tested.ts';
import type { CheckedEntry } from './entry.ts';
import { outside, slipOfUnit, unlikely, type Range } from './plausible.ts';

type Tested = Extract<FactBody, { readonly kind: 'tested' }>;

/** What stands against a test beside lifts: what cannot be is refused, what is unlikely is asked about. */
export const testedProblems = (
  { body, supersedes }: CheckedEntry,
  entries: readonly CheckedEntry[],
  current: readonly Fact[],
  house: House,
): readonly Problem[] => {
  if (body.kind !== 'tested') return [];
  const others = [
    ...current.filter((fact) => fact.id !== supersedes),
    ...entries.map((entry) => entry.body).filter((other) => other !== body),
  ].filter((other): other is Tested & Partial<Fact> => other.kind === 'tested' && other.person === body.person);
  const impossible = valuesOf(body.test).flatMap(({ field, value, unit, range }) =>
    outside(value, unit, range).map((problem) => ({ ...problem, field: `test.${field}.text` })),
  );
  return [
    ...impossible,
    ...ownProblems(body.test, house),
    ...anotherTest(
      body.test,
      current.find(({ id }) => id === supersedes),
    ),
    ...(impossible.length > 0 ? [] : againstOthers(body, others)),
  ];
};

interface Value {
  readonly field: string;
  readonly value: number;
  readonly unit: string;
  readonly range: Range;
}

/** Ranges are common practice for adults who train; no source. Outside of them a number stands in another unit, or was mistyped. */
const UPTAKE: Range = { least: 10, most: 95, perhaps: 'In L/min it is to be divided by body mass first.' };
const STAGE_UPTAKE: Range = { least: 4, most: 95, perhaps: 'In L/min it is to be divided by body mass first.' };
const GREATEST_RATE: Range = { least: 100, most: 230, perhaps: 'Beats are counted over a whole minute.' };
const RESTING_RATE: Range = { least: 25, most: 120, perhaps: 'Beats are counted over a whole minute.' };
const STAGE_RATE: Range = { least: 40, most: 230, perhaps: 'Beats are counted over a whole minute.' };
const WATTS: Range = {
  least: 10,
  most: 600,
  perhaps: 'A steady stage is meant, not a sprint; kg m/min are 6.12 a watt.',
};
const SPEED: Range = { least: 2, most: 30, perhaps: 'It is taken in km/h; m/min are 16.7 to one km/h.' };
const GRIP: Range = { least: 30, most: 1200, perhaps: 'Look at its unit: N, kg or lb of force.' };
const CRITICAL: Range = { least: 10, most: 800, perhaps: 'Look at its unit: N, kg or lb of force.' };
const JUMP: Range = { least: 5, most: 110, perhaps: 'Look at its unit: cm or in.' };
const RAISES: Range = { least: 0, most: 100, perhaps: 'One leg at a time is meant, until it fails.' };

const CENTIMETRES_PER_INCH = 2.54;

const entered = (field: string, value: Entered<string> | null, range: Range): readonly Value[] =>
  value === null ? [] : [{ field, value: numberOf(value), unit: value.unit, range }];

const valuesOf = (test: Test): readonly Value[] => {
  switch (test.what) {
    case 'greatest oxygen uptake':
      return entered('value', test.value, UPTAKE);
    case 'greatest heart rate':
      return entered('value', test.value, GREATEST_RATE);
    case 'resting heart rate':
      return entered('value', test.value, RESTING_RATE);
    case 'cycle stage':
      return [...entered('watts', test.watts, WATTS), ...besides(test)];
    case 'running stage':
      return [...entered('speed', test.speed, SPEED), ...besides(test)];
    case 'greatest grip':
      return [{ field: 'value', value: newtonsOf(test.value), unit: 'N', range: GRIP }];
    case 'critical force':
      return [{ field: 'value', value: newtonsOf(test.value), unit: 'N', range: CRITICAL }];
    case 'jump height':
      return [{ field: 'value', value: centimetresOf(test.value), unit: 'cm', range: JUMP }];
    case 'heel raises':
      return entered('value', test.value, RAISES);
  }
};

type Stage = Extract<Test, { readonly what: 'cycle stage' | 'running stage' }>;

const besides = ({ heartRate, uptake }: Stage): readonly Value[] => [
  ...entered('heartRate', heartRate, STAGE_RATE),
  ...entered('uptake', uptake, STAGE_UPTAKE),
];

const centimetresOf = (value: Entered<'cm' | 'in'>): number =>
  numberOf(value) * (value.unit === 'in' ? CENTIMETRES_PER_INCH : 1);

const ownProblems = (test: Test, house: House): readonly Problem[] => {
  if (test.what === 'heel raises' && !Number.isInteger(numberOf(test.value))) return [brokenRaise()];
  if (test.what !== 'cycle stage' && test.what !== 'running stage') return [];
  const machine = test.what === 'cycle stage' && test.machine !== null ? house.machines.get(test.machine) : null;
  return [
    ...(test.heartRate === null && test.uptake === null ? [emptyStage(test)] : []),
    ...(machine === undefined || (machine && machine.kind !== 'cycle') ? [noCycle()] : []),
  ];
};

/** The same value of the same body, so that a new one can be held against it. */
const seriesOf = (test: Test): string => ('side' in test ? `${test.what}, ${test.side}` : test.what);

const againstOthers = (body: Tested, others: readonly Tested[]): readonly Problem[] => {
  const { test, day } = body;
  if (test.what === 'cycle stage' || test.what === 'running stage') return stageTwice(body, others);
  const before = others
    .filter((other) => other.day < day && seriesOf(other.test) === seriesOf(test))
    .reduce<Tested | null>((last, each) => (last && last.day > each.day ? last : each), null);
  const [now] = valuesOf(test);
  const [then] = before ? valuesOf(before.test) : [];
  return [
    ...(now && then ? slipOfUnit(now.value, then.value, now.unit) : []).map(atValue),
    ...heartRatesInOrder(test, others),
    ...forcesInOrder(test, others),
  ];
};

const atValue = (problem: Problem): Problem => ({ ...problem, field: 'test.value.text' });

/** Heart rates of whatever day: rest lies under the greatest. */
const heartRatesInOrder = (test: Test, others: readonly Tested[]): readonly Problem[] => {
  if (test.what !== 'greatest heart rate' && test.what !== 'resting heart rate') return [];
  const other = test.what === 'greatest heart rate' ? 'resting heart rate' : 'greatest heart rate';
  const against = latest(others, (each) => each.what === other);
  if (!against || !('value' in against)) return [];
  const [greatest, resting] =
    test.what === 'greatest heart rate' ? [test.value, against.value] : [against.value, test.value];
  return numberOf(resting) < numberOf(greatest)
    ? []
    : [
        {
          what: `The resting heart rate, ${resting.text}, is not under the greatest, ${greatest.text}.`,
          why: 'All zones lie between the two.',
          whatToDo: 'Look whether the two were mixed up.',
          field: 'test.value.text',
        },
      ];
};

/** What a hand holds for long is a part of what it grips once. */
const forcesInOrder = (test: Test, others: readonly Tested[]): readonly Problem[] => {
  if (test.what !== 'greatest grip' && test.what !== 'critical force') return [];
  const other = test.what === 'greatest grip' ? 'critical force' : 'greatest grip';
  const against = latest(others, (each) => each.what === other && each.side === test.side);
  if (against?.what !== 'greatest grip' && against?.what !== 'critical force') return [];
  const [grip, critical] = test.what === 'greatest grip' ? [test.value, against.value] : [against.value, test.value];
  return newtonsOf(critical) < newtonsOf(grip)
    ? []
    : [
        {
          what: `The critical force of the ${test.side} hand, ${critical.text} ${critical.unit}, is not under its greatest grip, ${grip.text} ${grip.unit}.`,
          why: 'What is held at the end of an all-out test is a part of the greatest grip.',
          whatToDo: 'Look at the units and at the side.',
          field: 'test.value.text',
        },
      ];
};

const latest = (others: readonly Tested[], is: (test: Test) => boolean): Test | null =>
  others
    .filter(({ test }) => is(test))
    .reduce<Tested | null>((last, each) => (last && last.day > each.day ? last : each), null)?.test ?? null;

const stageTwice = ({ test, day }: Tested, others: readonly Tested[]): readonly Problem[] => {
  const [setting] = valuesOf(test);
  const twice = others.some(
    (other) => other.day === day && other.test.what === test.what && valuesOf(other.test)[0]?.value === setting?.value,
  );
  return twice && setting
    ? [
        unlikely(
          `A ${test.what} of ${setting.value} ${setting.unit} stands on this day already.`,
          'Twice the same stage would count twice in the person’s own line.',
          `test.${setting.field}.text`,
        ),
      ]
    : [];
};

/** In the place of a test of the left hand one of the right would stand, and the first would be gone. */
const anotherTest = (test: Test, before: Fact | undefined): readonly Problem[] =>
  before?.kind === 'tested' && seriesOf(before.test) !== seriesOf(test)
    ? [
        {
          what: `The correction is of another test: ${seriesOf(before.test)} was recorded there.`,
          why: 'The first would be gone from every list.',
          whatToDo: 'Take the old entry back and record the new one.',
          field: 'test',
        },
      ]
    : [];

const brokenRaise = (): Problem => ({
  what: 'Heel raises are whole numbers.',
  why: 'A repetition is completed or not.',
  whatToDo: 'Leave the broken one out.',
  field: 'test.value.text',
});

const emptyStage = (test: Stage): Problem => ({
  what: 'The stage has neither a heart rate nor an oxygen uptake.',
  why: 'A setting alone says nothing about the person.',
  whatToDo: 'Type one of the two, or leave the stage out.',
  field: test.what === 'cycle stage' ? 'test.watts.text' : 'test.speed.text',
});

const noCycle = (): Problem => ({
  what: 'The stage was ridden on something that is no cycle here.',
  why: 'Watts belong to the cycle that showed them.',
  whatToDo: 'Choose the cycle, or leave it open.',
  field: 'test.machine',
});

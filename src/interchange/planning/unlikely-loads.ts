import type { Question } from '#contract/bring-in.ts';
import { KILOGRAMS_PER_POUND, type MassUnit } from '#units/mass.ts';
import { oddity, passedOver, refusal } from '../place.ts';
import { doubled, halved } from '../values/read-decimal.ts';
import { comparisons, type Comparison } from './expected-load.ts';
import { judgedLoad } from './possible.ts';
import type { MeasurementReading } from './read-measurements.ts';
import type { Reading } from './reading.ts';
import { kilogramsIn, type TestReading } from './test-reading.ts';

/** Factors by which a load is wrong when its unit or its counting is: pounds for kilograms, both sides for one. */
const FACTORS = [1 / KILOGRAMS_PER_POUND, KILOGRAMS_PER_POUND, 2, 0.5] as const;
/** Within 3 % of a factor a value is questioned (our own design). */
const NEAR = 0.03;
/** Outside 0.2 to 3 times body mass a maximum is questioned where nothing better tells (our own design). */
const LEAST_OF_BODY_MASS = 0.2;
const MOST_OF_BODY_MASS = 3;

const nearFactor = (ratio: number): number | null =>
  FACTORS.find((factor) => Math.abs(ratio / factor - 1) <= NEAR) ?? null;

const otherUnit = (unit: MassUnit): MassUnit => (unit === 'kg' ? 'lb' : 'kg');

const UNIT_WORDS: Readonly<Record<MassUnit, string>> = { kg: 'kilograms', lb: 'pounds' };

/** Corrections in the order in which they are offered, with what the test would be. */
const corrected = (test: TestReading): Readonly<Record<string, TestReading>> => {
  const { number, unit, changes } = test;
  const shown = `${number} ${unit}`;
  return {
    [otherUnit(unit)]: {
      ...test,
      unit: otherUnit(unit),
      changes: [...changes, `${number} read as ${otherUnit(unit)}, not ${unit}`],
    },
    double: { ...test, number: doubled(number), changes: [...changes, `${shown} doubled`] },
    halve: { ...test, number: halved(number), changes: [...changes, `${shown} halved`] },
  };
};

const kilogramsShown = (kilograms: number): string => `${Math.round(kilograms * 10) / 10} kg`;

const shownLoad = (test: TestReading): string => {
  const { number, unit } = test;
  return unit === 'kg' ? `${number} kg` : `${number} lb, ${kilogramsShown(kilogramsIn(test))}`;
};

const choicesFor = (test: TestReading): Question['choices'] => {
  const { number, unit } = test;
  const fixes = corrected(test);
  const says: Readonly<Record<string, string>> = {
    [otherUnit(unit)]: `it is ${UNIT_WORDS[otherUnit(unit)]}`,
    double: 'it is one side or one hand of two: double it',
    halve: 'it is both sides added: halve it',
  };
  return [
    { answer: 'keep', says: `it is right: ${number} ${unit}` },
    ...Object.entries(fixes).map(([answer, fixed]) => ({ answer, says: `${says[answer]} (${shownLoad(fixed)})` })),
    { answer: 'leave out', says: 'it cannot be told: leave this test out' },
  ];
};

const looksLike = (factor: number, unit: MassUnit): string => {
  if (factor === 2) return 'both sides or both hands added together';
  if (factor === 0.5) return 'one side or one hand of two';
  const swapped = factor > 1 === (unit === 'kg');
  return swapped
    ? `${UNIT_WORDS[otherUnit(unit)]} in a column of ${UNIT_WORDS[unit]}`
    : 'a load that was converted twice';
};

const expectedBy = (
  comparison: Exclude<Comparison, { readonly kind: 'nothing' | 'body mass' }>,
  test: TestReading,
): string => {
  const about = kilogramsShown(comparison.expected);
  if (comparison.kind === 'own estimate') return `the person’s own estimate, a maximum of about ${about}`;
  const who = test.someone.sex === 'female' ? 'women' : test.someone.sex === 'male' ? 'men' : 'people';
  return `what the median of ${comparison.of} tests of ${who} in the column gives for a body mass of ${kilogramsShown(comparison.bodyMass)}, a maximum of about ${about}`;
};

const isOutsideBodyMass = ({ found, bodyMass }: { readonly found: number; readonly bodyMass: number }): boolean =>
  found < LEAST_OF_BODY_MASS * bodyMass || found > MOST_OF_BODY_MASS * bodyMass;

const timesBodyMass = ({ found, bodyMass }: { readonly found: number; readonly bodyMass: number }): string =>
  `It stands for a maximum of ${kilogramsShown(found)}, ${(found / bodyMass).toFixed(2)} times the body mass of ${kilogramsShown(bodyMass)}`;

/** Why a test is questioned, and what it looks like; null where it is not. */
const doubt = (
  test: TestReading,
  comparison: Comparison,
): { readonly because: string; readonly suggested: string | null } | null => {
  if (comparison.kind === 'nothing') return null;
  if (comparison.kind === 'body mass')
    return isOutsideBodyMass(comparison)
      ? {
          because: `${timesBodyMass(comparison)}; ${LEAST_OF_BODY_MASS} to ${MOST_OF_BODY_MASS} is usual.`,
          suggested: null,
        }
      : null;
  const ratio = comparison.found / comparison.expected;
  const factor = nearFactor(ratio);
  if (factor === null) return null;
  const because = `It is ${ratio.toFixed(2)} times ${expectedBy(comparison, test)}: it looks like ${looksLike(factor, test.unit)}.`;
  const swapped = looksLike(factor, test.unit).includes('in a column of');
  return {
    because,
    suggested: factor === 2 ? 'halve' : factor === 0.5 ? 'double' : swapped ? otherUnit(test.unit) : null,
  };
};

const ask = (
  test: TestReading,
  why: { readonly because: string; readonly suggested: string | null },
  { report }: Reading,
): string | null => {
  const { row, column, someone, typed, number, unit, repetitions, exercise } = test;
  const mass =
    typed === `${number} ${unit}` || typed === number ? `${number} ${unit}` : `“${typed}”, taken as ${number} ${unit},`;
  return report.ask({
    id: `load, row ${row.number}, column ${column.place.letter}`,
    about: 'unlikely load',
    asks: `Is ${mass} for ${repetitions} ${repetitions === 1 ? 'repetition' : 'repetitions'} of ${exercise.name} by ${someone.name} right?`,
    because: why.because,
    row: row.number,
    column,
    choices: choicesFor(test),
    suggested: why.suggested,
  });
};

const tellOddity = (test: TestReading, comparison: Comparison, { report }: Reading): void => {
  const { row, column, machine } = test;
  if (comparison.kind === 'median' && isOutsideBodyMass(comparison))
    report.say(
      oddity(
        {
          what: 'The load is unusual for the body mass.',
          why: `${timesBodyMass(comparison)}.`,
          whatToDo: 'Look at the number and at its unit.',
        },
        row.number,
        column.place,
      ),
    );
  if (kilogramsIn(test) > kilogramsIn({ number: machine.ceiling, unit: machine.unit }))
    report.say(
      oddity(
        {
          what: `The load is over the ceiling of ${machine.name}.`,
          why: `The machine gives at most ${machine.ceiling} ${machine.unit}.`,
          whatToDo: 'Look at the load, at its unit and at the machine.',
        },
        row.number,
        column.place,
      ),
    );
};

const settled = (test: TestReading, answer: string, { report }: Reading): TestReading | null => {
  const { row, column } = test;
  if (answer === 'leave out') {
    report.say(
      passedOver(
        {
          what: 'The test is left out.',
          why: 'Its load is unlikely, and you chose to leave it out.',
          whatToDo: 'Nothing, or answer otherwise.',
        },
        row.number,
        column.place,
      ),
    );
    return null;
  }
  const fixed = corrected(test)[answer] ?? test;
  const { refused } = judgedLoad(kilogramsIn(fixed));
  if (refused) report.say(refusal(refused, row.number, column.place));
  return refused ? null : fixed;
};

/** Questions loads that are wrong by a telling factor; nothing is changed but by an answer. */
export const withLikelyLoads = (
  tests: readonly TestReading[],
  measurements: readonly MeasurementReading[],
  reading: Reading,
): readonly TestReading[] => {
  const compare = comparisons(tests, measurements, reading.context);
  return tests.flatMap((test) => {
    const comparison = compare(test);
    const why = doubt(test, comparison);
    if (!why) {
      tellOddity(test, comparison, reading);
      return [test];
    }
    const answer = ask(test, why, reading);
    return answer === null ? [] : (settled(test, answer, reading) ?? []);
  });
};

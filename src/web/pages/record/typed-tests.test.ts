import { expect, test } from 'vitest';
import type { Problem } from '#contract/problem.ts';
import type { Fact } from '#domain/fact.ts';
import { idOf } from '#domain/identity.ts';
import type { Test } from '#domain/tested.ts';
import { isoDay } from '#units/day.ts';
import { startOfTests, testsOf, type TypedTests } from './typed-tests.ts';

const TODAY = isoDay('2027-03-01');
const PERSON = idOf<'person'>('person');
const typed = (more: Partial<TypedTests>): TypedTests => ({ ...startOfTests(TODAY, null), ...more });

const read = (form: TypedTests) => {
  const problems: Problem[] = [];
  return { tests: testsOf(form, PERSON, problems), fields: problems.map(({ field }) => field) };
};

const heartRate = { text: '128', unit: '1/min' } as const;
const EVERY_TEST: readonly Test[] = [
  { what: 'greatest oxygen uptake', value: { text: '46.2', unit: 'mL/(kg min)' }, how: 'estimated' },
  { what: 'greatest heart rate', value: { text: '188', unit: '1/min' } },
  { what: 'resting heart rate', value: { text: '52', unit: '1/min' } },
  { what: 'cycle stage', watts: { text: '120', unit: 'W' }, heartRate, uptake: null, machine: idOf('cycle') },
  {
    what: 'running stage',
    speed: { text: '9.5', unit: 'km/h' },
    heartRate: null,
    uptake: { text: '35', unit: 'mL/(kg min)' },
  },
  { what: 'greatest grip', side: 'left', value: { text: '46', unit: 'kg' } },
  { what: 'greatest grip', side: 'right', value: { text: '452', unit: 'N' } },
  { what: 'critical force', side: 'right', value: { text: '35', unit: 'lb' } },
  { what: 'jump height', value: { text: '15', unit: 'in' } },
  { what: 'heel raises', side: 'left', value: { text: '24', unit: 'repetitions' } },
];

test.each(EVERY_TEST)('what stands in the fields is what was recorded: %o', (recorded) => {
  const fact = { kind: 'tested', person: PERSON, day: TODAY, test: recorded } as Fact<'tested'>;
  const { tests, fields } = read(startOfTests(isoDay('2027-03-09'), fact));
  expect(fields).toEqual([]);
  expect(tests?.map(({ body }) => body)).toEqual([{ kind: 'tested', person: PERSON, day: TODAY, test: recorded }]);
});

test('one form makes a test of every number, each with the place where it stands', () => {
  const empty = { setting: '', heartRate: '', uptake: '' };
  const { tests } = read(
    typed({ uptake: '46,2', cycle: [empty, { ...empty, setting: '120', heartRate: '131' }], gripLeft: '44' }),
  );
  expect(tests?.map(({ at }) => at)).toEqual(['uptake', 'cycle.1', 'gripLeft']);
  expect(tests?.[0]?.body).toMatchObject({ test: { value: { text: '46.2' }, how: 'measured' } });
});

test('everything that is no number is said at its place at once, a stage without its setting too', () => {
  const { tests, fields } = read(
    typed({
      day: '2027-02-30',
      uptake: 'good',
      resting: '5e1',
      cycle: [{ setting: '', heartRate: '130', uptake: 'x' }],
      running: [{ setting: '=1+1', heartRate: '', uptake: '' }],
      raisesRight: '25 or so',
    }),
  );
  expect(tests).toBeNull();
  expect(fields).toEqual([
    'day',
    'uptake.test.value.text',
    'resting.test.value.text',
    'cycle.0.test.watts.text',
    'cycle.0.test.uptake.text',
    'running.0.test.speed.text',
    'raisesRight.test.value.text',
  ]);
});

test('an empty form is no test', () => {
  expect(read(typed({}))).toEqual({ tests: null, fields: ['tests'] });
});

import { expect, test } from 'vitest';
import { addDays } from '#units/day.ts';
import { recordFacts, type Recorded } from './record-facts.ts';
import type { Answer } from './answer.ts';
import { LAUNCH, PERSON, startedHouse, type StartedHouse } from './started-house.fixture.ts';

const DAY = addDays(LAUNCH, -5);
const tested = (test: object, day = DAY) => ({ kind: 'tested', person: PERSON, day, test });
const value = (text: string, unit: string) => ({ value: { text, unit } });

const uptake = (text: string) =>
  tested({ what: 'greatest oxygen uptake', how: 'measured', ...value(text, 'mL/(kg min)') });
const greatest = (text: string) => tested({ what: 'greatest heart rate', ...value(text, '1/min') });
const resting = (text: string) => tested({ what: 'resting heart rate', ...value(text, '1/min') });
const grip = (text: string, unit = 'kg', day = DAY, side = 'left') =>
  tested({ what: 'greatest grip', side, ...value(text, unit) }, day);
const critical = (text: string, unit = 'N') => tested({ what: 'critical force', side: 'left', ...value(text, unit) });
const cycle = (watts: string, more: object = {}) =>
  tested({
    what: 'cycle stage',
    watts: { text: watts, unit: 'W' },
    heartRate: { text: '128', unit: '1/min' },
    uptake: null,
    machine: null,
    ...more,
  });
const running = (speed: string, more: object = {}) =>
  tested({
    what: 'running stage',
    speed: { text: speed, unit: 'km/h' },
    heartRate: null,
    uptake: { text: '35', unit: 'mL/(kg min)' },
    ...more,
  });

const record = ({ workplace, signer }: StartedHouse, bodies: readonly object[], sure = false) =>
  recordFacts(
    workplace,
    signer,
    bodies.map((body) => ({ body, supersedes: null, reason: null, sure })),
  );

const fieldsOf = (answer: Answer<Recorded>): readonly (string | null)[] =>
  answer.kind === 'refused' ? answer.problems.map(({ field }) => field) : [];

test('a whole test of endurance, hands and legs is recorded at once', async () => {
  const house = await startedHouse();
  const answer = await record(house, [
    uptake('46.2'),
    greatest('188'),
    resting('52'),
    cycle('100'),
    cycle('150', { uptake: { text: '28', unit: 'mL/(kg min)' } }),
    running('9.5'),
    grip('46'),
    critical('150'),
    tested({ what: 'jump height', ...value('38', 'cm') }),
    tested({ what: 'heel raises', side: 'right', ...value('0', 'repetitions') }),
  ]);
  expect(fieldsOf(answer)).toEqual([]);
  expect(answer.kind).toBe('done');
});

test.each([
  [uptake('3.4'), 'entries.0.test.value.text'],
  [uptake('96'), 'entries.0.test.value.text'],
  [greatest('88'), 'entries.0.test.value.text'],
  [resting('130'), 'entries.0.test.value.text'],
  [cycle('650'), 'entries.0.test.watts.text'],
  [cycle('150', { heartRate: null }), 'entries.0.test.watts.text'],
  [cycle('150', { heartRate: { text: '1280', unit: '1/min' } }), 'entries.0.test.heartRate.text'],
  [cycle('150', { machine: 'ground-free-bar' }), 'entries.0.test.machine'],
  [cycle('150', { machine: 'nothing' }), 'entries.0.test.machine'],
  [running('160'), 'entries.0.test.speed.text'],
  [running('10', { uptake: { text: '2.1', unit: 'mL/(kg min)' } }), 'entries.0.test.uptake.text'],
  [grip('460'), 'entries.0.test.value.text'],
  [critical('9'), 'entries.0.test.value.text'],
  [tested({ what: 'jump height', ...value('38', 'in') }), undefined],
  [tested({ what: 'jump height', ...value('52', 'in') }), 'entries.0.test.value.text'],
  [tested({ what: 'heel raises', side: 'left', ...value('22.5', 'repetitions') }), 'entries.0.test.value.text'],
  [tested({ what: 'greatest grip', ...value('46', 'kg') }), 'entries.0.test.side'],
])('%o is refused at %s, whatever is said of it', async (body, field) => {
  const house = await startedHouse();
  const fields = fieldsOf(await record(house, [body], true));
  expect(fields).toEqual(field === undefined ? [] : [field]);
});

test('resting heart rate lies under the greatest, in one test or in two', async () => {
  const house = await startedHouse();
  expect(fieldsOf(await record(house, [greatest('110'), resting('115')]))).toEqual([
    'entries.0.test.value.text',
    'entries.1.test.value.text',
  ]);
  expect((await record(house, [greatest('110')])).kind).toBe('done');
  expect(fieldsOf(await record(house, [resting('115')]))).toEqual(['entries.0.test.value.text']);
});

test('what a hand holds for long is under what it grips once', async () => {
  const house = await startedHouse();
  expect(fieldsOf(await record(house, [grip('30'), critical('300')]))).toEqual([
    'entries.0.test.value.text',
    'entries.1.test.value.text',
  ]);
});

test.each([
  ['101.4', 'kg', 'pounds and kilograms'],
  ['21', 'kg', 'pounds and kilograms'],
  ['46', 'N', 'newtons and kilograms of force'],
  ['92', 'kg', 'one side and both'],
])('after 46 kg a grip of %s %s is asked about, and taken where it is right', async (text, unit, slip) => {
  const house = await startedHouse();
  await record(house, [grip('46', 'kg', addDays(DAY, -30))]);
  const asked = await record(house, [grip(text, unit)]);
  const [problem] = asked.kind === 'refused' ? asked.problems : [];
  expect(problem).toMatchObject({ field: 'entries.0.test.value.text', mayStand: true });
  expect(problem?.why).toContain(slip);
  expect((await record(house, [grip(text, unit)], true)).kind).toBe('done');
});

test('neither another hand nor another value is held against a grip', async () => {
  const house = await startedHouse();
  await record(house, [grip('46', 'kg', addDays(DAY, -30))]);
  expect((await record(house, [grip('23', 'kg', DAY, 'right')])).kind).toBe('done');
  expect((await record(house, [grip('49', 'kg')])).kind).toBe('done');
});

test('the same stage twice on a day is asked about', async () => {
  const house = await startedHouse();
  expect(fieldsOf(await record(house, [cycle('100'), cycle('100')]))).toEqual([
    'entries.0.test.watts.text',
    'entries.1.test.watts.text',
  ]);
});

test('a test is corrected by one of the same hand, not by another', async () => {
  const house = await startedHouse();
  const first = await record(house, [grip('46')]);
  const supersedes = first.kind === 'done' ? (first.facts[0]?.id ?? null) : null;
  const correct = (body: object) =>
    recordFacts(house.workplace, house.signer, [{ body, supersedes, reason: 'misread' }]);
  expect(fieldsOf(await correct(grip('44', 'kg', DAY, 'right')))).toEqual(['entries.0.test']);
  expect((await correct(grip('44'))).kind).toBe('done');
});

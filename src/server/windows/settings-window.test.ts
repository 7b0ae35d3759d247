import { expect, test } from 'vitest';
import { addDays } from '#units/day.ts';
import { idOf } from '#domain/identity.ts';
import { issueDays } from '#actions/issue-days.ts';
import { recordFacts } from '#actions/record-facts.ts';
import { LAUNCH, PERSON, startedHouse } from '#actions/started-house.fixture.ts';
import { settingsWindow } from './settings-window.ts';

const house = await startedHouse();
const { workplace, signer } = house;
const settings = () => settingsWindow(house.snapshot());
const exercise = (id: string) => settings().exercises.find((each) => each.exercise.id === id);

test('an exercise says which lines of which programme ask for it, and how many follow that', () => {
  const uses = exercise('back-squat')?.uses ?? [];
  expect(new Set(uses.map(({ machineKind }) => machineKind))).toEqual(new Set(['resistive machine', 'free bar']));
  const flight = uses.filter(({ machineKind }) => machineKind === 'resistive machine');
  expect(new Set(flight.map(({ followers }) => followers))).toEqual(new Set([1]));
});

test('cards that are issued and not yet answered for are named, by exercise and by machine; nothing else is', async () => {
  expect(exercise('back-squat')?.cards).toEqual([]);
  const day = addDays(LAUNCH, 3);
  const { upTo: basis } = house.snapshot();
  const answer = await issueDays(workplace, { person: PERSON, signer, days: [day], basis, reasons: {} });
  expect(answer.kind).toBe('done');
  expect(exercise('back-squat')?.cards).toMatchObject([{ person: 'Birte Okonkwo', day }]);
  const machine = (id: string) => settings().machines.find((each) => each.machine.id === id);
  expect(machine('resistive-machine')?.cards).toHaveLength(1);
  expect(machine('ground-free-bar')?.cards).toEqual([]);
  house.setToday(addDays(day, 1));
  expect(exercise('back-squat')?.cards).toEqual([]);
});

test('a change supersedes the first of its history, and stands first after it', async () => {
  const before = exercise('deadlift');
  const fact = before?.history[0]?.fact ?? idOf<'fact'>('none');
  const body = {
    kind: 'catalogued',
    entry: { kind: 'exercise', exercise: { ...before?.exercise, cues: ['Back long.'] } },
  };
  const answer = await recordFacts(workplace, signer, [{ body, supersedes: fact, reason: 'shorter' }]);
  expect(answer.kind).toBe('done');
  const [newest, first] = exercise('deadlift')?.history ?? [];
  expect(newest).toMatchObject({ changed: ['cues'], reason: 'shorter', by: 'Hanne Visser' });
  expect(first).toMatchObject({ fact, changed: [], reason: null });
});

test('the standing entry of a policy is the newest that sets it', async () => {
  const set = (policies: object) =>
    recordFacts(workplace, signer, [{ body: { kind: 'policies set', policies }, supersedes: null, reason: 'ours' }]);
  await set({ horizonDays: 10, backOff: 0.2 });
  await set({ horizonDays: 12 });
  expect(settings().policiesSet.map(({ fact }) => fact.policies)).toEqual([
    { horizonDays: 12 },
    { horizonDays: 10, backOff: 0.2 },
  ]);
  expect(settings().policies).toMatchObject({ horizonDays: 12, backOff: 0.2 });
});

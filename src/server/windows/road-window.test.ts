import { expect, test } from 'vitest';
import { addDays } from '#units/day.ts';
import { entered } from '#units/entered.ts';
import { idOf } from '#domain/identity.ts';
import { recordFacts } from '#actions/record-facts.ts';
import { enter, LAUNCH, OTHER, PERSON, startedHouse, type StartedHouse } from '#actions/started-house.fixture.ts';
import type { RoadDrawn } from '#contract/windows/road-window.ts';
import { roadWindow } from './road-window.ts';

const windowOf = ({ snapshot }: StartedHouse, person = PERSON) => {
  const now = snapshot();
  const known = now.known(person);
  if (!known) throw new Error('Nobody was introduced.');
  return roadWindow(now, known);
};

const drawn = (house: StartedHouse): RoadDrawn => {
  const { road } = windowOf(house);
  if (!road) throw new Error('There is no road.');
  return road;
};

const slip = async ({ workplace, signer, snapshot }: StartedHouse, days: number): Promise<void> => {
  const fact = snapshot().log.find(({ kind }) => kind === 'dated');
  if (fact?.kind !== 'dated') throw new Error('There is no mission.');
  const { kind, mission, name, site } = fact;
  const landing = { earliest: addDays(LAUNCH, 170 + days), latest: addDays(LAUNCH, 178 + days) };
  const body = { kind, mission, name, site, launch: addDays(LAUNCH, days), landing };
  const answer = await recordFacts(workplace, signer, [{ body, supersedes: fact.id, reason: 'The weather.' }]);
  if (answer.kind !== 'done') throw new Error(answer.problems.map(({ what }) => what).join(' '));
};

test('phases with their programme, days on both calendars, and what became of their cards', async () => {
  const { phases } = drawn(await startedHouse());
  const held = phases.filter(({ name }) => name !== null);
  expect(held.map(({ name, programme, from, to }) => [name, programme, from, to])).toEqual([
    ['first flight weeks', 'The whole road, version 1', 'flight day 1', 'flight day 14'],
    ['main flight', 'The whole road, version 1', 'flight day 15', 'flight day 156'],
    ['last flight weeks', 'The whole road, version 1', 'flight day 157', 'flight day 170'],
    ['first return stage', 'The whole road, version 1', 'R+0', 'R+9'],
    ['second return stage', 'The whole road, version 1', 'R+10', 'R+23'],
    ['third return stage', 'The whole road, version 1', 'R+24', 'R+44'],
  ]);
  expect(held[0]?.cards.issued).toBe(0);
  expect((held[0]?.cards['can be issued'] ?? 0) + (held[0]?.cards.waiting ?? 0)).toBeGreaterThan(0);
  expect(phases.at(-1)).toMatchObject({ name: null, side: 'after landing', from: 'R+45' });
});

test('what nobody planned is said, with the way to where it can be', async () => {
  const house = await startedHouse();
  house.setToday(addDays(LAUNCH, -35));
  const gap = drawn(house).sentences.find(({ kind }) => kind === 'gap');
  expect(gap?.says).toMatch(/^No programme holds from 2031-03-31 to .* \(L−35 to L−1\): 5 weeks before launch\./);
  expect(gap?.link?.to).toBe('programmes');
});

test('a slip is said with its days and its reason, and a decision that it leaves behind is listed', async () => {
  const house = await startedHouse();
  await enter(house.workplace, house.signer, [
    { kind: 'stays', person: PERSON, site: idOf('ground'), from: addDays(LAUNCH, -2), until: addDays(LAUNCH, -1) },
  ]);
  expect(drawn(house).moved).toEqual([]);
  house.setToday(addDays(LAUNCH, -1));
  await slip(house, 11);
  const road = drawn(house);
  expect(road.launch).toBe(addDays(LAUNCH, 11));
  expect(road.sentences.filter(({ kind }) => kind === 'dates').map(({ says }) => says)).toEqual([
    'Launch moved by 11 days, from 2031-05-05 to 2031-05-16. Landing moved by 19 days, from 2031-10-22 to 2031-11-10. Reason given: The weather.',
    'Landing lies between 2031-11-02 and 2031-11-10: the flight is planned to the latest day.',
  ]);
  // Nobody follows a preparation here: before launch lies in no phase, then as now.
  expect(road.moved).toEqual([]);
});

test('a day signed for the flight that lies before launch after a slip names both places', async () => {
  const house = await startedHouse();
  const { workplace, signer } = house;
  const on = addDays(LAUNCH, 3);
  await enter(workplace, signer, [
    {
      kind: 'restricted',
      person: PERSON,
      medicalReason: null,
      restriction: {
        scope: { kind: 'exercise', exercise: idOf('back-squat') },
        limit: { kind: 'load at most', load: entered('60', 'kg') },
        toldBy: 'Dr. A. Lowe',
        toldOn: addDays(LAUNCH, -2),
        confirmed: true,
        from: on,
        reviewOn: null,
      },
    },
  ]);
  await slip(house, 11);
  const { moved, restrictions } = drawn(house);
  expect(moved.map(({ day, was, now }) => [day, was, now])).toEqual([
    [on, 'first flight weeks (flight day 4)', 'no phase, before launch (L−8)'],
  ]);
  expect(restrictions).toMatchObject([{ first: on, isOpen: true, says: 'back squat: at most 60 kg' }]);
});

test('a test that was recorded keeps its ask; the week it lies in says so', async () => {
  const { asks, tests, weeks } = drawn(await startedHouse());
  expect(asks[0]).toMatchObject({
    occasion: 'last before launch',
    state: 'tested',
    says: '4 of 4 lifts tested, the last on L−20',
  });
  expect(tests.map(({ missionDay, lifts }) => [missionDay, lifts.length])).toEqual([['L−20', 4]]);
  const week = weeks.find(({ first, last }) => first <= addDays(LAUNCH, -20) && last >= addDays(LAUNCH, -20));
  expect(week?.says).toMatch(/Tested on 1 day\./);
});

test('who has a mission and no programme has a road with nothing on it; another team’s people have none', async () => {
  const house = await startedHouse();
  const other = windowOf(house, OTHER).road;
  expect(other?.phases.every(({ name }) => name === null)).toBe(true);
  const assigned = house.snapshot().log.findLast((fact) => fact.kind === 'assigned');
  if (assigned?.kind !== 'assigned') throw new Error('Nobody is assigned.');
  const { kind, person, mission, role } = assigned;
  const body = { kind, person, mission, role, team: 'another team' } as const;
  await recordFacts(house.workplace, house.signer, [{ body, supersedes: assigned.id, reason: 'Theirs.' }]);
  const { road, empty } = windowOf(house, person);
  expect(road).toBeNull();
  expect(empty).toMatch(/belongs to another team/);
});

import { expect, test } from 'vitest';
import { addDays, type Day } from '#units/day.ts';
import { liftsOf, totalMinutes } from '#domain/card.ts';
import type { TrackId } from '#domain/identity.ts';
import type { CellChange } from '#actions/cell-change.ts';
import { LAUNCH, PERSON, startedHouse } from '#actions/started-house.fixture.ts';
import { writeCells } from '#actions/write-cells.ts';
import { cellsWindow } from './cells-window.ts';
import { liftWindow } from './lift-window.ts';
import { writtenWindow } from './written-window.ts';

const opened = async () => {
  const house = await startedHouse();
  const look = (cells: readonly CellChange[]) => {
    const [known, road] = [house.snapshot().known(PERSON), house.snapshot().road(PERSON)];
    if (!known || !road) throw new Error('Nobody there.');
    return cellsWindow(known, road, cells);
  };
  const road = house.snapshot().road(PERSON);
  const planned = (road?.cards ?? []).flatMap((card) => (card.state === 'issued' ? [] : [card]));
  const first = planned.find(({ card }) => liftsOf(card).length > 0);
  const item = first && liftsOf(first.card)[0];
  if (!first || !item) throw new Error('Nothing is planned.');
  return { house, look, planned, first, item };
};

const cellAt = (track: TrackId, day: Day, line: string): CellChange => ({
  track,
  day,
  change: { kind: 'as written', line },
});

test('a look shows each cell and the minutes of each session, and writes nothing', async () => {
  const { house, look, first, item } = await opened();
  const before = house.snapshot().upTo;
  const { cells, sessions, problems, upTo } = look([cellAt(item.track, first.day, '6 × 6 @ RPE 7, rest 4:00')]);
  expect(problems).toEqual([]);
  expect([upTo, house.snapshot().upTo]).toEqual([before, before]);
  expect(cells[0]?.outcome?.cell.planned).toMatch(/^6×6 start at /);
  expect(cells[0]?.was).not.toBeNull();
  const [session] = sessions;
  expect(session?.minutes.was).toBe(Math.round(totalMinutes(first.card)));
  expect(session?.minutes.is).toBeGreaterThan(session?.minutes.was ?? Infinity);
  expect(session?.minutes.is).toBeLessThanOrEqual(session?.minutes.block ?? 0);
});

test('what a long line drives out of its session is told, but not what was asked to be left out', async () => {
  const { look, first, item } = await opened();
  const other = first.card.items[1];
  if (!other) throw new Error('The session has one item.');
  const long = cellAt(item.track, first.day, '20 × 6 @ RPE 7, rest 4:00');
  const [alone, together] = [
    look([long]),
    look([long, { track: other.track, day: first.day, change: { kind: 'leave out' } }]),
  ];
  const told = alone.sessions[0]?.leavesOut ?? [];
  expect(told.some((says) => says.includes('the block has'))).toBe(true);
  expect(together.sessions[0]?.leavesOut.some((says) => says.startsWith(`${other.exerciseName}: `))).toBe(false);
  expect(together.cells[1]).toMatchObject({ outcome: null, problems: [] });
});

test('problems stand at their cells, and nothing is said to change twice', async () => {
  const { house, look, first, item } = await opened();
  const line = '5 × 3 @ RPE 7';
  await writeCells(house.workplace, {
    person: PERSON,
    signer: house.signer,
    cells: [cellAt(item.track, first.day, line)],
    reason: 'a test',
    basis: null,
  });
  const { cells, problems } = look([
    cellAt(item.track, first.day, line),
    cellAt(item.track, addDays(LAUNCH, -1), line),
    cellAt(item.track, first.day, 'heavy'),
  ]);
  expect(cells.map((cell) => [cell.isUnchanged, cell.problems.length])).toEqual([
    [true, 0],
    [false, 1],
    [false, 1],
  ]);
  expect(problems).toEqual([]);
  expect(look([cellAt(item.track, first.day, line)]).problems.map(({ what }) => what)).toEqual([
    'Nothing would change.',
  ]);
});

test('a line that is typed is looked at in the same way', async () => {
  const { house, first, item } = await opened();
  const [known, road] = [house.snapshot().known(PERSON), house.snapshot().road(PERSON)];
  if (!known || !road) throw new Error('Nobody there.');
  const written = (line: string) => writtenWindow(known, road, { track: item.track, day: first.day, line });
  expect(written('5x3@RPE 7')).toMatchObject({ problems: [], outcome: { change: null } });
  expect(written('3–4 × 5–6 @ RPE 7')).toMatchObject({ problems: [], outcome: { change: null } });
  expect(written('3 × 30 s').problems[0]?.says).toContain('counts repetitions');
  expect(written('heavy')).toMatchObject({ outcome: null, minutes: null });
});

test('one lift shows who trains it and, of everybody else, why not', async () => {
  const { house, first, item } = await opened();
  const lift = liftWindow(house.snapshot(), item.exercise);
  expect(lift?.people.map(({ id }) => id)).toEqual([PERSON]);
  const [person] = lift?.people ?? [];
  expect(person?.past).toEqual([]);
  expect(person?.ahead[0]).toMatchObject({ day: first.day, state: first.state });
  expect(person?.ahead[0]?.cell.line).not.toBeNull();
  expect(lift?.without.map(({ name, why }) => [name, why])).toEqual([['Sami Lindgren', 'follows no programme yet']]);
  expect(lift?.lifts.some(({ id }) => id === item.exercise)).toBe(true);
  expect(liftWindow(house.snapshot(), 'no such lift' as typeof item.exercise)).toBeNull();
});

test('a cell a million years ahead is answered at once: nothing is planned there', async () => {
  const { look, item } = await opened();
  const { cells, sessions } = look([cellAt(item.track, addDays(LAUNCH, 365_000_000), '4 × 6 @ RPE 7')]);
  expect(sessions).toEqual([]);
  expect(cells[0]?.problems[0]?.what).toContain('is on a day without a session');
});

import { expect, test } from 'vitest';
import { addDays, type Day } from '#units/day.ts';
import { liftsOf } from '#domain/card.ts';
import { idOf, type TrackId } from '#domain/identity.ts';
import { adjustTrack } from './adjust-track.ts';
import { cellBefore, cellsWritten, type CellChange } from './cell-change.ts';
import { issueDays } from './issue-days.ts';
import { LAUNCH, PERSON, startedHouse, type StartedHouse } from './started-house.fixture.ts';
import { writeCells } from './write-cells.ts';

const writing = ({ workplace, signer, snapshot }: StartedHouse) => {
  const write = (cells: readonly CellChange[], basis: number | null = null, reason = 'a test') =>
    writeCells(workplace, { person: PERSON, signer, cells, reason, basis });
  const planned = () =>
    (snapshot().road(PERSON)?.cards ?? []).flatMap((card) => (card.state === 'issued' ? [] : [card]));
  const itemOn = (day: Day, track: TrackId) =>
    planned()
      .find((card) => card.day === day)
      ?.card.items.find((item) => item.track === track);
  return { write, planned, itemOn };
};

const line = (track: TrackId, day: Day, text: string): CellChange => ({
  track,
  day,
  change: { kind: 'as written', line: text },
});

/** The first two sessions of one lift's track. */
const twoCells = ({ planned }: ReturnType<typeof writing>) => {
  const [lift] = planned().flatMap(({ card }) => liftsOf(card));
  const track = lift?.track ?? idOf<'track'>('none');
  const [first, second] = planned().flatMap(({ day, card }) =>
    card.items.some((item) => item.track === track) ? [day] : [],
  );
  if (first === undefined || second === undefined) throw new Error('The programme has no track in two sessions.');
  return { track, first, second };
};

test('several cells are written under one signature, and what stood before is told', async () => {
  const house = await startedHouse();
  const sheet = writing(house);
  const { track, first, second } = twoCells(sheet);
  const before = house.snapshot().upTo;
  const answer = await sheet.write([line(track, first, '5 x 3 @ RPE 7'), line(track, second, '3 x 5 @ RPE 7')]);
  expect(answer.kind === 'done' && answer.result.before.map(({ change }) => change.kind)).toEqual([
    'as programmed',
    'as programmed',
  ]);
  expect(sheet.itemOn(first, track)?.asWritten).toBe('5 x 3 @ RPE 7');
  expect(sheet.itemOn(second, track)?.asWritten).toBe('3 x 5 @ RPE 7');
  expect(house.snapshot().upTo).toBe(before + 2);
});

test('a cell that is written again ends what stood there; no fact is touched', async () => {
  const house = await startedHouse();
  const sheet = writing(house);
  const { track, first } = twoCells(sheet);
  await sheet.write([line(track, first, '5 x 3 @ RPE 7')]);
  const log = house.snapshot().log;
  const again = await sheet.write([line(track, first, '3 x 5 @ RPE 7')]);
  expect(
    again.kind === 'done' && again.facts.flatMap((fact) => (fact.kind === 'decided' ? [fact.decision.kind] : [])),
  ).toEqual(['end adjustment', 'adjust']);
  expect(house.snapshot().log.slice(0, log.length)).toEqual(log);
  expect(sheet.itemOn(first, track)?.asWritten).toBe('3 x 5 @ RPE 7');
});

test('what was there before, written again, takes everything back', async () => {
  const house = await startedHouse();
  const sheet = writing(house);
  const { track, first, second } = twoCells(sheet);
  await sheet.write([line(track, first, '5 x 3 @ RPE 7')]);
  const items = () => [first, second].map((day) => sheet.itemOn(day, track));
  const stood = items();
  const answer = await sheet.write([
    { track, day: first, change: { kind: 'leave out' } },
    line(track, second, '3 x 5 @ RPE 7'),
  ]);
  expect(items().map((item) => item?.asWritten)).toEqual([undefined, '3 x 5 @ RPE 7']);
  const back = answer.kind === 'done' ? await sheet.write(answer.result.before) : answer;
  expect(back.kind).toBe('done');
  expect(items()).toEqual(stood);
});

test('a lift that was left out is written in again', async () => {
  const house = await startedHouse();
  const sheet = writing(house);
  const { track, first } = twoCells(sheet);
  await sheet.write([{ track, day: first, change: { kind: 'leave out' } }]);
  expect(sheet.itemOn(first, track)).toBeUndefined();
  expect((await sheet.write([line(track, first, '3 x 5 @ RPE 7')])).kind).toBe('done');
  expect(sheet.itemOn(first, track)?.asWritten).toBe('3 x 5 @ RPE 7');
});

test('one cell that cannot be written keeps all from being written, and every problem is told at its cell', async () => {
  const house = await startedHouse();
  const sheet = writing(house);
  const { track, first, second } = twoCells(sheet);
  const before = house.snapshot().upTo;
  const restDay = addDays(first, 1);
  const answer = await sheet.write([
    line(track, first, '5 x 3 @ RPE 7'),
    line(track, second, 'five by three'),
    line(track, restDay, '5 x 3 @ RPE 7'),
    line(track, addDays(LAUNCH, -10), '5 x 3 @ RPE 7'),
    line(idOf('no such track'), first, '5 x 3 @ RPE 7'),
    line(track, first, '3 x 5 @ RPE 7'),
    line(track, second, '9'.repeat(201)),
  ]);
  expect(answer.kind === 'refused' && answer.problems.map(({ field }) => field)).toEqual([
    'cells.1',
    'cells.2',
    'cells.3',
    'cells.4',
    'cells.5',
    'cells.6',
  ]);
  if (answer.kind === 'refused')
    for (const { what, why, whatToDo } of answer.problems)
      expect([what, why, whatToDo].every((text) => text !== '')).toBe(true);
  expect(house.snapshot().upTo).toBe(before);
});

test('a line that the card cannot print is refused with its reason', async () => {
  const sheet = writing(await startedHouse());
  const { track, first } = twoCells(sheet);
  const answer = await sheet.write([line(track, first, '30 min @ 130 W')]);
  expect(answer.kind === 'refused' && answer.problems[0]?.why).toContain('Bouts of endurance');
});

test('an issued card stands as it was signed', async () => {
  const house = await startedHouse();
  const { workplace, signer, snapshot } = house;
  const sheet = writing(house);
  const { track, first, second } = twoCells(sheet);
  const reasons = Object.fromEntries(
    sheet.planned().flatMap(({ card }) => card.items.map((item) => [item.track, 'a test'] as const)),
  );
  const issued = await issueDays(workplace, { person: PERSON, signer, days: [first], basis: snapshot().upTo, reasons });
  expect(issued.kind).toBe('done');
  const answer = await sheet.write([line(track, first, '5 x 3 @ RPE 7'), line(track, second, '5 x 3 @ RPE 7')]);
  expect(answer.kind === 'refused' && answer.problems.map(({ what }) => what)).toEqual([
    expect.stringContaining('stands on an issued card'),
  ]);
});

test('a lift that is left out over several days is not brought back by one cell', async () => {
  const house = await startedHouse();
  const sheet = writing(house);
  const { track, first } = twoCells(sheet);
  await adjustTrack(house.workplace, {
    person: PERSON,
    signer: house.signer,
    change: { kind: 'leave out' },
    track,
    from: first,
    until: null,
    reason: 'a sore knee',
  });
  const answer = await sheet.write([line(track, first, '5 x 3 @ RPE 7')]);
  expect(answer.kind === 'refused' && answer.problems[0]?.what).toContain('left out over several days');
});

test('nothing is written where every cell says so already, nor where the log has moved on', async () => {
  const house = await startedHouse();
  const sheet = writing(house);
  const { track, first, second } = twoCells(sheet);
  const seen = house.snapshot().upTo;
  expect((await sheet.write([{ track, day: first, change: { kind: 'as programmed' } }])).kind).toBe('refused');
  await sheet.write([line(track, first, '5 x 3 @ RPE 7')], seen);
  expect((await sheet.write([line(track, first, '5 x 3 @ RPE 7')])).kind).toBe('refused');
  const late = await sheet.write([line(track, second, '5 x 3 @ RPE 7')], seen);
  expect(late.kind === 'refused' && late.because).toBe('moved on');
});

test('what was written for a day is known by its cell', async () => {
  const house = await startedHouse();
  const sheet = writing(house);
  const { track, first, second } = twoCells(sheet);
  await sheet.write([line(track, first, '5 x 3 @ RPE 7')]);
  const known = house.snapshot().known(PERSON);
  if (!known) throw new Error('Nobody there.');
  expect([...cellsWritten(known)]).toEqual([`${first} ${track}`]);
  expect(cellBefore(known, { track, day: first }).change).toEqual({ kind: 'as written', line: '5 x 3 @ RPE 7' });
  expect(cellBefore(known, { track, day: second }).change).toEqual({ kind: 'as programmed' });
});

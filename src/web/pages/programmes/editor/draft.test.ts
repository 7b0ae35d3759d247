import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { PHASE_NAMES } from '#domain/programme.ts';
import { SET_PROGRAMME } from '#shipped/set-programme.ts';
import { SHIPPED_EXERCISES } from '#shipped/exercises/shipped-exercises.ts';
import { rowsIn } from '#web/parts/block/fill.ts';
import { placesOf, type Block, type Place } from '#web/parts/block/selection.ts';
import { draftOf, EMPTY_DRAFT, phasesOf, programmeOf, withPhase, type Draft, type DraftPhase } from './draft.ts';
import { freePhaseNames, withNewPhase, withoutPhase } from './draft-phases.ts';
import { problemsOfDraft } from './draft-problems.ts';
import { movedCells } from './move-cells.ts';
import { itemsOfDraft } from './new-names.ts';
import { boundsOf, columnsOf, FIRST_ITEM_ROW, slotAt, textAt } from './week.ts';
import { withCells } from './write-cells.ts';

const START = draftOf(SET_PROGRAMME);
const MAIN = START.phases.findIndex(({ name }) => name === 'main flight');

const phaseOf = (draft: Draft, at = MAIN): DraftPhase => {
  const phase = draft.phases[at];
  if (!phase) throw new Error('There is no such phase.');
  return phase;
};
const typed = (draft: Draft, place: Place, value: string, at = MAIN): Draft =>
  withCells(draft, at, [{ place, value }], SHIPPED_EXERCISES);
const shown = (draft: Draft, place: Place, at = MAIN): string => textAt(phaseOf(draft, at), place, SHIPPED_EXERCISES);
const columnOf = (title: string, draft = START): number =>
  columnsOf(phaseOf(draft)).findIndex(({ session }) => session?.title === title);
const HEAVY = columnOf('Heavy day');
const at = (row: number, column = HEAVY): Place => ({ row, column });
const wholeWeek = (draft: Draft): Block => boundsOf(phaseOf(draft));
const textsOf = (draft: Draft) => rowsIn(wholeWeek(START), (place) => shown(draft, place));
const idsOf = (draft: Draft) => itemsOfDraft(draft).map(({ id }) => id);

test('a draft of a version asks for what the version asks for', () => {
  expect(phasesOf(START)).toEqual(SET_PROGRAMME.phases);
  expect(programmeOf(START)).toBe(SET_PROGRAMME.programme);
  expect(problemsOfDraft(START, SHIPPED_EXERCISES)).toEqual([]);
});

describe('a line typed into a cell', () => {
  test('changes the item that stands there and keeps who it is', () => {
    const before = slotAt(phaseOf(START), at(FIRST_ITEM_ROW));
    const after = slotAt(phaseOf(typed(START, at(FIRST_ITEM_ROW), 'Back squat 5 x 5 @ 80 %')), at(FIRST_ITEM_ROW));
    if (before.kind !== 'item' || after.kind !== 'item') throw new Error('There are items.');
    const { id, track, priority, source } = before.item;
    expect(after.item).toMatchObject({ id, track, priority, source, basis: { kind: 'from last', start: 0.8 } });
  });

  test('makes a session on a free day, with the usual machine and a track of its own', () => {
    const draft = typed(EMPTY_DRAFT, at(FIRST_ITEM_ROW, 2), 'Back squat 3 × 12 @ 65 %', 0);
    expect(phasesOf(draft)[0]?.sessions).toMatchObject([
      {
        id: 'day-3-general-preparation',
        title: 'Day 3',
        weekday: 3,
        blockMinutes: 60,
        items: [
          {
            id: 'back-squat-day-3-general-preparation',
            track: 'back squat day 3',
            machineKind: 'free bar',
            leading: true,
          },
        ],
      },
    ]);
    expect(shown(draft, at(FIRST_ITEM_ROW, 2), 0)).toBe('Back squat 3 × 12 @ 65 %, rest 2:00');
  });

  test('that cannot be read stays as it was typed, and is a problem at its cell until it can', () => {
    const draft = typed(START, at(FIRST_ITEM_ROW), 'Back squat 5 × @');
    expect(shown(draft, at(FIRST_ITEM_ROW))).toBe('Back squat 5 × @');
    const problems = problemsOfDraft(draft, SHIPPED_EXERCISES);
    expect(problems.map(({ phase, place }) => [phase, place])).toEqual([[MAIN, at(FIRST_ITEM_ROW)]]);
    const again = typed(draft, at(FIRST_ITEM_ROW), 'Back squat 4 × 6 @ 78 %, rest 2:30');
    expect(phasesOf(again)).toEqual(SET_PROGRAMME.phases);
  });

  test('of nothing takes the item out; a day whose every cell is cleared has no session', () => {
    const cleared = withCells(
      START,
      MAIN,
      placesOf({ ...wholeWeek(START), left: HEAVY, right: HEAVY }).map((place) => ({ place, value: '' })),
      SHIPPED_EXERCISES,
    );
    expect(columnsOf(phaseOf(cleared))[HEAVY]?.session).toBeNull();
    expect(phaseOf(cleared).sessions).toHaveLength(phaseOf(START).sessions.length - 1);
  });
});

test('a whole week copied as text and pasted into an empty phase says the same lines', () => {
  const empty = withPhase(START, MAIN, (phase) => ({ ...phase, sessions: [] }));
  const rows = textsOf(START);
  const cells = placesOf(wholeWeek(START)).map((place) => ({ place, value: rows[place.row]?.[place.column] ?? '' }));
  const pasted = withCells(empty, MAIN, cells, SHIPPED_EXERCISES);
  expect(textsOf(pasted)).toEqual(rows);
  expect(problemsOfDraft(pasted, SHIPPED_EXERCISES)).toEqual([]);
});

test('an item copied whole keeps what its line does not say, and is an item of its own', () => {
  const value = slotAt(phaseOf(START), at(FIRST_ITEM_ROW));
  const draft = withCells(START, MAIN, [{ place: at(FIRST_ITEM_ROW + 9), value }], SHIPPED_EXERCISES);
  const copy = slotAt(phaseOf(draft), at(FIRST_ITEM_ROW + 9));
  if (value.kind !== 'item' || copy.kind !== 'item') throw new Error('There are items.');
  expect({ ...copy.item, id: value.item.id }).toEqual(value.item);
  expect(new Set(idsOf(draft)).size).toBe(idsOf(draft).length);
});

test('whatever is typed wherever, identities stay apart and nothing else changes', () => {
  const line = fc.oneof(
    fc.constantFrom(
      'Back squat 3 × 5 @ 70 %',
      'Deadlift 5 × 5 @ RPE 7',
      'Bench press',
      '',
      '4 × 6',
      '<script>',
      'Bench press 3 × 10',
    ),
    fc.string({ maxLength: 12, unit: 'binary' }),
  );
  const cell = fc.record({
    place: fc.record({ row: fc.nat(14), column: fc.nat(6) }),
    value: line,
  });
  fc.assert(
    fc.property(fc.array(cell, { maxLength: 12 }), (cells) => {
      const draft = withCells(START, MAIN, cells, SHIPPED_EXERCISES);
      expect(new Set(idsOf(draft)).size).toBe(idsOf(draft).length);
      expect(draft.phases.filter((_, place) => place !== MAIN)).toEqual(
        START.phases.filter((_, place) => place !== MAIN),
      );
      const sessions = phaseOf(draft).sessions.map(({ weekday }) => weekday);
      expect(new Set(sessions).size).toBe(sessions.length);
      expect(() => problemsOfDraft(draft, SHIPPED_EXERCISES)).not.toThrow();
    }),
  );
});

test('lines move past each other and back, over the edge of the list not at all', () => {
  const block: Block = { top: FIRST_ITEM_ROW + 1, bottom: FIRST_ITEM_ROW + 2, left: HEAVY, right: HEAVY };
  const down = movedCells(START, MAIN, block, 1);
  expect(down && shown(down, at(FIRST_ITEM_ROW + 1))).toBe(shown(START, at(FIRST_ITEM_ROW + 3)));
  const back = down && movedCells(down, MAIN, { ...block, top: block.top + 1, bottom: block.bottom + 1 }, -1);
  expect(back).toEqual(START);
  expect(movedCells(START, MAIN, { ...block, top: FIRST_ITEM_ROW, bottom: FIRST_ITEM_ROW }, -1)).toBeNull();
  expect(movedCells(START, MAIN, { ...block, top: 0 }, 1)).toBeNull();
});

test('phases come and go where their names stand along a mission', () => {
  const draft = withNewPhase(withNewPhase(EMPTY_DRAFT, 'main flight'), 'taper');
  expect(draft.phases.map(({ name }) => name)).toEqual(['general preparation', 'taper', 'main flight']);
  expect(freePhaseNames(draft)).toEqual(
    PHASE_NAMES.filter((name) => !draft.phases.some((phase) => phase.name === name)),
  );
  expect(withoutPhase(withoutPhase(draft, 2), 1)).toEqual(EMPTY_DRAFT);
});

test('a programme of its own is known by its name', () => {
  expect(programmeOf({ ...EMPTY_DRAFT, name: 'Flight, harder!' })).toBe('flight-harder');
  expect(programmeOf({ ...START, follows: null, name: 'Another one' })).toBe('another-one');
  expect(programmeOf({ ...EMPTY_DRAFT, name: '飛行' })).toBe('programme');
});

test('a block that is no number is a problem at its cell, as a programme without a name and a session without a title', () => {
  const draft = typed(typed({ ...START, name: ' ' }, at(1), 'long'), at(0), '');
  expect(problemsOfDraft(draft, SHIPPED_EXERCISES).map(({ place }) => place)).toEqual([null, at(0), at(1)]);
});

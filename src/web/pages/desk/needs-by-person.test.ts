import { expect, test } from 'vitest';
import type { DeskLine } from '#contract/windows/desk-window.ts';
import { idOf } from '#domain/identity.ts';
import { day } from '#units/day.ts';
import { needsByPerson } from './needs-by-person.ts';

const of = (name: string) => ({ person: idOf<'person'>(name.toLowerCase()), name });
const hands = (name: string): DeskLine => ({ kind: 'hands to be looked at', ...of(name), walk: day(1), says: 'look' });
const proposal = (name: string, says: string): DeskLine => ({
  kind: 'proposal',
  ...of(name),
  proposal: idOf(says),
  says,
  raises: [],
  canSign: true,
  setsBy: null,
  behind: [],
});
const issue = (name: string): DeskLine => ({
  kind: 'cards to issue',
  ...of(name),
  says: 'issue',
  link: { to: 'sheet', says: 'Open the sheet' },
});

test('people stand where their worst line stands, with all that they need', () => {
  const needs = needsByPerson([
    hands('Oona'),
    proposal('Ines', 'a'),
    proposal('Oona', 'b'),
    issue('Ines'),
    issue('Wen'),
  ]);
  expect(
    needs.map(({ name, urgent, proposals, asks }) => [name, urgent.length, proposals.length, asks.length]),
  ).toEqual([
    ['Oona', 1, 1, 0],
    ['Ines', 0, 1, 1],
    ['Wen', 0, 0, 1],
  ]);
});

test('nobody needs anything', () => {
  expect(needsByPerson([])).toEqual([]);
});

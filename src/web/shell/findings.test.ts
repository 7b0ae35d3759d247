import { expect, test } from 'vitest';
import { cardCode } from '#domain/card-code.ts';
import { idOf } from '#domain/identity.ts';
import { findings } from './findings.ts';

const house = {
  people: [
    { id: idOf<'person'>('ines'), name: 'Ines Okafor-Lund', group: 'in flight', mission: 'Skerry 22', dayLabel: 'L−9' },
    { id: idOf<'person'>('tomas'), name: 'Tomas Varga', group: 'in flight', mission: 'Skerry 22', dayLabel: 'L−9' },
  ],
  exercises: [{ id: idOf<'exercise'>('back-squat'), name: 'Back squat', bodyPart: 'lower body', perSide: false }],
} as const;

const paths = (location: string, typed: string): readonly string[] =>
  findings(house, location, typed).map(({ path }) => path);

test('a person is found by any part of the name, in whatever case', () => {
  expect(paths('/', ' okafor')).toEqual(['/people/ines']);
});

test('an exercise leads to all people, and to the crossing of the person in view, else to the settings', () => {
  expect(paths('/people/tomas/record', 'squat')).toEqual([
    '/lift/back-squat',
    '/people/tomas/crossing?exercise=back-squat',
  ]);
  expect(paths('/', 'squat')).toEqual(['/lift/back-squat', '/settings#back-squat']);
});

test('a card is found by its code as it was read from paper, and not by a mistyped one', () => {
  const code = cardCode(idOf('0123456789abcdef'.repeat(4)));
  const [last, other] = [code.slice(-1), code.endsWith('A') ? 'B' : 'A'];
  expect(paths('/', code.toLowerCase().replace('-', ' '))).toEqual([`/cards/${code}`]);
  expect(paths('/', code.replace(new RegExp(`${last}$`), other))).toEqual([]);
});

test('nothing typed finds nothing', () => {
  expect(paths('/', '  ')).toEqual([]);
});

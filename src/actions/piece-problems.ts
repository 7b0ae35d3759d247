import { kilogramsOf } from '#units/entered.ts';
import { kilogramsPer } from '#units/mass.ts';
import type { Problem } from '#contract/problem.ts';
import type { Card, CardBouts, CardDrill } from '#domain/card.ts';
import type { FactBody, PieceResult } from '#domain/fact.ts';
import { outside, slipOfUnit, unlikely, type Range } from './plausible.ts';

type Trained = Extract<FactBody, { readonly kind: 'trained' }>;

/** Results of bouts and drills belong to the items of their card, each once, and are what a person can do. */
export const pieceProblems = ({ pieces }: Trained, card: Card): readonly Problem[] => {
  const seen = new Set<string>();
  return pieces.flatMap((piece, place) => {
    const isAgain = seen.has(piece.item);
    seen.add(piece.item);
    return problemsOf(piece, isAgain, card).map((problem) => ({
      ...problem,
      field: `pieces.${place}.${problem.field}`,
    }));
  });
};

const problemsOf = (piece: PieceResult, isAgain: boolean, card: Card): readonly Problem[] => {
  const item = card.items.find((each) => each.item === piece.item);
  if (!item) return [stranger()];
  if (item.kind === 'lift') return [lifted(item.exerciseName)];
  return [...(isAgain ? [twice(item.exerciseName)] : []), ...possible(piece, item)];
};

/** Ranges of a mean over work, common practice for adults who train; no source. */
const WATTS: Range = { least: 0, most: 600, perhaps: 'A mean of the work is meant, not a peak.' };
const SPEED: Range = { least: 0, most: 30, perhaps: 'It is taken in km/h.' };
const RATE: Range = { least: 30, most: 230, perhaps: 'A mean of the work is meant, counted over a whole minute.' };
const MINUTES: Range = { least: 0, most: 300, perhaps: 'Minutes of this item alone are meant.' };

/** More than planned may be done; beyond twice that a number was mistyped; our own design. */
const MORE = 2;

const possible = (piece: PieceResult, item: CardBouts | CardDrill): readonly Problem[] => {
  const of = item.kind === 'bouts' ? item.bouts.length : item.sets.length;
  return [
    ...(piece.done > of * MORE ? [tooManyDone(piece.done, of)] : []),
    ...inRange(piece.minutes, 'minutes', 'min', MINUTES),
    ...inRange(piece.watts, 'watts', 'W', WATTS),
    ...inRange(piece.speed, 'speed', 'km/h', SPEED),
    ...inRange(piece.heartRate, 'heartRate', '1/min', RATE),
    ...harnessProblems(piece, item),
    ...(item.kind === 'drill' && (piece.watts !== null || piece.speed !== null) ? [notOfDrill()] : []),
  ];
};

const inRange = (value: number | null, field: string, unit: string, range: Range): readonly Problem[] =>
  value === null ? [] : outside(value, unit, range).map((problem) => ({ ...problem, field }));

/** A harness that pulls more than body weight and a half was mistyped, or was typed for one side; our own design. */
const MUCH_OVER = 1.5;

const harnessProblems = ({ harness }: PieceResult, item: CardBouts | CardDrill): readonly Problem[] => {
  if (harness === null) return [];
  if (item.kind === 'drill' || !item.harness) return [noHarness(item.exerciseName)];
  const planned = item.harness.increments * Number(item.harness.increment) * kilogramsPer(item.harness.unit);
  const set = kilogramsOf(harness);
  const slips = slipOfUnit(set / kilogramsPer(harness.unit), planned / kilogramsPer(harness.unit), harness.unit);
  if (slips.length > 0) return slips.map((problem) => ({ ...problem, field: 'harness.text' }));
  return set > planned * MUCH_OVER
    ? [
        unlikely(
          `${harness.text} ${harness.unit} on the harness is more than half over what the card asks for.`,
          'The harness load goes up in small signed steps.',
          'harness.text',
        ),
      ]
    : [];
};

const stranger = (): Problem => ({
  what: 'One of the items is not on this card.',
  why: 'Results are kept by the items that were issued.',
  whatToDo: 'Open the card and type the result there.',
  field: 'item',
});

const lifted = (name: string): Problem => ({
  what: `${name} is recorded set by set.`,
  why: 'Its load moves with the sets that were done.',
  whatToDo: 'Type its sets.',
  field: 'item',
});

const twice = (name: string): Problem => ({
  what: `${name} stands above already.`,
  why: 'Each item of a card was done once.',
  whatToDo: 'Leave one of the two out.',
  field: 'item',
});

const tooManyDone = (done: number, of: number): Problem => ({
  what: `${done} done of ${of} cannot be.`,
  why: `The card asks for ${of}; up to twice that is taken.`,
  whatToDo: 'Type how many bouts or sets were done whole; minutes stand beside them.',
  field: 'done',
});

const noHarness = (name: string): Problem => ({
  what: `${name} is done without a harness.`,
  why: 'A harness load counts for the next treadmill session.',
  whatToDo: 'Leave it empty, or type it at the treadmill.',
  field: 'harness.text',
});

const notOfDrill = (): Problem => ({
  what: 'A drill has no watts and no speed.',
  why: 'They belong to a cycle or a belt.',
  whatToDo: 'Leave them empty.',
  field: 'done',
});

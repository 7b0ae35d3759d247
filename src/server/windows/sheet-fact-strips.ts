import type { Day } from '#units/day.ts';
import { liftsOf } from '#domain/card.ts';
import { ofKind, type Known } from '#domain/known.ts';
import type { Road } from '#domain/road.ts';
import type { SheetStrip } from '#contract/windows/sheet-window.ts';
import { cardOf } from './sheet-cell.ts';

type Span = SheetStrip['spans'][number];

const withText = (what: string, text: string): string => (text === '' ? what : `${what}: ${text}`);

export const spaceWalks = (known: Known): readonly Span[] =>
  ofKind(known, 'space walk').map(({ day, text }) => ({
    from: day,
    to: day,
    says: text === '' ? 'planned' : text,
    tone: 'caution',
    shape: 'mark',
  }));

/** Travel, rest, tests and whatever else leaves less time. */
export const setAside = (known: Known): readonly Span[] =>
  ofKind(known, 'set aside').map(({ from, until, what, minutes, text }) => ({
    from,
    to: until,
    says: withText(`${what}, ${minutes === 0 ? 'no time' : `${minutes} min a day`}`, text),
    tone: 'plain',
    shape: 'bar',
  }));

/** What was tested on a day, each kind once: "cycle stage, greatest grip". */
export const tests = (known: Known): readonly Span[] => {
  const facts = ofKind(known, 'tested');
  return [...new Set(facts.map(({ day }) => day))].map((day) => ({
    from: day,
    to: day,
    says: [...new Set(facts.filter((fact) => fact.day === day).map(({ test }) => test.what))].join(', '),
    tone: 'plain',
    shape: 'mark',
  }));
};

/** A lift is not raised while a note on it waits to be read. */
export const unreadNotes = (known: Known): readonly Span[] => {
  const read = new Set(ofKind(known, 'read').map(({ note }) => note));
  return ofKind(known, 'noted')
    .filter(({ id }) => !read.has(id))
    .map(({ day, text }) => ({ from: day, to: day, says: `“${text}”`, tone: 'caution', shape: 'mark' }));
};

const between = (values: readonly number[]): string => {
  const [least, most] = [Math.min(...values).toFixed(2), Math.max(...values).toFixed(2)];
  return least === most ? least : `${least} to ${most}`;
};

/** Where the ramps stand in the sessions ahead, from the lift that is least far on to the one that is farthest. */
export const ramps = (road: Road, today: Day, to: Day): readonly Span[] => {
  const ahead = road.cards.filter(({ day }) => day >= today);
  const own = ahead.flatMap((card) => liftsOf(cardOf(card)).flatMap(({ ramp }) => ramp ?? []));
  const [first] = ahead.filter((card) => liftsOf(cardOf(card)).some(({ ramp }) => ramp !== null));
  if (!first) return [];
  const [effort, share] = [own.map((ramp) => ramp.effort), own.map((ramp) => ramp.share)];
  return [
    {
      from: first.day,
      to,
      says: `effort ${between(effort)}, body weight added back ${between(share)}`,
      tone: 'plain',
      shape: 'bar',
    },
  ];
};

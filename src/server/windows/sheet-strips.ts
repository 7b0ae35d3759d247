import { addDays, type Day } from '#units/day.ts';
import { showRestriction } from '#domain/restriction.ts';
import { ofKind, type Known } from '#domain/known.ts';
import type { Decision } from '#domain/decision.ts';
import type { Fact } from '#domain/fact.ts';
import type { Road } from '#domain/road.ts';
import type { SheetStrip } from '#contract/windows/sheet-window.ts';
import { cardOf } from './sheet-cell.ts';
import { ramps, setAside, spaceWalks, tests, unreadNotes } from './sheet-fact-strips.ts';

type Adjust = Extract<Decision, { readonly kind: 'adjust' }>;
type Span = SheetStrip['spans'][number];

/** What lies over several sessions, or happened between them: phases and restrictions, tests and unread notes. */
export const sheetStrips = (
  known: Known,
  road: Road,
  today: Day,
  { from, to }: { readonly from: Day; readonly to: Day },
): readonly SheetStrip[] =>
  [
    { label: 'Phase', spans: phases(road) },
    { label: 'Ramps', spans: ramps(road, today, to) },
    { label: 'Restriction', spans: restrictions(known, to) },
    { label: 'Held or backed off', spans: adjustments(known, to) },
    { label: 'Machine out', spans: machinesOut(known, to) },
    { label: 'Calibration', spans: calibrations(known) },
    { label: 'Space walk', spans: spaceWalks(known) },
    { label: 'Set aside', spans: setAside(known) },
    { label: 'Tests', spans: tests(known) },
    { label: 'Unread notes', spans: unreadNotes(known) },
  ]
    .map(({ label, spans }) => ({ label, spans: spans.flatMap((span) => within(span, from, to)) }))
    .filter(({ spans }) => spans.length > 0);

const within = (span: Span, from: Day, to: Day): readonly Span[] =>
  span.to < from || span.from > to
    ? []
    : [{ ...span, from: span.from < from ? from : span.from, to: span.to > to ? to : span.to }];

const bar = (from: Day, to: Day, says: string, tone: Span['tone']): Span => ({ from, to, says, tone, shape: 'bar' });

const phases = (road: Road): readonly Span[] => {
  const spans: Span[] = [];
  for (const each of road.cards) {
    const { phase, deload } = cardOf(each);
    const says = deload ? `${phase}, easier week` : phase;
    const last = spans.at(-1);
    if (last?.says === says) spans[spans.length - 1] = { ...last, to: each.day };
    else spans.push(bar(each.day, each.day, says, 'plain'));
  }
  return spans;
};

/** Restrictions that stand or stood, with the day on which they were lifted. */
export const restrictionsOf = (
  known: Known,
): readonly { readonly fact: Fact<'restricted'>; readonly says: string; readonly liftedOn: Day | null }[] =>
  ofKind(known, 'restricted').map((fact) => ({
    fact,
    says: showRestriction(fact.restriction, (id) => known.house.exercises.get(id)?.name.toLowerCase() ?? 'an exercise'),
    liftedOn: ofKind(known, 'restriction lifted').find((lifted) => lifted.restriction === fact.id)?.on ?? null,
  }));

const restrictions = (known: Known, to: Day): readonly Span[] =>
  restrictionsOf(known).map(({ fact, says, liftedOn }) =>
    bar(fact.restriction.from, liftedOn === null ? to : addDays(liftedOn, -1), says, 'stop'),
  );

const adjustments = (known: Known, to: Day): readonly Span[] => {
  const decisions = ofKind(known, 'decided');
  const ended = new Set(
    decisions.flatMap(({ decision }) => (decision.kind === 'end adjustment' ? [decision.adjustment] : [])),
  );
  const standing = decisions.flatMap(({ id, decision }) =>
    decision.kind !== 'adjust' || ended.has(id) || isSeenInItsCell(decision) ? [] : [decision],
  );
  return together(standing).map((alike) => adjustmentSpan(alike, to));
};

/** The same change over the same days for the same reason is said once, with every track it is made to. */
const together = (adjusts: readonly Adjust[]): readonly (readonly [Adjust, ...Adjust[]])[] => {
  const groups = new Map<string, [Adjust, ...Adjust[]]>();
  for (const adjust of adjusts) {
    const { change, from, until, reason } = adjust;
    const name = JSON.stringify([change, from, until, reason]);
    const group = groups.get(name);
    if (group) group.push(adjust);
    else groups.set(name, [adjust]);
  }
  return [...groups.values()];
};

/** What was written or left out for one day alone stands in the cell of that day. */
const isSeenInItsCell = ({ change, from, until }: Adjust): boolean =>
  from === until && (change.kind === 'as written' || change.kind === 'leave out');

const SAID: Readonly<Partial<Record<Adjust['change']['kind'], string>>> = {
  hold: 'held',
  'leave out': 'left out',
};

/** A back-off happens on its day; everything else lasts. */
const adjustmentSpan = (alike: readonly [Adjust, ...Adjust[]], to: Day): Span => {
  const { change, from, until, reason } = alike[0];
  const tracks = [...new Set(alike.map(({ track }) => track))].join(', ');
  if (change.kind === 'back off')
    return { ...bar(from, from, `${tracks} backed off: ${reason}`, 'caution'), shape: 'mark' };
  const says = change.kind === 'as written' ? `as written, ${change.line}` : (SAID[change.kind] ?? change.kind);
  return bar(from, until ?? to, `${tracks} ${says}: ${reason}`, 'caution');
};

const machinesOut = ({ house, mission }: Known, to: Day): readonly Span[] =>
  [...house.machines.values()]
    .filter(({ site }) => mission === null || site === mission.site)
    .flatMap(({ name, outOfService: out }) =>
      out ? [bar(out.from, out.until ?? to, `${name} out: ${out.reason}`, 'caution')] : [],
    );

const calibrations = ({ house }: Known): readonly Span[] =>
  house.calibrations.map(({ day, machine, factor }) => ({
    from: day,
    to: day,
    says: `${house.machines.get(machine)?.name ?? machine} delivers ${factor} of what is set`,
    tone: 'plain',
    shape: 'mark',
  }));

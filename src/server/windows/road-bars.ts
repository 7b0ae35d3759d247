import { addDays, type Day } from '#units/day.ts';
import { ofKind, type Known } from '#domain/known.ts';
import type { RoadLayout } from '#planning/road-layout.ts';
import type { RoadBar, RoadSpan } from '#contract/windows/road-window.ts';
import { recordSays } from './record-says.ts';
import { restrictionsOf } from './sheet-strips.ts';

/** Restrictions of the days that are drawn; one that nobody lifted goes on. */
export const restrictionBars = (known: Known, drawn: RoadSpan): readonly RoadBar[] =>
  restrictionsOf(known).flatMap(({ fact, says, liftedOn }) =>
    barWithin(drawn, fact.restriction.from, liftedOn === null ? null : addDays(liftedOn, -1), says),
  );

/** What was signed for this person alone: alike over the same days is one bar. */
export const adjustmentBars = (known: Known, drawn: RoadSpan): readonly RoadBar[] => {
  const decisions = ofKind(known, 'decided');
  const ended = new Set(
    decisions.flatMap(({ decision }) => (decision.kind === 'end adjustment' ? [decision.adjustment] : [])),
  );
  const bars = decisions.flatMap((fact) => {
    const { decision } = fact;
    if (decision.kind !== 'adjust' || ended.has(fact.id)) return [];
    const until = decision.change.kind === 'back off' ? decision.from : decision.until;
    return barWithin(drawn, decision.from, until, recordSays(fact, known.house));
  });
  return bars.reduce(together, []);
};

const together = (bars: readonly RoadBar[], bar: RoadBar): readonly RoadBar[] => {
  const alike = bars.find((each) => each.first === bar.first && each.last === bar.last && each.isOpen === bar.isOpen);
  return alike
    ? bars.map((each) => (each === alike ? { ...each, says: `${each.says}; ${bar.says}` } : each))
    : [...bars, bar];
};

const barWithin = (drawn: RoadSpan, from: Day, until: Day | null, says: string): readonly RoadBar[] => {
  const last = until ?? drawn.last;
  if (last < drawn.first || from > drawn.last || last < from) return [];
  return [
    {
      first: Math.max(from, drawn.first) as Day,
      last: Math.min(last, drawn.last) as Day,
      says,
      isOpen: until === null || until > drawn.last,
    },
  ];
};

/** Travel, rest, hand-over and the rest of what takes days, with the minutes that are left of them. */
export const setAsideBars = (layout: RoadLayout): readonly RoadBar[] =>
  layout.setAside.flatMap(({ what, from, until, minutes, text }) => {
    const left = minutes === 0 ? '' : `, ${minutes} min a day left`;
    return barWithin(layout, from, until, `${what}${left}${text === '' ? '' : `: ${text}`}`);
  });

export const holdBars = (layout: RoadLayout): readonly RoadBar[] =>
  layout.holds.flatMap(({ fact, first, last, phase }) => {
    const bars = barWithin(
      layout,
      first,
      last,
      `holds${phase === null ? '' : ` in ${phase}`}${fact.text === '' ? '' : `: ${fact.text}`}`,
    );
    return bars.map((bar) => ({ ...bar, isOpen: fact.until === null }));
  });

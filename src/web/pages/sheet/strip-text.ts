import { addDays, type Day } from '#units/day.ts';
import type { SheetStrip } from '#contract/windows/sheet-window.ts';
import { shortDate } from '../../parts/dates.ts';

type Span = SheetStrip['spans'][number];

const isAlike = (a: Span, b: Span): boolean =>
  a.from === b.from && a.to === b.to && a.tone === b.tone && a.shape === b.shape;

/** What holds over the same days is said in one breath; what stands or comes first, what is past after it. */
export const saidTogether = (spans: readonly Span[], today: Day): readonly Span[] =>
  spans
    .reduce<readonly Span[]>((kept, span) => {
      const at = kept.findIndex((other) => isAlike(other, span));
      return at < 0
        ? [...kept, span]
        : kept.map((other, i) => (i === at ? { ...other, says: `${other.says}; ${span.says}` } : other));
    }, [])
    .toSorted((a, b) => Number(a.to < today) - Number(b.to < today) || a.from - b.from);

/** "from Mon 22 Mar", "until Fri 5 Mar", "on Sun 28 Feb"; nothing where it stands all along. */
export const whenOf = ({ from, to, shape }: Span, today: Day, last: Day): string => {
  if (shape === 'mark' || from === to) return `on ${shortDate(from)}`;
  if (to < today) return `until ${shortDate(to)}`;
  const [begins, ends] = [from > today, to < last];
  return [begins ? `from ${shortDate(from)}` : '', ends ? `until ${shortDate(to)}` : '']
    .filter((part) => part !== '')
    .join(' ');
};

/** A week back what happened still tells why the next session is as it is. */
const DAYS_FRESH = 7;

/** What stands, comes or has just been; and what lies further back. */
export const byAge = (
  spans: readonly Span[],
  today: Day,
): { readonly now: readonly Span[]; readonly earlier: readonly Span[] } => {
  const isOld = ({ to, shape }: Span): boolean => to < (shape === 'mark' ? addDays(today, -DAYS_FRESH) : today);
  return { now: spans.filter((span) => !isOld(span)), earlier: spans.filter(isOld) };
};

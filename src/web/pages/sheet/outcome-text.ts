import type { SheetCell } from '#contract/windows/sheet-window.ts';
import type { BarChange, SessionMinutes } from '#contract/windows/written-window.ts';
import { showChange, showFraction } from '../../parts/loads.ts';

/** "from 270, −5.8 % at the bar", "as in use", "by effort", "first load". */
export const barChangeText = (change: BarChange | null, cell: SheetCell): string => {
  if (!change) {
    if (cell.sets.some(({ load }) => load.kind === 'start at')) return 'by effort';
    return cell.raise ? 'first load' : '–';
  }
  const { from, to, atTheBar } = change;
  if (from === to) return 'as in use';
  return `from ${from}${atTheBar === null ? '' : `, ${showChange(atTheBar)} at the bar`}`;
};

/** "true fraction 0.74", where a capacity is known. */
export const fractionText = ({ raise, trueFraction }: SheetCell): readonly string[] => {
  const fraction = raise?.trueFraction?.is ?? trueFraction;
  return fraction === null ? [] : [`true fraction ${showFraction(fraction)}`];
};

export const timeText = ({ was, is, block }: SessionMinutes): string =>
  `${is} of ${block} min${is === was ? '' : `, was ${was}`}`;

/** Less than this over the ground is not worth a word. */
const WORTH_SAYING = 0.005;

/** "shoulders +34 % against the ground", where they carry more. */
export const shouldersText = (excess: number | null): readonly string[] =>
  excess === null || Math.abs(excess) < WORTH_SAYING
    ? []
    : [`shoulders ${excess > 0 ? '+' : '−'}${Math.abs(excess * 100).toFixed(0)}\u00a0% against the ground`];

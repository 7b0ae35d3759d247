import type { Column, Row } from '../layout/sheet-layout.ts';
import { oddity, refusal } from '../place.ts';
import type { Judgement } from './possible.ts';
import type { Report } from './report.ts';

/** Says what a judgement found, at its cell; true where the value may stand. */
export const mayStand = ({ refused, odd }: Judgement, row: Row, column: Column, report: Report): boolean => {
  if (refused) report.say(refusal(refused, row.number, column.place));
  else if (odd) report.say(oddity(odd, row.number, column.place));
  return refused === null;
};

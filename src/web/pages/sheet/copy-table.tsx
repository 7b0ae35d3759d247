import { useState } from 'react';
import type { SheetWindow } from '#contract/windows/sheet-window.ts';
import { shortDate } from '../../parts/dates.ts';
import { Button } from '../../parts/button.tsx';
import { rowsOf } from './grid-places.ts';

/** The sheet as a spreadsheet takes it: columns apart by tabs, planned and done as rows of their own. */
export const sheetAsText = (sheet: SheetWindow): string => {
  const head = ['exercise', '', ...sheet.columns.map(({ day, missionDay }) => `${shortDate(day)} (${missionDay})`)];
  const rows = rowsOf(sheet).flatMap(({ name, cells }) => [
    [name, 'planned', ...cells.map((cell) => cell?.planned ?? '')],
    [name, 'done', ...cells.map((cell) => cell?.done ?? '')],
  ]);
  return [head, ...rows].map((row) => row.map((text) => text.replace(/[\t\n]/g, ' ')).join('\t')).join('\n');
};

export const CopyTable = ({ sheet }: { readonly sheet: SheetWindow }) => {
  const [said, setSaid] = useState('');
  const copy = (): void => {
    navigator.clipboard.writeText(sheetAsText(sheet)).then(
      () => setSaid('Copied.'),
      () => setSaid('The browser did not allow copying.'),
    );
  };
  return (
    <>
      <Button onPress={copy}>Copy as a table</Button>
      <output className="soft small">{said}</output>
    </>
  );
};

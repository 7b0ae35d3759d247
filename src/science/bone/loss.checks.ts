import { printedResults, printedRows, type Check } from '../check.ts';
import { AXPE_2020, RECOMPUTED, SCIPY } from '../sources.ts';
import { daysToRecover, remainingDeficit } from './recovery.ts';
import { PUBLISHED_LOSSES } from './published-losses.table.ts';
import { fitPlateau, saturatingLoss } from './saturating-loss.ts';

const SIX = 'here to six decimals';

export const recoveryChecks: readonly Check[] = printedRows(RECOMPUTED, 5e-7, SIX, [
  [remainingDeficit, [6.8, 365, 211], 2.050075],
  [remainingDeficit, [4.9, 365, 151], 0.917362],
  [remainingDeficit, [7.8, 365, 255], 2.892068],
  [remainingDeficit, [7.7, 365, 97], 0.567217],
  [remainingDeficit, [2.9, 365, 163], 0.614204],
  [daysToRecover, [6.8, 2, 211], 372.527831],
  [daysToRecover, [7.7, 2, 97], 188.651269],
]);

const plateau = (read: 'value' | 'sd') => (): number => {
  const found = fitPlateau(PUBLISHED_LOSSES.rows);
  return found.kind === 'estimate' ? found[read] : Number.NaN;
};

export const saturatingChecks: readonly Check[] = [
  ...printedRows(
    AXPE_2020,
    0.01,
    'a half-life printed in whole days moves the loss by less than a hundredth of a percent',
    [[saturatingLoss, [60, 1088], 30]],
  ),
  ...printedRows(
    AXPE_2020,
    0.015,
    'a time constant printed to ten days moves the loss by about a hundredth of a percent',
    [[saturatingLoss, [100, 1570], 63.21205588]],
  ),
  ...printedResults(fitPlateau, SCIPY, 1e-5, 'SciPy’s search stops within a millionth of the value', [
    ['plateau of the published losses', plateau('value'), 68.945667],
    ['its standard deviation', plateau('sd'), 6.462436],
  ]),
];

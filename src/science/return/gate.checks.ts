import { printedResults, printedRows, type Check } from '../check.ts';
import { WORKED_GATE } from './gate-example.ts';
import { latestTestRule } from './latest-test-rule.ts';
import { lastTestsOverLine, probabilityOfMean } from './probability-over-line.ts';
import { COUNTED_BY_HAND, SCIPY } from '../sources.ts';
import { stageGate } from './stage-gate.ts';
import { stageRegression } from './stage-regression.ts';

const EIGHT = 'printed to eight decimals';
const HALF_OF_EIGHT = 0.5e-8;
const COUNTED = 'a count';

const passes = (latest: number, previous: number): number => {
  const found = latestTestRule({ latest, previous, typicalError: 3, line: 90 });
  return found.kind === 'passes' ? 1 : 0;
};

const probabilityOf = (scores: readonly number[], typicalError: number, line: number): number => {
  const found = lastTestsOverLine(scores, typicalError, line);
  return found.kind === 'estimate' ? found.probability : Number.NaN;
};

const blockingOf = (changes: Partial<typeof WORKED_GATE>): number => {
  const reading = stageGate({ ...WORKED_GATE, ...changes });
  return reading.kind === 'refused' ? Number.NaN : reading.blocking.length;
};

const agilityNow = (score: number): Partial<typeof WORKED_GATE> => ({
  scores: {
    ...WORKED_GATE.scores,
    agility: [
      { on: 17, score: 89 },
      { on: 20, score },
    ],
  },
});

export const probabilityChecks: readonly Check[] = [
  ...printedRows(SCIPY, HALF_OF_EIGHT, EIGHT, [
    [probabilityOfMean, [90, 3, 5, 90], 0.5],
    [probabilityOfMean, [95, 1, 5, 90], 0.84134475],
    [probabilityOfMean, [95, 3, 5, 90], 0.95836774],
    [probabilityOfMean, [88, 2, 3, 90], 0.17288929],
  ]),
  ...printedResults(lastTestsOverLine, SCIPY, HALF_OF_EIGHT, EIGHT, [
    [
      'agility of 89 and 92.307692 %, typical error 3, line 90',
      () => probabilityOf([89, 1200 / 13], 3, 90),
      0.62104483,
    ],
    [
      'only the last three of 60, 96, 97, 95 count; typical error 5, line 98',
      () => probabilityOf([60, 96, 97, 95], 5, 98),
      0.24421116,
    ],
  ]),
];

export const gateChecks: readonly Check[] = [
  ...printedResults(latestTestRule, COUNTED_BY_HAND, 0, 'yes is 1, no is 0', [
    ['agility of 92.3 after 89 %, line 90, typical error 3: near, and once only', () => passes(1200 / 13, 89), 0],
    ['the same after 90.5 %', () => passes(1200 / 13, 90.5), 1],
  ]),
  ...printedResults(stageGate, COUNTED_BY_HAND, 0, COUNTED, [
    ['the worked gate: items that block', () => blockingOf({}), 0],
    ['the worked gate with agility of 89 and 90.9 %', () => blockingOf(agilityNow(90.9)), 1],
    ['the worked gate on the sixth day of the stage', () => blockingOf({ enteredStage: 15 }), 1],
    ['the worked gate a day after a fall', () => blockingOf({ redFlags: [{ on: 20, what: 'a fall' }] }), 1],
  ]),
  ...printedResults(stageRegression, COUNTED_BY_HAND, 0, 'going back is 1, staying is 0', [
    [
      'agility of 84.1 %, line 90, typical error 3: stay',
      () => Number(stageRegression({ ...WORKED_GATE, ...agilityNow(84.1) }).kind === 'go back'),
      0,
    ],
    [
      'agility of 84 %: go back',
      () => Number(stageRegression({ ...WORKED_GATE, ...agilityNow(84) }).kind === 'go back'),
      1,
    ],
  ]),
];

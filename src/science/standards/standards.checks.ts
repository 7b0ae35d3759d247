import { boneScore, youngReference } from '../bone/bone-score.ts';
import { printedResults, printedRows, type Check } from '../check.ts';
import { RECOMPUTED, SCIPY } from '../sources.ts';
import { chanceAtLeast, chanceAtLeastOfLog } from './chance.ts';
import { chanceOfMeeting, type Belief } from './chance-of-meeting.ts';
import { judgeMeasured } from './judge-measured.ts';
import { BASELINE_2007 } from './profiles.table.ts';
import type { StandardRule } from './rule.ts';
import { boneDensity } from '#units/quantity.ts';

const rule = (id: string): StandardRule => {
  const found = BASELINE_2007.rules.find((each) => each.id === id);
  if (!found) throw new RangeError(`The profile holds no rule "${id}".`);
  return found;
};

/** Hip of a man at 0.980 g/cm². */
const marginBeforeFlight = (): number => {
  const score = boneScore(boneDensity(0.98), youngReference('total hip', 'male', 'sex-matched'));
  if (score.kind !== 'estimate') return Number.NaN;
  const verdict = judgeMeasured(rule('bone-before'), { value: score.value, reference: 'sex-matched' });
  return verdict.kind === 'meets' ? verdict.margin : Number.NaN;
};

const chance = (id: string, belief: Belief) => (): number => {
  const found = chanceOfMeeting(rule(id), belief);
  return found.kind === 'estimate' ? found.value : Number.NaN;
};

export const ruleChecks: readonly Check[] = printedResults(
  judgeMeasured,
  RECOMPUTED,
  5e-7,
  'the score to six decimals, against a limit of exactly −1',
  [['margin of a hip before flight, a man at 0.980 g/cm²', marginBeforeFlight, 0.576389]],
);

const SIX = 'here to six decimals';

export const chanceChecks: readonly Check[] = [
  ...printedRows(SCIPY, 5e-7, SIX, [
    [chanceAtLeast, [-4, -3.242884, 2.082869], 0.641883],
    [chanceAtLeast, [-7, -3.242884, 2.082869], 0.96437],
    [chanceAtLeast, [-2, -1.5, 0.25], 0.97725],
    [chanceAtLeastOfLog, [0.66, -0.38, 0.03], 0.881763],
  ]),
  ...printedRows(RECOMPUTED, 1e-4, 'a forecast whose median and interval are printed to four decimals', [
    [chanceAtLeastOfLog, [34, Math.log(38.0926), Math.log(42.5026 / 34.1403) / (2 * 1.644854)], 1 - 0.04394],
    [chanceAtLeastOfLog, [34, Math.log(37.5723), Math.log(45.1597 / 31.2597) / (2 * 1.644854)], 1 - 0.18582],
  ]),
  ...printedResults(chanceOfMeeting, SCIPY, 5e-7, SIX, [
    [
      'T score of −1.5 ± 0.25 after flight',
      chance('bone-after', { scale: 'normal', mean: -1.5, sd: 0.25, reference: 'sex-matched' }),
      0.97725,
    ],
    [
      'density of a neck with a logarithm of −0.38 ± 0.03, after flight, a man',
      chance('bone-after', {
        scale: 'log density',
        mean: -0.38,
        sd: 0.03,
        reference: youngReference('femoral neck', 'male', 'sex-matched'),
      }),
      0.881763,
    ],
  ]),
];

import type { Newtons } from '#units/quantity.ts';
import { evaluate } from '../evaluate.ts';
import { formula } from '../formula.ts';
import { method } from '../method.ts';
import { COMMON_PRACTICE } from '../sources.ts';
import { force } from './inputs.ts';
import { ANDERSSON_2017, ROTATION_RATIO_PRACTICE, SHOULDER_MEMORANDUM_2003 } from './sources.ts';

/** Lines of a screen of the shoulder; from memory and practice, editable. */
export const LEAST_ROTATION_RATIO = 0.75;
export const MOST_SIDE_DIFFERENCE = 0.1;

const rotation = (name: string, symbol: string) => force(name, symbol, [5, 1000], [30, 400]);

/** Strength of external over internal rotation of a shoulder. */
export const rotationRatio = formula(
  {
    id: 'shoulder/rotation-ratio',
    revision: 1,
    title: 'Strength of external over internal rotation of a shoulder',
    equation: 'q = F_external / F_internal',
    inputs: [
      rotation('force of external rotation', 'F_external'),
      rotation('force of internal rotation', 'F_internal'),
    ],
    output: { name: 'ratio of rotations', symbol: 'q', unit: '1' },
    source: ROTATION_RATIO_PRACTICE,
    doesNotKnow:
      'Posture and lever: both forces must come from the same posture, isometric, at the same place of the forearm.',
  },
  (external: Newtons, internal: Newtons): number => external / internal,
);

/** Difference of two sides, of the stronger. */
export const sideDifference = formula(
  {
    id: 'shoulder/side-difference',
    revision: 1,
    title: 'Difference of two sides, of the stronger',
    equation: 'Δ = |F_left − F_right| / max(F_left, F_right)',
    inputs: [rotation('force of the left side', 'F_left'), rotation('force of the right side', 'F_right')],
    output: { name: 'difference of sides', symbol: 'Δ', unit: '1' },
    source: COMMON_PRACTICE,
    doesNotKnow: 'Which side is the better one: throwers are uneven without harm.',
  },
  (left: Newtons, right: Newtons): number => Math.abs(left - right) / Math.max(left, right),
);

export interface Rotations {
  readonly external: Newtons;
  readonly internal: Newtons;
}

export interface ShoulderFinding {
  readonly what: string;
  readonly value: number | 'yes' | 'no';
  readonly line: string;
  readonly met: boolean;
}

export type ShoulderScreen =
  | {
      readonly kind: 'estimate';
      /** Lower of the two ratios. */
      readonly value: number;
      readonly findings: readonly ShoulderFinding[];
      readonly cautions: readonly string[];
    }
  | { readonly kind: 'refused'; readonly reason: string };

const PAIN = 'An arc that hurts goes to the physician before any load.';

/** A screen of both shoulders before suited work. */
export const screenShoulders = method(
  {
    id: 'shoulder/screen',
    revision: 1,
    title: 'Screen of both shoulders before suited work',
    equations: ['q = F_external / F_internal ≥ 0.75 on each side', 'Δ_external ≤ 0.10', 'no painful arc'],
    inputs: rotationRatio.record.inputs,
    outputs: [rotationRatio.record.output, sideDifference.record.output],
    refuses: ['A force outside 5 to 1 000 N.'],
    source: COMMON_PRACTICE,
    restsOn: [ROTATION_RATIO_PRACTICE, SHOULDER_MEMORANDUM_2003, ANDERSSON_2017],
    doesNotKnow:
      'Whether these lines foretell trouble in a suit: the ratio is from memory and from throwing, the rest is practice. It is no diagnosis.',
  },
  (left: Rotations, right: Rotations, painfulArc: boolean): ShoulderScreen => {
    const sides = [
      { side: 'left', met: evaluate(rotationRatio, [left.external, left.internal]) },
      { side: 'right', met: evaluate(rotationRatio, [right.external, right.internal]) },
    ];
    const reasons = sides.flatMap(({ side, met }) =>
      met.kind === 'refused' ? met.reasons.map((each) => `${side}: ${each}`) : [],
    );
    if (reasons.length > 0) return { kind: 'refused', reason: reasons.join(' ') };
    const ratios = sides.flatMap(({ side, met }) => (met.kind === 'value' ? [{ side, value: met.value }] : []));
    const between = sideDifference(left.external, right.external);
    return {
      kind: 'estimate',
      value: Math.min(...ratios.map(({ value }) => value)),
      findings: [
        ...ratios.map(({ side, value }) => ({
          what: `external over internal rotation, ${side}`,
          value,
          line: 'at least 0.75',
          met: value >= LEAST_ROTATION_RATIO,
        })),
        {
          what: 'difference of the sides in external rotation',
          value: between,
          line: 'at most 0.10',
          met: between <= MOST_SIDE_DIFFERENCE,
        },
        { what: 'painful arc', value: painfulArc ? 'yes' : 'no', line: 'no', met: !painfulArc },
      ],
      cautions: painfulArc ? [PAIN] : [],
    };
  },
);

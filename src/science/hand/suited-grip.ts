import { fraction, newtons, type Fraction, type Newtons } from '#units/quantity.ts';
import { evaluate } from '../evaluate.ts';
import { method } from '../method.ts';
import { handSizeLosses, type HandSize } from './glove.table.ts';
import { gloveFactorByHandSize, gloveFactorByPressure, suitedMaximum, WORKING_PRESSURE } from './glove-factor.ts';
import { BISHU_1995, ROESCH_1986 } from './sources.ts';

/** What is known of the glove: a maximum measured in it is worth more than any published loss. */
export type Glove =
  | { readonly kind: 'measured'; readonly suitedMaximum: Newtons }
  | { readonly kind: 'by pressure'; readonly kilopascals: number }
  | { readonly kind: 'by hand size'; readonly size: HandSize };

export type SuitedGrip =
  | {
      readonly kind: 'estimate';
      /** Suited maximum. */
      readonly value: Newtons;
      /** Share of bare grip left. */
      readonly factor: Fraction;
      readonly label: 'measured in the suit' | 'assumed glove loss';
      readonly cautions: readonly string[];
    }
  | { readonly kind: 'refused'; readonly reason: string };

const measured = (bare: Newtons, suited: Newtons): SuitedGrip => {
  if (!(suited > 0 && suited <= bare))
    return {
      kind: 'refused',
      reason: `The maximum in the suit (${suited} N) must lie above 0 and not above that of the bare hand (${bare} N): see which was which, and measure again.`,
    };
  return {
    kind: 'estimate',
    value: suited,
    factor: fraction(suited / bare),
    label: 'measured in the suit',
    cautions: [],
  };
};

const assumed = (bare: Newtons, factor: Fraction, caution: string): SuitedGrip => ({
  kind: 'estimate',
  value: suitedMaximum(bare, factor),
  factor,
  label: 'assumed glove loss',
  cautions: [`Assumed glove loss: ${caution}. Between gloves the share left runs from 0.1 to 0.6; measure it.`],
});

const byPressure = (bare: Newtons, kilopascals: number): SuitedGrip => {
  const left = evaluate(gloveFactorByPressure, [kilopascals]);
  return left.kind === 'refused'
    ? { kind: 'refused', reason: `${left.reasons.join(' ')} Measure the maximum in the suit instead.` }
    : assumed(bare, fraction(left.value), `mean of 16 people at ${kilopascals} kPa`);
};

const byHandSize = (bare: Newtons, size: HandSize): SuitedGrip => {
  const row = handSizeLosses.rows.find((each) => each.size === size);
  if (!row) return { kind: 'refused', reason: `No loss is published for the hand size "${size}".` };
  const bound = row.atMost ? ', with its loss taken at the printed upper bound' : '';
  const caution = `mean of ${size} hands at ${WORKING_PRESSURE.toFixed(1)} kPa${bound}`;
  return assumed(bare, gloveFactorByHandSize(fraction(row.loss)), caution);
};

/** Grip maximum in the suit: measured if it was, else from a published loss, and labelled so. */
export const suitedGrip = method(
  {
    id: 'hand/suited-grip',
    revision: 1,
    title: 'Grip maximum in the suit [N], measured or assumed',
    equations: [
      'g = F_suited / F_bare if measured',
      'g = 0.65 − 0.07 (p − 3.4473785) / 26.2000766 by pressure',
      'g = 0.65 (1 − l) by hand size at 29.6 kPa',
      'F_suited = g · F_bare',
    ],
    inputs: [...suitedMaximum.record.inputs, ...gloveFactorByPressure.record.inputs],
    outputs: [suitedMaximum.record.output, gloveFactorByPressure.record.output],
    refuses: [
      'A bare maximum outside 20 to 2 000 N.',
      'A maximum in the suit above that of the bare hand.',
      'A pressure outside the two that were measured.',
    ],
    source: ROESCH_1986,
    restsOn: [BISHU_1995],
    doesNotKnow: suitedMaximum.record.doesNotKnow,
  },
  (bare: Newtons, glove: Glove): SuitedGrip => {
    if (!(bare >= 20 && bare <= 2000))
      return { kind: 'refused', reason: `The bare grip maximum must lie in 20 to 2000 N; it is ${bare}.` };
    switch (glove.kind) {
      case 'measured':
        return measured(bare, newtons(glove.suitedMaximum));
      case 'by pressure':
        return byPressure(bare, glove.kilopascals);
      case 'by hand size':
        return byHandSize(bare, glove.size);
    }
  },
);

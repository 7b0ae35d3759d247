import { method } from '../method.ts';
import { OUR_OWN_DESIGN } from '../sources.ts';
import type { Refused } from './adherence.ts';
import { jointProjection, type JointDay } from './joint-projection.ts';
import { valueAtLanding, type AtLanding, type LandingDay } from './landing.ts';
import { chanceUnderLine, type Chance, type Line } from './line.ts';
import type { ProjectionModel } from './model.ts';
import { whatWasNotMeasured, type Evidence } from './not-measured.ts';
import { warningDay } from './prediction.ts';

/** A forecast as it is told: first what was not measured, then bands, then a middle. */

export interface ForecastGiven {
  readonly model: ProjectionModel;
  readonly evidence: Evidence;
  readonly landings: readonly LandingDay[];
  readonly days: readonly number[];
  readonly lines: readonly Line[];
  readonly seed: number;
  readonly draws: number;
}

export type Basis = 'population estimate' | 'own measurements';

export type ForecastResult =
  | {
      readonly kind: 'forecast';
      /** To be read first. */
      readonly notMeasured: readonly string[];
      readonly basis: Basis;
      readonly ownMeasurements: number;
      readonly of: 'value' | 'ratio to own pre';
      /** Levels 0.05, 0.25, 0.5, 0.75, 0.95 on each day. */
      readonly days: readonly JointDay[];
      readonly atLanding: Exclude<AtLanding, Refused>;
      readonly chances: readonly Chance[];
      /** From this flight day on, the band is a warning; null where no day reaches it before landing. */
      readonly warningFrom: number | null;
      readonly cautions: readonly string[];
    }
  | Refused;

/** With fewer measurements of a person’s own change, a forecast is one of other people. */
const OWN_FROM = 2;

export const FORECAST_LEVELS = [0.05, 0.25, 0.5, 0.75, 0.95] as const;

/** What a forecast rests on, by how often the person’s own change was measured. */
export const basisOf = (ownMeasurements: number): Basis =>
  ownMeasurements < OWN_FROM ? 'population estimate' : 'own measurements';

/** Forecast of one quantity of one person. */
export const forecast = method(
  {
    id: 'projection/forecast',
    revision: 1,
    title: 'Forecast of one quantity of one person',
    equations: [
      'first: what was not measured',
      'basis: own measurements where two or more are known, else population estimate',
      'bands: the joint projection at levels 0.05, 0.25, 0.5, 0.75, 0.95',
      'at landing: the mixture over all landing days',
      'warning from day 1.5 · longest mission of the source data',
    ],
    inputs: [
      { name: 'own measurements of the change', symbol: 'm', unit: '1', possible: [0, 1000], valid: [2, 1000] },
      { name: 'day', symbol: 't', unit: 'd', possible: [0, 36500], valid: [0, 1500] },
    ],
    outputs: [
      { name: 'sentences of what was not measured', symbol: 'list', unit: '1' },
      { name: 'bands', symbol: 'Q_p(t)', unit: 'as measured, or %' },
      { name: 'probability under each verified line at landing', symbol: 'P', unit: '1' },
    ],
    refuses: [
      'Whatever the joint projection refuses.',
      'Each line that has not been compared with the rule as printed; the rest of the forecast stands.',
    ],
    source: OUR_OWN_DESIGN,
    doesNotKnow:
      'Whether this person is like those who were measured. It is for planning a talk between physician, trainer and crew member, not for a decision.',
  },
  ({ model, evidence, landings, days, lines, seed, draws }: ForecastGiven): ForecastResult => {
    const of = evidence.preAge === null || model.scale === 'percent' ? 'ratio to own pre' : 'value';
    const joint = jointProjection({ model, of, landings, days, draws, seed, levels: FORECAST_LEVELS });
    if (joint.kind === 'refused') return joint;
    const atLanding = valueAtLanding(model, landings, of);
    if (atLanding.kind === 'refused') return atLanding;
    const latest = Math.max(...landings.map(({ day }) => day));
    const warning = warningDay(model.longestFlight);
    return {
      kind: 'forecast',
      notMeasured: whatWasNotMeasured(evidence),
      basis: basisOf(model.ownMeasurements),
      ownMeasurements: model.ownMeasurements,
      of,
      days: joint.days,
      atLanding,
      chances: lines.map((line) => chanceUnderLine(atLanding.components, model.scale, line)),
      warningFrom: latest > warning ? warning : null,
      cautions: atLanding.cautions,
    };
  },
);

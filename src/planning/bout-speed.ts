import { fraction, heartRate, metresPerMinute, oxygenUptake } from '#units/quantity.ts';
import { stepsNearest, stepsNotOver } from '#units/rounding.ts';
import { ownLine, type OwnLine, type OwnStage } from '#assessing/own-stages.ts';
import type { Machine } from '#domain/catalogue.ts';
import { beltKilometresPerHour } from '#science/aerobic/belt-settings.ts';
import { nothing, type BoutAt, type ByShare, type Reckoned } from './bout-at.ts';
import { greatestRate, rateTarget, type RateTarget } from './bout-rate.ts';
import {
  RUN_OF_HANDBOOK,
  RUN_OF_OWN_RATE,
  RUN_OF_OWN_UPTAKE,
  RUN_OF_STAGE_RATE,
  RUN_OF_STAGE_UPTAKE,
  WALK_OF_HANDBOOK,
} from './bout-reckonings.ts';
import { uptakeTarget } from './bout-uptake.ts';
import { constantsOf, middleFrom } from './bout-watts.ts';
import { fillReckoning, fromReckoning, valueOf, type FilledReckoning, type Filling } from './filled-reckoning.ts';

/** Belts are set in tenths of km/h, to the nearest, limits down. */
export const BELT_STEP = 0.1;

/** A speed to set, never over a limit or what the belt runs [km/h]. */
export const beltSetting = (wanted: number, limit: number, { mostSpeed }: Machine): number =>
  inTenths(Math.min(stepsNearest(wanted, BELT_STEP), stepsNotOver(Math.min(limit, mostSpeed ?? Infinity), BELT_STEP)));

/** A tenth is no binary fraction. */
export const inTenths = (steps: number): number => Number((steps * BELT_STEP).toFixed(1));

/** Of metres in a minute. */
export const inKmh = (speed: number): number => beltKilometresPerHour(metresPerMinute(speed));

/** Speed on the level in 1 g for an intensity: from the person's own stages, else by the handbook. */
export const groundSpeed = (intensity: ByShare, at: BoutAt): Reckoned<FilledReckoning | null> => {
  const uptake = uptakeTarget(intensity, at);
  const rate = rateTarget(intensity, at, null);
  const found = isWalk(at)
    ? byHandbook(at, uptake.value)
    : (byOwnUptake(at, uptake.value) ?? byOwnRate(at, rate.value) ?? byHandbook(at, uptake.value));
  if (found === null)
    return nothing(
      null,
      ...uptake.says,
      `No greatest oxygen uptake${isWalk(at) ? ' is' : ' and no stage of running are'} known: find the speed by heart rate and effort.`,
    );
  if (found.filling.kind === 'refused') return nothing(null, ...found.filling.reasons);
  const behind = found.basis === 'heart rate' ? rate.reckonings : uptake.reckonings;
  const speed = valueOf(found.filling, 'speed on the ground');
  return { value: found.filling, reckonings: [...behind, found.filling], says: found.says(speed) };
};

export const isWalk = ({ exercise }: BoutAt): boolean => exercise.pattern === 'walking';

interface Found {
  readonly basis: 'uptake' | 'heart rate';
  readonly filling: Filling;
  readonly says: (speed: number) => readonly string[];
}

const silent = (): readonly string[] => [];

const byOwnUptake = ({ person, exercise }: BoutAt, uptake: FilledReckoning | null): Found | null => {
  if (!person.runningUptake || !uptake) return null;
  const wanted = valueOf(uptake, 'oxygen uptake');
  const given = { 'oxygen uptake': [oxygenUptake(wanted), fromReckoning(uptake, 'oxygen uptake')] } as const;
  const line = ownLine(person.runningUptake, exercise.name);
  if (line) {
    const filling = fillReckoning(RUN_OF_OWN_UPTAKE, { ...given, ...constantsOf(line) });
    return { basis: 'uptake', filling, says: (speed) => outsideTested(line, speed) };
  }
  const stage = nearest(person.runningUptake.stages, wanted);
  const filling = fillReckoning(RUN_OF_STAGE_UPTAKE, {
    ...given,
    'own speed': [metresPerMinute(stage.x), stageFrom(stage)],
    'own uptake': [oxygenUptake(stage.y), stageFrom(stage)],
  });
  return { basis: 'uptake', filling, says: silent };
};

const byOwnRate = (at: BoutAt, rate: RateTarget | null): Found | null => {
  const { person, exercise } = at;
  if (!person.runningRate || !rate) return null;
  const given = { 'heart rate': [heartRate(rate.middle), middleFrom(rate)] } as const;
  const line = ownLine(person.runningRate, exercise.name);
  if (line) {
    const filling = fillReckoning(RUN_OF_OWN_RATE, { ...given, ...constantsOf(line) });
    return { basis: 'heart rate', filling, says: (speed) => outsideTested(line, speed) };
  }
  const greatest = greatestRate(at).value;
  const { restingRate } = person;
  if (!greatest || !restingRate) return null;
  const stage = nearest(person.runningRate.stages, rate.middle);
  const filling = fillReckoning(RUN_OF_STAGE_RATE, {
    ...given,
    'resting heart rate': [heartRate(restingRate.value), restingRate.from],
    'greatest heart rate': [heartRate(greatest.value), greatest.from],
    'own speed': [metresPerMinute(stage.x), stageFrom(stage)],
    'own heart rate': [heartRate(stage.y), stageFrom(stage)],
  });
  return { basis: 'heart rate', filling, says: silent };
};

const byHandbook = (at: BoutAt, uptake: FilledReckoning | null): Found | null => {
  if (!uptake) return null;
  const filling = fillReckoning(isWalk(at) ? WALK_OF_HANDBOOK : RUN_OF_HANDBOOK, {
    'oxygen uptake': [oxygenUptake(valueOf(uptake, 'oxygen uptake')), fromReckoning(uptake, 'oxygen uptake')],
    grade: [fraction(0), { kind: 'policy', says: 'a level belt' }],
  });
  return { basis: 'uptake', filling, says: silent };
};

/** The stage whose reading lies nearest. */
const nearest = (stages: readonly OwnStage[], wanted: number): OwnStage =>
  stages.reduce((best, each) => (Math.abs(each.y - wanted) < Math.abs(best.y - wanted) ? each : best));

const stageFrom = ({ fact }: OwnStage) => ({ kind: 'fact', fact, says: 'the own stage that lies nearest' }) as const;

const outsideTested = ({ from, to }: OwnLine, speed: number): readonly string[] =>
  speed < from || speed > to
    ? [`${showKmh(speed)} km/h lies outside the ${showKmh(from)} to ${showKmh(to)} km/h that were tested.`]
    : [];

const showKmh = (speed: number): string => inKmh(speed).toFixed(1);

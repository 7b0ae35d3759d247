import { heartRate, kilograms, oxygenUptake } from '#units/quantity.ts';
import { stepsNearest, stepsNotOver } from '#units/rounding.ts';
import { ownLine, type OwnLine } from '#assessing/own-stages.ts';
import type { Machine } from '#domain/catalogue.ts';
import type { Span } from '#domain/prescription.ts';
import type { Origin } from '#domain/working.ts';
import { LEG_POWERS } from '#science/aerobic/cycling.ts';
import type { Intercept, Slope } from '#science/aerobic/own-settings.ts';
import { middleOf, nothing, type BoutAt, type ByShare, type Reckoned } from './bout-at.ts';
import { rateTarget, type RateTarget } from './bout-rate.ts';
import { WATTS_OF_HANDBOOK, WATTS_OF_OWN_RATE, WATTS_OF_OWN_UPTAKE } from './bout-reckonings.ts';
import { uptakeTarget } from './bout-uptake.ts';
import { fillReckoning, fromReckoning, valueOf, type FilledReckoning, type Filling } from './filled-reckoning.ts';

/** Watts are set in fives, to the nearest; common practice. */
export const WATT_STEP = 5;

/** What may be set at most on a machine, in whole steps; infinite where nobody said. */
const mostOf = ({ mostWatts }: Machine): number =>
  mostWatts === null ? Infinity : stepsNotOver(mostWatts, WATT_STEP) * WATT_STEP;

/** Watts that the programme names: one number as it stands, a range in its middle; never over what the machine takes. */
export const fixedWatts = (watts: Span, { machine }: BoutAt): number => {
  const { least, most } = watts;
  if (least === most) return Math.min(least, machine.mostWatts ?? Infinity);
  const middle = stepsNearest(middleOf(watts), WATT_STEP) * WATT_STEP;
  return Math.min(middle, most, machine.mostWatts ?? Infinity);
};

/** Watts on a cycle for an intensity: by the person's own lines, else by the handbook. */
export const wattsFor = (intensity: ByShare, at: BoutAt): Reckoned<number | null> => {
  const uptake = uptakeTarget(intensity, at);
  const rate = rateTarget(intensity, at, null);
  const found = byOwnUptake(at, uptake.value) ?? byOwnRate(at, rate.value) ?? byHandbook(at, uptake.value);
  if (found === null) return nothing(null, ...uptake.says, whyNone(at));
  if (found.filling.kind === 'refused') return nothing(null, ...found.filling.reasons);
  const watts = valueOf(found.filling, 'power');
  const set = Math.min(stepsNearest(watts, WATT_STEP) * WATT_STEP, mostOf(at.machine));
  const behind = found.basis === 'heart rate' ? rate.reckonings : uptake.reckonings;
  return set > 0
    ? { value: set, reckonings: [...behind, found.filling], says: [...found.says(watts), ...held(watts, at)] }
    : nothing(null, 'The target lies under unloaded pedalling: find the setting by heart rate and effort.');
};

interface Found {
  readonly basis: 'uptake' | 'heart rate';
  readonly filling: Filling;
  readonly says: (watts: number) => readonly string[];
}

const byOwnUptake = ({ person, exercise }: BoutAt, uptake: FilledReckoning | null): Found | null => {
  const line = person.cycleUptake && ownLine(person.cycleUptake, exercise.name);
  if (!line || !uptake) return null;
  const filling = fillReckoning(WATTS_OF_OWN_UPTAKE, {
    'oxygen uptake': [oxygenUptake(valueOf(uptake, 'oxygen uptake')), fromReckoning(uptake, 'oxygen uptake')],
    ...constantsOf(line),
  });
  return { basis: 'uptake', filling, says: (watts) => outsideTested(line, watts) };
};

/** The heart beats faster at every power in the first weeks of flight and of return: a line holds where it was measured. */
const byOwnRate = ({ person, exercise, flightDay, day }: BoutAt, rate: RateTarget | null): Found | null => {
  const stages = person.cycleRate;
  const isOfHere = stages !== null && (flightDay === null || stages.day > day - flightDay);
  const line = isOfHere ? ownLine(stages, exercise.name) : null;
  if (!line || !rate) return null;
  const filling = fillReckoning(WATTS_OF_OWN_RATE, {
    'heart rate': [heartRate(rate.middle), middleFrom(rate)],
    ...constantsOf(line),
  });
  return { basis: 'heart rate', filling, says: (watts) => outsideTested(line, watts) };
};

export const middleFrom = ({ filled }: RateTarget): Origin => ({
  kind: 'model',
  formula: filled.reckoning.formulaOf('from')?.record.id ?? '',
  says: `middle of the target, from the reckoning "${filled.reckoning.name}"`,
});

export const constantsOf = ({ intercept, slope, origin }: OwnLine) =>
  ({ intercept: [intercept as Intercept, origin], slope: [slope as Slope, origin] }) as const;

const byHandbook = ({ mass }: BoutAt, uptake: FilledReckoning | null): Found | null => {
  if (!mass || !uptake) return null;
  const filling = fillReckoning(WATTS_OF_HANDBOOK, {
    'oxygen uptake': [oxygenUptake(valueOf(uptake, 'oxygen uptake')), fromReckoning(uptake, 'oxygen uptake')],
    'body mass': [kilograms(mass.value), mass.from],
  });
  return { basis: 'uptake', filling, says: outsideHandbook };
};

const outsideHandbook = (watts: number): readonly string[] => {
  const [lowest, highest] = LEG_POWERS;
  if (watts > highest)
    return [`Above ${highest} W the handbook was not validated: a test in stages gives the person's own line.`];
  return watts < lowest ? [`Below ${lowest} W the handbook was not validated.`] : [];
};

const outsideTested = ({ from, to }: OwnLine, watts: number): readonly string[] =>
  watts < from || watts > to ? [`${Math.round(watts)} W lies outside the ${from} to ${to} W that were tested.`] : [];

const held = (watts: number, { machine }: BoutAt): readonly string[] =>
  stepsNearest(watts, WATT_STEP) * WATT_STEP > mostOf(machine)
    ? [`held by the machine, which takes at most ${machine.mostWatts} W`]
    : [];

const whyNone = ({ person: { maximalUptake }, mass }: BoutAt): string =>
  maximalUptake && !mass
    ? 'No body mass is known: find the watts by heart rate and effort.'
    : 'No greatest oxygen uptake is known: find the watts by heart rate and effort.';

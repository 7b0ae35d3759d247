declare const unit: unique symbol;

/** A number that carries its unit in the type. Free at run time; made only by the functions of this folder. */
export type Quantity<Unit extends string> = number & { readonly [unit]: Unit };

/** Mass of a body, or a load whose kind does not matter [kg]. */
export type Kilograms = Quantity<'kg'>;
/** What hangs on a bar, weighed in 1 g [kg]. */
export type BarLoad = Quantity<'kg weighed in 1 g'>;
/** What a machine pulls on a weightless person [kg of force under standard gravity]. Never assignable to a bar load. */
export type MachineLoad = Quantity<'kg pulled in 0 g'>;
/** A pure ratio: 0.8 is 80 %. */
export type Fraction = Quantity<'1'>;
/** Repetitions: completed, in reserve, or effective; may be fractional where effort is. */
export type Repetitions = Quantity<'repetitions'>;
/** Rating of perceived exertion, 1 to 10. */
export type Exertion = Quantity<'RPE'>;
/** A natural logarithm of a ratio; standard deviations on the log scale. */
export type LogRatio = Quantity<'ln'>;
/** Lengths as fractions of stature. */
export type StatureFraction = Quantity<'stature'>;
export type Degrees = Quantity<'degrees'>;
export type Metres = Quantity<'m'>;
export type Centimetres = Quantity<'cm'>;
export type Seconds = Quantity<'s'>;
export type Minutes = Quantity<'min'>;
/** Oxygen taken up by each kilogram of a body, gross [mL/(kg min)]. */
export type OxygenUptake = Quantity<'mL/(kg min)'>;
/** Oxygen taken up by a whole body [L/min]. */
export type OxygenFlow = Quantity<'L/min'>;
/** Heart beats [1/min]. */
export type HeartRate = Quantity<'1/min'>;
/** Mechanical or metabolic power [W]. */
export type Watts = Quantity<'W'>;
export type Newtons = Quantity<'N'>;
/** Work above a critical power [J]. */
export type Joules = Quantity<'J'>;
/** Speed of a belt or of walking and running [m/min]. */
export type MetresPerMinute = Quantity<'m/min'>;
export type MetresPerSecond = Quantity<'m/s'>;
/** Bone mineral over area [g/cm²]. */
export type BoneDensity = Quantity<'g/cm²'>;
/** A number of days between two days. */
export type DaySpan = Quantity<'d'>;

/** Refuses NaN and infinities, naming what was given. */
export const requireFinite = (name: string, value: number): number => {
  if (!Number.isFinite(value)) throw new RangeError(`${name} must be a finite number; it is ${value}.`);
  return value;
};

export const kilograms = (value: number): Kilograms => requireFinite('mass [kg]', value) as Kilograms;
export const barLoad = (value: number): BarLoad => requireFinite('bar load [kg]', value) as BarLoad;
export const machineLoad = (value: number): MachineLoad => requireFinite('machine load [kg]', value) as MachineLoad;
export const fraction = (value: number): Fraction => requireFinite('fraction', value) as Fraction;
export const repetitions = (value: number): Repetitions => requireFinite('repetitions', value) as Repetitions;
export const exertion = (value: number): Exertion => requireFinite('RPE', value) as Exertion;
export const logRatio = (value: number): LogRatio => requireFinite('log ratio', value) as LogRatio;
export const degrees = (value: number): Degrees => requireFinite('angle [°]', value) as Degrees;
export const metres = (value: number): Metres => requireFinite('length [m]', value) as Metres;
export const centimetres = (value: number): Centimetres => requireFinite('length [cm]', value) as Centimetres;
export const seconds = (value: number): Seconds => requireFinite('time [s]', value) as Seconds;
export const minutes = (value: number): Minutes => requireFinite('time [min]', value) as Minutes;
export const daySpan = (value: number): DaySpan => requireFinite('days', value) as DaySpan;
export const oxygenUptake = (value: number): OxygenUptake =>
  requireFinite('oxygen uptake [mL/(kg min)]', value) as OxygenUptake;
export const oxygenFlow = (value: number): OxygenFlow => requireFinite('oxygen flow [L/min]', value) as OxygenFlow;
export const heartRate = (value: number): HeartRate => requireFinite('heart rate [1/min]', value) as HeartRate;
export const watts = (value: number): Watts => requireFinite('power [W]', value) as Watts;
export const newtons = (value: number): Newtons => requireFinite('force [N]', value) as Newtons;
export const joules = (value: number): Joules => requireFinite('work [J]', value) as Joules;
export const metresPerMinute = (value: number): MetresPerMinute =>
  requireFinite('speed [m/min]', value) as MetresPerMinute;
export const metresPerSecond = (value: number): MetresPerSecond =>
  requireFinite('speed [m/s]', value) as MetresPerSecond;
export const boneDensity = (value: number): BoneDensity => requireFinite('bone density [g/cm²]', value) as BoneDensity;

import { flightDay, type Day } from '#units/day.ts';
import { fraction, heartRate, oxygenUptake } from '#units/quantity.ts';
import { kilometresPerHour, metresPerMinuteOf, type Endurance } from '#assessing/endurance.ts';
import type { CardBout, HarnessPull } from '#domain/card.ts';
import type { Machine, Pattern } from '#domain/catalogue.ts';
import type { BoutIntensity, Span } from '#domain/prescription.ts';
import type { ProgrammeBout } from '#domain/programme.ts';
import { cyclePower } from '#science/aerobic/cycle-workload.ts';
import { heartRateReserve, targetHeartRate, targetUptake, uptakeReserve } from '#science/aerobic/effort-reserve.ts';
import { effectiveLoad } from '#science/aerobic/harness-limits.ts';
import { sessionUnderHarness } from '#science/aerobic/session-under-harness.ts';
import { treadmillSpeed } from '#science/aerobic/treadmill.ts';

/** Whom and what a bout is set for. */
export interface BoutAt {
  readonly day: Day;
  readonly launch: Day | null;
  readonly pattern: Pattern;
  readonly machine: Machine;
  readonly person: Endurance;
  /** [kg] */
  readonly bodyMass: number | null;
  readonly harness: HarnessPull | null;
  readonly rpe: readonly [number, number];
  /** Effort alone leads: a physician's cap lies under what the programme means. */
  readonly byEffortOnly: boolean;
}

export interface SetBout {
  readonly bout: CardBout;
  /** The sum in words with numbers, and what is missing. */
  readonly working: readonly string[];
}

/** One bout of the programme for one person on one machine. What cannot be told from tests is left to effort, and said. */
export const setBout = ({ seconds, intensity, easy }: ProgrammeBout, at: BoutAt): SetBout => {
  const byFeel: CardBout = { seconds, easy, heartRate: null, watts: null, speed: null, rpe: rpeOf(intensity, at) };
  if (intensity === null || at.byEffortOnly || intensity.kind === 'RPE' || intensity.kind === 'all-out')
    return { bout: byFeel, working: [] };
  if (intensity.kind === 'watts') return fixedWatts(byFeel, intensity.watts, at);
  const reserve = reserveOf(intensity, at.person);
  const rate = rateOf(intensity, reserve, at.person);
  const work = workOf(reserve, at);
  return {
    bout: { ...byFeel, heartRate: rate.band, watts: work.watts, speed: work.speed },
    working: [...rate.working, ...work.working],
  };
};

const rpeOf = (intensity: BoutIntensity | null, { rpe, byEffortOnly }: BoutAt): readonly [number, number] => {
  if (byEffortOnly || intensity === null) return rpe;
  if (intensity.kind === 'RPE') return [intensity.rating.least, intensity.rating.most];
  return intensity.kind === 'all-out' ? [9, 10] : rpe;
};

/** Watts are set in fives (common practice), never over what the machine takes. */
const WATT_STEP = 5;
const inSteps = (value: number, most: number | null): number =>
  Math.min(Math.round(value / WATT_STEP) * WATT_STEP, most ?? Infinity);

const fixedWatts = (bout: CardBout, { least, most }: Span, { machine }: BoutAt): SetBout => ({
  bout: { ...bout, watts: inSteps((least + most) / 2, machine.mostWatts) },
  working: [],
});

type Reserve = readonly [least: number, most: number];
type ByReserve = Extract<BoutIntensity, { readonly of: Span }>;

/** The fraction of the reserve that an intensity stands for, or null where the tests do not say it. */
const reserveOf = (intensity: ByReserve, { maximalUptake, maximalRate, restingRate }: Endurance): Reserve | null => {
  const { least, most } = intensity.of;
  if (intensity.kind === 'of heart-rate reserve') return [least, most];
  if (intensity.kind === 'of greatest heart rate') {
    if (!maximalRate || !restingRate) return null;
    const of = (part: number): number =>
      heartRateReserve(heartRate(part * maximalRate.value), heartRate(restingRate.value), heartRate(maximalRate.value));
    return [of(least), of(most)];
  }
  if (!maximalUptake) return null;
  const of = (part: number): number =>
    uptakeReserve(oxygenUptake(part * maximalUptake.value), oxygenUptake(maximalUptake.value));
  return [of(least), of(most)];
};

/** A single rate is a band of this either way; common practice, no source. */
const BEATS = 5;

const rateOf = (
  intensity: ByReserve,
  reserve: Reserve | null,
  { maximalRate, restingRate }: Endurance,
): { readonly band: CardBout['heartRate']; readonly working: readonly string[] } => {
  if (!maximalRate) return { band: null, working: ['No greatest heart rate and no age is known: effort leads.'] };
  const band = (low: number, high: number): readonly [number, number] => {
    const wide = high - low < 2 * BEATS ? [(low + high) / 2 - BEATS, (low + high) / 2 + BEATS] : [low, high];
    return [Math.round(wide[0] as number), Math.min(Math.round(wide[1] as number), Math.round(maximalRate.value))];
  };
  if (intensity.kind === 'of greatest heart rate') {
    const { least, most } = intensity.of;
    return {
      band: band(least * maximalRate.value, most * maximalRate.value),
      working: [`${percents(intensity.of)} of ${Math.round(maximalRate.value)}/min; ${maximalRate.says}.`],
    };
  }
  if (!restingRate) return { band: null, working: ['No resting heart rate is known: effort leads.'] };
  if (!reserve) return { band: null, working: ['No greatest oxygen uptake is known: effort leads.'] };
  const of = (part: number): number =>
    targetHeartRate(fraction(part), heartRate(restingRate.value), heartRate(maximalRate.value));
  return {
    band: band(of(reserve[0]), of(reserve[1])),
    working: [
      `Heart rate: ${restingRate.value} + ${shares(reserve)} × (${Math.round(maximalRate.value)} − ${restingRate.value}); ${maximalRate.says}.`,
    ],
  };
};

interface Work {
  readonly watts: number | null;
  readonly speed: number | null;
  readonly working: readonly string[];
}

const NOTHING: Work = { watts: null, speed: null, working: [] };

/** What to set on the machine, where the person's uptake says it. */
const workOf = (reserve: Reserve | null, at: BoutAt): Work => {
  const { maximalUptake } = at.person;
  if (at.pattern === 'rowing') return NOTHING;
  if (!reserve || !maximalUptake)
    return { ...NOTHING, working: ['No greatest oxygen uptake is known: find the setting by heart rate and effort.'] };
  const middle = (reserve[0] + reserve[1]) / 2;
  const uptake = targetUptake(fraction(middle), oxygenUptake(maximalUptake.value));
  return at.pattern === 'cycling' ? onCycle(uptake / maximalUptake.value, at) : onBelt(uptake, at);
};

const FEWEST_STAGES = 3;

const onCycle = (part: number, { person, bodyMass, machine }: BoutAt): Work => {
  const most = person.maximalUptake?.value ?? 0;
  const stages = person.cycleStages.length >= FEWEST_STAGES ? person.cycleStages : undefined;
  if (bodyMass === null) return { ...NOTHING, working: ['No body mass is known: find the watts by heart rate.'] };
  const power = cyclePower(part, most, bodyMass, stages);
  if (power.kind === 'refused') return { ...NOTHING, working: [power.reason] };
  const watts = inSteps(power.value, machine.mostWatts);
  const whence = stages
    ? `the person's own line from ${stages.length} stages`
    : `(${part.toFixed(3)} × ${most} − 7) × ${Math.round(bodyMass)} kg / 10.8`;
  return {
    ...NOTHING,
    watts,
    working: [`${watts} W: ${whence}, ± ${Math.round(power.sd)} W.`, ...power.cautions],
  };
};

const onBelt = (uptake: number, at: BoutAt): Work => {
  const gait = at.pattern === 'walking' ? 'walking' : 'running';
  const ground = treadmillSpeed(uptake, 0, gait);
  if (ground.kind === 'refused') return { ...NOTHING, working: [ground.reason] };
  if (!at.harness || at.launch === null)
    return atSpeed(ground.value, at, [`Level belt in 1 g for ${uptake.toFixed(1)} mL/(kg min).`]);
  const load = effectiveLoad(fraction(at.harness.ofBodyWeight));
  const under = sessionUnderHarness(
    {
      gait,
      groundSpeed: ground.value,
      load,
      flightDay: flightDay(at.launch, at.day),
      ...(at.machine.mostSpeed === null ? {} : { beltLimit: metresPerMinuteOf(at.machine.mostSpeed) }),
    },
    undefined,
  );
  if (under.kind === 'refused') return { ...NOTHING, working: [under.reason] };
  return atSpeed(under.start.speed, at, [
    `${kilometresPerHour(ground.value).toFixed(1)} km/h on the ground; ${under.factor.toFixed(2)} of its net cost is left under ${Math.round(load * 100)} % of body weight that reaches the belt.`,
    ...(under.cap.kind === 'limit' && under.ways ? [under.cap.because] : []),
  ]);
};

/** Belts are set in tenths of km/h, never over the fastest. */
const atSpeed = (speed: number, { machine }: BoutAt, working: readonly string[]): Work => {
  const wanted = Math.floor(kilometresPerHour(speed) * 10 + 1e-6) / 10;
  const set = Math.min(wanted, machine.mostSpeed ?? Infinity);
  return {
    ...NOTHING,
    speed: set,
    working: [`${set} km/h to start with; heart rate and effort govern. ${working[0] ?? ''}`, ...working.slice(1)],
  };
};

const percents = ({ least, most }: Span): string =>
  least === most ? `${Math.round(least * 100)} %` : `${Math.round(least * 100)} to ${Math.round(most * 100)} %`;

const shares = ([least, most]: Reserve): string =>
  least === most ? least.toFixed(2) : `${least.toFixed(2)} to ${most.toFixed(2)}`;

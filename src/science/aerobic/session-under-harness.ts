import { method } from '../method.ts';
import { OUR_OWN_DESIGN } from '../sources.ts';
import { fraction, heartRate, metresPerMinute, oxygenUptake } from '#units/quantity.ts';
import { cautionIf, cautionsOf, refusalOf, refused, type Refused } from './estimate.ts';
import {
  RUNNING_SLOPE,
  runningCostFactor,
  sameEffortSpeed,
  sdOfRunningCostFactor,
  sdOfWalkingCostFactor,
  uptakeUnderHarness,
  WALKING_SLOPE,
  walkingCostFactor,
} from './harness-cost.ts';
import { loadForSpeed, timeForSpeed } from './harness-limits.ts';
import { SPEED_CAPS, type SpeedCap } from './harness-rules.table.ts';
import type {
  HarnessSession,
  PersonNow,
  SpeedLimit,
  UnderHarness,
  UptakeView,
  WaysUnderCap,
} from './harness-session.ts';
import { beltSpeed, harnessLoad, maximalRate, maximalUptake, restingRate } from './inputs.ts';
import { expectedHeartRate } from './effort-reserve.ts';
import { FARLEY_MCMAHON_1992, SWAIN_LEUTHOLTZ_1997, TEUNISSEN_2007 } from './sources.ts';
import type { Gait } from './treadmill.ts';
import { netUptake } from './uptake-units.ts';
import { BETWEEN_PEOPLE, uptakeOfRunning, uptakeOfWalking, WALKING_SPEEDS } from './walking-and-running.ts';

const [, FASTEST_WALK] = WALKING_SPEEDS;

/** A session of the ground, on the level, brought under a harness: at the same speed, at the same effort, under a cap. */

/** A cap that lies no further below the speed of the same effort than doubles may is none. */
const ROUNDING = 1e-9;
/** Above this nobody runs under a harness. */
const HEAVIEST = 1.1;

const BY_GAIT = {
  running: {
    equation: uptakeOfRunning,
    factor: runningCostFactor,
    factorSd: sdOfRunningCostFactor,
    slope: RUNNING_SLOPE,
  },
  walking: {
    equation: uptakeOfWalking,
    factor: walkingCostFactor,
    factorSd: sdOfWalkingCostFactor,
    slope: WALKING_SLOPE,
  },
} as const;

/** The cap of a flight day among rules in any order; before the first of them the first. */
export const capOfDay = (caps: readonly SpeedCap[], flightDay: number): SpeedCap | undefined => {
  const ordered = caps.toSorted((a, b) => a.fromFlightDay - b.fromFlightDay);
  return ordered.findLast(({ fromFlightDay }) => fromFlightDay <= flightDay) ?? ordered[0];
};

/** The lower of what the rule of the day and the belt allow. */
const limitOf = ({ groundSpeed, flightDay, beltLimit }: HarnessSession, caps: readonly SpeedCap[]): SpeedLimit => {
  const rule = capOfDay(caps, flightDay);
  const limits = [
    ...(rule ? [{ kind: 'limit', speed: rule.factor * groundSpeed, because: rule.says } as const] : []),
    ...(beltLimit === undefined
      ? []
      : [{ kind: 'limit', speed: beltLimit, because: 'The belt runs no faster.' } as const]),
  ];
  const lowest = limits.toSorted((a, b) => a.speed - b.speed)[0];
  return lowest ?? { kind: 'no limit', because: 'No rule and no belt limits the speed.' };
};

const heartOf = (uptake: number, person: PersonNow | undefined): { readonly heartRate?: number } =>
  person
    ? {
        heartRate: expectedHeartRate(
          oxygenUptake(uptake),
          oxygenUptake(person.maximalUptake),
          heartRate(person.restingRate),
          heartRate(person.maximalRate),
        ),
      }
    : {};

/** The uptake of a speed under a factor; on Earth the factor is 1 and certain. */
const view = (gait: Gait, speed: number, factor: number, factorSd: number, person?: PersonNow): UptakeView => {
  const onEarth = BY_GAIT[gait].equation(metresPerMinute(speed), fraction(0));
  const uptake = uptakeUnderHarness(onEarth, fraction(factor));
  const sd = factorSd * netUptake(onEarth);
  return { speed, uptake, sd, sdOfPeople: Math.hypot(sd, BETWEEN_PEOPLE * uptake), ...heartOf(uptake, person) };
};

const waysUnder = (session: HarnessSession, cap: number, factor: number, wanted: number): WaysUnderCap => {
  const { slope, equation } = BY_GAIT[session.gait];
  const [ground, most] = [metresPerMinute(session.groundSpeed), metresPerMinute(cap)];
  const load = loadForSpeed(ground, most, fraction(slope));
  const reached = uptakeUnderHarness(equation(most, fraction(0)), fraction(factor));
  return {
    raiseLoad: { load, allowed: load <= (session.highestLoad ?? HEAVIEST) },
    lengthen: { multiple: timeForSpeed(ground, fraction(factor), most) },
    acceptLess: { uptake: reached, shortfall: wanted - reached },
  };
};

const cautionsFor = (
  { gait, groundSpeed, load }: HarnessSession,
  start: UptakeView,
  person: PersonNow | undefined,
): readonly string[] => [
  ...cautionIf(
    load < 0.3 || load > HEAVIEST,
    `A harness load of ${load} lies outside 0.3 to ${HEAVIEST}, where the factor was measured.`,
  ),
  ...cautionsOf(BY_GAIT[gait].equation, [groundSpeed, 0]),
  ...cautionIf(
    gait === 'walking' && start.speed > FASTEST_WALK,
    `At ${Math.round(start.speed)} m/min most people break into a run.`,
  ),
  ...cautionIf(
    person !== undefined && start.uptake > person.maximalUptake,
    'This takes more oxygen than the person’s maximum of today.',
  ),
  'A model after support on Earth: heart rate, perceived exertion and talking govern, and the load is raised before the speed.',
];

/** A level session of the ground brought under a harness. */
export const sessionUnderHarness = method(
  {
    id: 'harness/session',
    revision: 1,
    title: 'A session of the ground brought under a harness',
    equations: [
      'VO2 of the belt in 1 g on the level',
      'k = 1 − c · (1 − f), c = 0.77 running, 0.44 walking',
      'same speed: VO2_h = 3.5 + k · (VO2 − 3.5), SD = SD_k · (VO2 − 3.5)',
      'SD of people = √(SD^2 + (0.07 · VO2_h)^2)',
      'same effort: S_h = S_1 / k',
      'S_cap = least of (factor of the day · S_1) and the belt',
      'under a cap: f* = 1 − (1 − S_1 / S_cap) / c, then t* = S_1 / (k · S_cap), then VO2 − VO2_h',
      'HR = HR_rest + (VO2_h − 3.5) / (VO2_max − 3.5) · (HR_max − HR_rest)',
    ],
    inputs: [
      beltSpeed('speed on the level in 1 g', 'S_1', [50, 300], [20, 450]),
      harnessLoad(),
      { name: 'flight day', symbol: 'day', unit: 'd', possible: [1, 2000], valid: [1, 400] },
      beltSpeed('fastest belt', 'S_belt', [50, 450], [20, 600]),
      { ...harnessLoad(), name: 'highest load allowed now', symbol: 'f_max' },
      maximalUptake(),
      restingRate,
      maximalRate,
    ],
    outputs: [
      { name: 'oxygen uptake under the harness', symbol: 'VO2_h', unit: 'mL/(kg min)' },
      { name: 'expected heart rate', symbol: 'HR', unit: '1/min' },
      { name: 'speed of the same effort', symbol: 'S_h', unit: 'm/min' },
      { name: 'load, time or shortfall under a cap', symbol: 'f*, t*', unit: '1' },
    ],
    refuses: [
      'A speed, load, day, rate or maximum that is not possible.',
      'A maximal heart rate less than 20 beats above the resting one.',
    ],
    source: OUR_OWN_DESIGN,
    restsOn: [TEUNISSEN_2007, FARLEY_MCMAHON_1992, SWAIN_LEUTHOLTZ_1997],
    doesNotKnow:
      'Anything measured weightless: no uptake against harness load has been published. The first weeks raise the heart rate at every uptake. Caps, slopes and spreads are our own, editable.',
  },
  (
    session: HarnessSession,
    person?: PersonNow,
    caps: readonly SpeedCap[] = SPEED_CAPS.rows,
  ): UnderHarness | Refused => {
    const refusal = refusalOfSession(session, person);
    if (refusal) return refusal;
    const { gait, groundSpeed, load } = session;
    const [factor, factorSd] = [BY_GAIT[gait].factor(fraction(load)), BY_GAIT[gait].factorSd(fraction(load))];
    const onEarth = view(gait, groundSpeed, 1, 0, person);
    const same = sameEffortSpeed(metresPerMinute(groundSpeed), factor);
    const cap = limitOf(session, caps);
    const capped = cap.kind === 'limit' && cap.speed < same * (1 - ROUNDING);
    const begin = cap.kind === 'limit' ? Math.min(cap.speed, same) : same;
    const start = view(gait, begin, factor, factorSd, person);
    return {
      kind: 'under harness',
      onEarth,
      factor,
      factorSd,
      sameSpeed: view(gait, groundSpeed, factor, factorSd, person),
      sameEffortSpeed: same,
      cap,
      start,
      ...(capped ? { ways: waysUnder(session, cap.speed, factor, onEarth.uptake) } : {}),
      cautions: cautionsFor(session, start, person),
    };
  },
);

const refusalOfSession = (session: HarnessSession, person: PersonNow | undefined): Refused | undefined => {
  const { groundSpeed, load, flightDay, beltLimit, highestLoad } = session;
  const given = [groundSpeed, load, flightDay, beltLimit, highestLoad];
  const ofPerson = person ? [person.maximalUptake, person.restingRate, person.maximalRate] : [];
  const reasons = [...given, ...ofPerson].flatMap((value, place) => {
    const input = sessionUnderHarness.record.inputs[place];
    return value === undefined || !input ? [] : (refusalOf({ inputs: [input] }, [value])?.reason ?? []);
  });
  if (person && !(person.maximalRate - person.restingRate >= 20))
    reasons.push('The maximal heart rate lies at least 20 beats above the resting one.');
  return reasons.length > 0 ? refused(reasons.join(' ')) : undefined;
};

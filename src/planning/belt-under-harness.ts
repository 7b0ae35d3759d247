import { fraction, metresPerMinute } from '#units/quantity.ts';
import { RUNNING_SLOPE, WALKING_SLOPE, runningCostFactor, walkingCostFactor } from '#science/aerobic/harness-cost.ts';
import { SPEED_CAPS } from '#science/aerobic/harness-rules.table.ts';
import { capOfDay } from '#science/aerobic/session-under-harness.ts';
import { nothing, type BoutAt, type ByShare, type Reckoned } from './bout-at.ts';
import { RUN_UNDER_HARNESS, WALK_UNDER_HARNESS } from './bout-reckonings.ts';
import { beltSetting, groundSpeed, inKmh, isWalk } from './bout-speed.ts';
import { fillReckoning, fromReckoning, valueOf } from './filled-reckoning.ts';

/** Belt speed for an intensity [km/h]: on the ground as it is, under a harness for the same effort, capped. */
export const speedFor = (intensity: ByShare, at: BoutAt): Reckoned<number | null> => {
  const ground = groundSpeed(intensity, at);
  if (!ground.value) return nothing(null, ...ground.says);
  const wanted = valueOf(ground.value, 'belt on the ground');
  if (at.machine.gravity === '1 g' || !at.harness || at.flightDay === null)
    return { ...ground, value: beltSetting(wanted, Infinity, at.machine), says: [...ground.says, ...belt(wanted, at)] };
  const cap = capOnDay(at, at.flightDay);
  const factor = isWalk(at) ? walkingCostFactor : runningCostFactor;
  const filling = fillReckoning(isWalk(at) ? WALK_UNDER_HARNESS : RUN_UNDER_HARNESS, {
    'set load': [
      fraction(at.harness.ofBodyWeight),
      { kind: 'rounding', says: 'as set, from the reckoning "pull of the harness"' },
    ],
    'speed on the ground': [
      metresPerMinute(valueOf(ground.value, 'speed on the ground')),
      fromReckoning(ground.value, 'speed on the ground'),
    ],
    'cap of the day': [fraction(cap.factor), { kind: 'policy', says: cap.says }],
    'slope of the factor': [
      fraction(isWalk(at) ? WALKING_SLOPE : RUNNING_SLOPE),
      { kind: 'model', formula: factor.record.id, says: 'slope of the share that is left' },
    ],
  });
  if (filling.kind === 'refused') return nothing(null, ...filling.reasons);
  const start = valueOf(filling, 'belt to start with');
  const most = inKmh(valueOf(filling, 'highest speed allowed'));
  const isCapped = inKmh(valueOf(filling, 'speed of the same effort')) > most + ROUNDING;
  return {
    value: beltSetting(start, most, at.machine),
    reckonings: [...ground.reckonings, filling],
    says: [...ground.says, ...(isCapped ? [cap.says] : []), ...belt(start, at)],
  };
};

const ROUNDING = 1e-9;

/** The load is raised before the speed: until the harness has taken a step nobody runs faster than on the ground. */
export const capOnDay = (
  { isLoadRaised }: Pick<BoutAt, 'isLoadRaised'>,
  flightDay: number,
): { readonly factor: number; readonly says: string } => {
  const rule = capOfDay(SPEED_CAPS.rows, flightDay) ?? { factor: 1, says: 'Never faster than on the ground.' };
  return rule.factor > 1 && !isLoadRaised
    ? { factor: 1, says: 'Not faster than on the ground until the load of the harness has been raised.' }
    : rule;
};

const belt = (wanted: number, { machine: { mostSpeed } }: BoutAt): readonly string[] =>
  mostSpeed !== null && wanted > mostSpeed + ROUNDING ? [`held by the belt, which runs at most ${mostSpeed} km/h`] : [];

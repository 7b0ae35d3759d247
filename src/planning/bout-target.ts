import type { CardBout } from '#domain/card.ts';
import type { BoutIntensity } from '#domain/prescription.ts';
import type { ProgrammeBout } from '#domain/programme.ts';
import { speedFor } from './belt-under-harness.ts';
import { nothing, type BoutAt, type ByShare, type Reckoned } from './bout-at.ts';
import { rateBand, rateTarget } from './bout-rate.ts';
import { fixedWatts, wattsFor } from './bout-watts.ts';
import { capped } from './effort-cap.ts';

/** One bout of the programme for one person on one machine. What cannot be told from tests is left to effort, and said. */
export const setBout = ({ seconds, intensity, easy }: ProgrammeBout, at: BoutAt): Reckoned<CardBout> => {
  const rpe = capped(rpeOf(intensity, at), at.effortCap);
  const byFeel: CardBout = { seconds, easy, heartRate: null, watts: null, speed: null, rpe };
  if (intensity === null || at.byEffortOnly || intensity.kind === 'RPE' || intensity.kind === 'all-out')
    return nothing(byFeel);
  if (intensity.kind === 'watts') return nothing({ ...byFeel, watts: fixedWatts(intensity.watts, at) });
  const rate = rateTarget(intensity, at, at.backedOff);
  const work = workFor(intensity, at);
  return {
    value: { ...byFeel, heartRate: rate.value && rateBand(rate.value), ...work.value },
    reckonings: [...rate.reckonings, ...work.reckonings],
    says: [...rate.says, ...work.says],
  };
};

/** What an all-out bout feels like, of 10: as hard as can be, or nearly; common practice, no source. */
const ALL_OUT = [9, 10] as const;

const rpeOf = (intensity: BoutIntensity | null, { rpe }: BoutAt): readonly [number, number] => {
  if (intensity?.kind === 'RPE') return [intensity.rating.least, intensity.rating.most];
  return intensity?.kind === 'all-out' ? ALL_OUT : rpe;
};

type Work = Pick<CardBout, 'watts' | 'speed'>;

/** What to set: watts on a cycle, speed on a belt; a rower is found by heart rate and effort. */
const workFor = (intensity: ByShare, at: BoutAt): Reckoned<Work> => {
  if (at.machine.kind === 'cycle') {
    const { value: watts, ...behind } = wattsFor(intensity, at);
    return { ...behind, value: { watts, speed: null } };
  }
  if (at.machine.kind !== 'treadmill') return nothing({ watts: null, speed: null });
  const { value: speed, ...behind } = speedFor(intensity, at);
  return { ...behind, value: { watts: null, speed } };
};

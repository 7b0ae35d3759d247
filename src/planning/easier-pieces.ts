import type { BoutsItem, Deload, DrillItem } from '#domain/programme.ts';

/** An easier week keeps how hard and takes off how much: common practice, no source. */

/** A steady bout is cut in whole half minutes. */
const CUT = 30;

/** Fewer bouts by as many as sets fall out of lifts, at least one; of a single one so much less time as loads are lighter. */
export const easierBouts = (item: BoutsItem, { fewerSets, loadBy }: Deload): BoutsItem => {
  const [only, ...more] = item.bouts;
  if (only && more.length === 0) {
    const seconds = Math.max(Math.min(only.seconds, CUT), Math.floor((only.seconds * loadBy) / CUT) * CUT);
    return { ...item, bouts: [{ ...only, seconds }] };
  }
  return { ...item, bouts: fewer(item.bouts, fewerSets) };
};

/** Fewer sets; the hand's force is lighter as loads are. */
export const easierDrill = (item: DrillItem, { fewerSets, loadBy }: Deload): DrillItem => ({
  ...item,
  sets: fewer(item.sets, fewerSets),
  target: item.target && { ...item.target, of: item.target.of * loadBy },
});

const fewer = <Part>(parts: readonly Part[], by: number): readonly Part[] =>
  parts.slice(0, Math.max(1, parts.length - by));

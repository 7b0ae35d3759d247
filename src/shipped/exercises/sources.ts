/**
 * What the lines of the exercise catalogue rest on. "Seen": abstract, table or text was read. "From memory": still to be
 * opened. "Common practice": no source is claimed. "Our own": our design.
 */
const MODEL =
  'Share of body weight: planar segment model, our own, on the segment masses of de Leva 1996, J Biomech 29(9):1223–1230 (seen).';

export const SEGMENT_MODEL = MODEL;

export const ARM_MODEL =
  'Share of body weight: moving arms only, our own model on de Leva 1996, J Biomech 29(9):1223–1230 (seen); what legs and back hold on the ground has no counterpart in flight and is not replaced.';

export const NO_SHARE = 'No share of body weight: no model of ours fits this movement.';

export const TESTED_MAXIMUM =
  'Capacity: one-repetition maximum, tested or from up to 12 effective repetitions (Wathan 1994, from memory).';

export const TWELVE_REPETITION_MAXIMUM =
  'Capacity: 12-repetition maximum; a single maximal heel raise is not tested (common practice).';

export const NO_CAPACITY = 'Capacity: none; the load is found by effort (common practice).';

export const ENDURANCE_CAPACITY =
  'Capacity: none of a load; watts, speeds and heart rates come from tests of endurance, and effort leads where there are none.';

export const NOTHING_TO_LOAD = 'Capacity: none; nothing is loaded.';

export const ratioFrom = (ratio: string): string =>
  `Capacity: ${ratio}, common practice without a source, taken with a standard deviation of 15 %.`;

export const COUNT_AND_CUES =
  'Seconds a repetition, rounding, cues, faults and cautions: common practice, in our own words. What substitutes cover: practice defaults, our own design; nobody has measured it.';

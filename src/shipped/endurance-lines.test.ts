import { expect, test } from 'vitest';
import type { BoutIntensity } from '#domain/prescription.ts';
import { AEROBIC_SESSIONS, type AerobicSession } from '#science/aerobic/aerobic-sessions.table.ts';
import {
  ALL_OUT_RIDE,
  FOUR_MINUTE_RIDE,
  FOUR_MINUTE_RUN,
  HALF_MINUTE_RIDE,
  STEADY_RIDE,
  STEADY_RUN,
  TWO_MINUTE_RIDE,
} from './endurance-lines.ts';
import type { BoutsLine } from './piece-line.ts';

const published = (name: string): AerobicSession => {
  const found = AEROBIC_SESSIONS.rows.find((row) => row.name === name);
  if (!found) throw new Error(`The table has no ${name}.`);
  return found;
};

const METRIC: Readonly<Record<AerobicSession['metric'], BoutIntensity['kind']>> = {
  'peak uptake': 'of greatest uptake',
  'heart-rate reserve': 'of heart-rate reserve',
  'all-out': 'all-out',
};

/** The middle of a band: the table writes 80 to 90 % as 0.85. */
const middleOf = (intensity: BoutIntensity | null): number | null =>
  intensity && 'of' in intensity ? (intensity.of.least + intensity.of.most) / 2 : null;

test.each([
  ['short intervals', ALL_OUT_RIDE],
  ['two-minute intervals', TWO_MINUTE_RIDE],
  ['four-minute intervals', FOUR_MINUTE_RIDE],
  ['four-minute intervals', FOUR_MINUTE_RUN],
  ['continuous', STEADY_RIDE],
  ['continuous', STEADY_RUN],
  ['half-minute intervals of older adults', HALF_MINUTE_RIDE],
] as const)('%s stand as they were published', (name, line: BoutsLine) => {
  const { bouts, boutSeconds, restSeconds, metric, intensities, machine } = published(name);
  expect(line.bouts.length).toBe(bouts);
  expect(new Set(line.bouts.map(({ seconds }) => seconds))).toEqual(new Set([boutSeconds]));
  expect(new Set(line.bouts.map(({ easy }) => easy))).toEqual(new Set([restSeconds]));
  expect(new Set(line.bouts.map(({ intensity }) => intensity?.kind))).toEqual(new Set([METRIC[metric]]));
  const each = line.bouts.map((_, place) => intensities[intensities.length === 1 ? 0 : place] ?? null);
  for (const [place, { intensity }] of line.bouts.entries()) {
    const [middle, of] = [middleOf(intensity), each[place] ?? null];
    // Half of a sum of two binary fractions.
    if (of === null) expect(middle).toBeNull();
    else expect(middle).toBeCloseTo(of, 12);
  }
  expect(machine.split(' or ')).toContain(line.machineKind);
});

test('the half minutes of older adults have five minutes around them, and a band of 80 to 90 %', () => {
  expect([HALF_MINUTE_RIDE.warmUpSeconds, HALF_MINUTE_RIDE.coolDownSeconds]).toEqual([300, 300]);
  expect(HALF_MINUTE_RIDE.bouts[0]?.intensity).toEqual({
    kind: 'of heart-rate reserve',
    of: { least: 0.8, most: 0.9 },
  });
});

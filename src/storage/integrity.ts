import type { Problem } from '#contract/problem.ts';
import type { Fact } from '#domain/fact.ts';
import { messageOf, type Engine } from './engine.ts';
import { damaged } from './problems.ts';
import { readLog, showDamages } from './read-log.ts';

export type IntegrityReport =
  | { readonly kind: 'sound'; readonly facts: number }
  | { readonly kind: 'damaged'; readonly problem: Problem; readonly sequences: readonly number[] };

/** Asks the database about its structure, verifies every digest anew and compares with what is in memory. */
export const checkIntegrity = async (
  engine: Engine,
  expected: readonly Fact[],
  place: string,
): Promise<IntegrityReport> => {
  try {
    const structure = await engine.structureFaults();
    if (structure.length > 0) return found(place, `The database says: ${structure.slice(0, 3).join('; ')}.`, []);
    const reading = await readLog(engine);
    if (reading.kind === 'damaged')
      return found(
        place,
        `Wrong: ${showDamages(reading.damages)}.`,
        reading.damages.map(({ sequence }) => sequence),
      );
    const differing = differences(expected, reading.facts);
    if (differing.length > 0)
      return found(place, `Not as they were entered: facts ${differing.join(', ')}.`, differing);
    return { kind: 'sound', facts: reading.facts.length };
  } catch (error) {
    return found(place, `It cannot be read: ${messageOf(error)}.`, []);
  }
};

const found = (place: string, why: string, sequences: readonly number[]): IntegrityReport => ({
  kind: 'damaged',
  problem: damaged(place, why),
  sequences,
});

const differences = (expected: readonly Fact[], read: readonly Fact[]): readonly number[] =>
  Array.from({ length: Math.max(expected.length, read.length) }, (_, place) => place)
    .filter((place) => expected[place]?.digest !== read[place]?.digest)
    .map((place) => place + 1);

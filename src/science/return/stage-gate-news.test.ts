import { expect, test } from 'vitest';
import { WORKED_GATE } from './gate-example.ts';
import type { GateEvidence } from './gate-evidence.ts';
import type { GateItemKey } from './gate-items.table.ts';
import { stageGate } from './stage-gate.ts';

/** What one item says in a gate with other evidence. */
const itemIn = (evidence: GateEvidence, key: GateItemKey) => {
  const reading = stageGate(evidence);
  return reading.kind === 'refused' ? undefined : reading.items.find((item) => item.key === key);
};

test('a newest test far under the line is not carried by earlier ones', () => {
  const agility = (...scores: readonly number[]) => ({
    ...WORKED_GATE,
    scores: { ...WORKED_GATE.scores, agility: scores.map((score, place) => ({ on: 18 + place, score })) },
  });
  for (const scores of [
    [100, 100, 70],
    [130, 60],
    [120, 84],
  ]) {
    const item = itemIn(agility(...scores), 'agility');
    expect(item).toMatchObject({ passes: false, basis: 'probability' });
    expect(item?.says).toMatch(/earlier tests do not carry it/);
  }
  // A fall of more than three errors of a difference (3 × √2 × 3 = 12.7) to just over the line: the tests disagree.
  expect(itemIn(agility(104, 91), 'agility')?.says).toMatch(/the tests disagree: 104.0 %, and 91.0 % since/);
  expect(itemIn(agility(103, 91), 'agility')?.passes).toBe(true);
  // Somebody who gains that much does not disagree with themselves.
  expect(itemIn(agility(85, 99), 'agility')?.passes).toBe(true);
});

test('a test after a signed judgement is news: the item is to be judged again', () => {
  const judgements = [{ item: 'agility' as const, on: 13, by: 'M. Haldane', reason: 'limited by the floor' }];
  const scores = { ...WORKED_GATE.scores, agility: [19, 20].map((on) => ({ on, score: 60 })) };
  expect(itemIn({ ...WORKED_GATE, scores, judgements }, 'agility')?.passes).toBe(false);
  const again = [{ ...judgements[0], item: 'agility' as const, on: 20, by: 'M. Haldane', reason: 'seen again' }];
  expect(itemIn({ ...WORKED_GATE, scores, judgements: again }, 'agility')?.basis).toBe('judgement');
});

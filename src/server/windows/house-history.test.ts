import { expect, test } from 'vitest';
import type { FactBody } from '#domain/fact.ts';
import { idOf } from '#domain/identity.ts';
import { logOf, type Line } from '#domain/invented-log.setup.ts';
import { houseAt } from '#domain/known.ts';
import { endOfLog } from '#domain/log.ts';
import { MACHINE } from '#contract/facts/any-issued-card.setup.ts';
import type { Snapshot } from '#actions/snapshot.ts';
import { houseHistories } from './house-history.ts';

const catalogued = (change: object): FactBody => ({
  kind: 'catalogued',
  entry: { kind: 'machine', machine: { ...MACHINE, ...change } },
});
const signs = (name: string): FactBody => ({
  kind: 'signs',
  signer: { id: idOf('ingrid'), name, role: 'specialist', signsFor: null, from: null, until: null },
});

const historyOf = (...lines: readonly Line[]) => {
  const log = logOf(...lines);
  const snapshot = { log, house: houseAt(log, endOfLog(log)) } as unknown as Snapshot;
  return houseHistories(snapshot).of('machine', MACHINE.id);
};

test('what stands comes first, then what stood before, each with what of it changed and why', () => {
  const history = historyOf(signs('Ingrid Moe'), catalogued({}), {
    corrects: 2,
    by: catalogued({ name: 'Another name', ceiling: '500' }),
  });
  expect(history.map(({ fact, by, changed, reason }) => ({ fact, by, changed, reason }))).toEqual([
    { fact: 'f-3', by: 'Ingrid Moe', changed: ['name', 'ceiling'], reason: 'mistyped' },
    { fact: 'f-2', by: 'Ingrid Moe', changed: [], reason: null },
  ]);
});

test('fields in another order are the same fields', () => {
  const { minutes } = MACHINE;
  const turned = Object.fromEntries(Object.entries(minutes).toReversed());
  const [newest] = historyOf(catalogued({}), { corrects: 1, by: catalogued({ minutes: turned }) });
  expect(newest?.changed).toEqual([]);
});

test('a thing that was never entered has no history', () => {
  expect(historyOf(signs('Ingrid Moe'))).toEqual([]);
});

import { expect, test } from 'vitest';
import { instant } from '#domain/identity.ts';
import { addDays } from '#units/day.ts';
import { AUDIENCES } from '#domain/fact.ts';
import { exportFacts, exportReveals } from './export-facts.ts';
import { enter, LAUNCH, PERSON, startedHouse } from './started-house.fixture.ts';

const from = { database: 'test', about: 'own', madeAt: instant('2031-05-03T09:00:00.000Z') } as const;

const logWithRestriction = async () => {
  const { workplace, signer } = await startedHouse();
  await enter(workplace, signer, [
    {
      kind: 'restricted',
      person: PERSON,
      restriction: {
        scope: { kind: 'all' },
        limit: { kind: 'RPE at most', rpe: 7 },
        toldBy: 'the flight physician',
        toldOn: addDays(LAUNCH, -4),
        confirmed: true,
        from: addDays(LAUNCH, -4),
        reviewOn: null,
      },
      medicalReason: 'a reason for the physician alone',
    },
  ]);
  return workplace.store.facts();
};

test('a medical reason leaves only for the physician, and the export says that it was cut', async () => {
  const log = await logWithRestriction();
  const reasonsFor = AUDIENCES.filter((audience) =>
    JSON.stringify(exportFacts(log, audience, from)).includes('a reason for the physician alone'),
  );
  expect(reasonsFor).toEqual(['physician']);
  const cut = exportFacts(log, 'person and specialist', from).facts.filter((fact) => fact.cut);
  expect(cut.map(({ kind }) => kind)).toEqual(['restricted']);
  expect(exportReveals(log, 'person and specialist').reasonsCutOut).toBe(1);
});

test('planners see names and dates, no tests and no body mass; management sees nothing', async () => {
  const log = await logWithRestriction();
  const kinds = exportReveals(log, 'planners').kinds.map(({ kind }) => kind);
  expect(kinds).toEqual(expect.arrayContaining(['introduced', 'dated', 'assigned']));
  expect(kinds).not.toContain('lifted');
  expect(kinds).not.toContain('measured');
  expect(exportFacts(log, 'management', from).facts).toEqual([]);
});

test('what is said beforehand is what goes out', async () => {
  const log = await logWithRestriction();
  for (const audience of AUDIENCES)
    expect(exportReveals(log, audience).facts).toBe(exportFacts(log, audience, from).facts.length);
});

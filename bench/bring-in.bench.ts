import { isoDay, isoOfDay, addDays } from '#units/day.ts';
import { lookThrough } from '#actions/bring-in.ts';
import { readTable } from '#interchange/reading/read-table.ts';
import { enterInLog } from '#domain/log.ts';
import { idOf, instant } from '#domain/identity.ts';
import type { Fact, FactBody, Sequence } from '#domain/fact.ts';
import { shippedFacts } from '#shipped/shipped-house.ts';
import { compare, measure, present } from './measure.ts';

const TODAY = isoDay('2027-03-01');
const ROWS = 10_000;
const PEOPLE = 50;
const LIFTS = ['Back squat', 'Deadlift', 'Bench press', 'Heel raise'];

const bodies: readonly FactBody[] = [
  ...shippedFacts(),
  ...Array.from({ length: PEOPLE }, (_, place): FactBody => ({
    kind: 'introduced',
    person: idOf(`p${place}`),
    name: `Person Number${place}`,
    sex: 'female',
    birthDate: null,
    trainingAge: null,
  })),
];
const log: readonly Fact[] = bodies.map((body, place) =>
  enterInLog(
    { id: idOf(`f${place}`), body, recordedBy: idOf('s'), supersedes: null, reason: null },
    (place + 1) as Sequence,
    instant('2027-01-01T00:00:00.000Z'),
  ),
);

/** One test a row; loads differ a little from day to day. */
const csv = (rows: number): Uint8Array => {
  const lines = Array.from({ length: rows }, (_, row) => {
    const day = isoOfDay(addDays(TODAY, -1 - Math.floor(row / (PEOPLE * LIFTS.length))));
    const load = 80 + (row % 11) * 0.5;
    return `${day},Person Number${row % PEOPLE},${LIFTS[Math.floor(row / PEOPLE) % LIFTS.length]},Free bar,${load},5,9`;
  });
  return new TextEncoder().encode(['Date,Name,Exercise,Machine,Load (kg),Repetitions,RPE', ...lines].join('\n'));
};

const bytes = csv(ROWS);
const table = await readTable(bytes, 'tests.csv');
const plan = () => lookThrough(log, TODAY, { table, matching: null, answers: {} });
const first = plan();

present(
  `Bringing in ${ROWS} test rows (${first.facts.length} facts, ${first.problems.length} problems, ${first.questions.length} questions)`,
  [
    await measure('reading the CSV', () => readTable(bytes, 'tests.csv'), { runs: 5, warmUp: 1 }),
    await measure('matching, questioning, previewing', plan, { runs: 5, warmUp: 1 }),
    await compare(
      'planning against reading alone',
      {
        name: 'read and plan',
        work: async () =>
          lookThrough(log, TODAY, { table: await readTable(bytes, 'tests.csv'), matching: null, answers: {} }),
      },
      { name: 'read', work: () => readTable(bytes, 'tests.csv') },
      { runs: 5, warmUp: 1 },
    ),
  ],
);

import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { Draft, FactKind } from '#domain/fact.ts';
import { idOf } from '#domain/identity.ts';
import { isoDay } from '#units/day.ts';
import { exerciseId, person } from './fixtures/invented-house.ts';
import { draftsIn, oddities, openQuestions, planned, refusals, settled } from './fixtures/bring-in.ts';

const fixture = (name: string): Uint8Array => readFileSync(new URL(`fixtures/${name}`, import.meta.url));

const bodies = <Kind extends FactKind>(drafts: readonly Draft[], kind: Kind) =>
  drafts.flatMap(({ body }) => (body.kind === kind ? [body as Extract<Draft['body'], { readonly kind: Kind }>] : []));

const MAREN = person('Maren Holt', { bodyMass: 61 });
const IWO = person('Iwo Falk', { sex: 'male', bodyMass: 84 });

describe('one test a row', () => {
  const answers = {
    'sex, maren holt': 'female',
    'sex, iwo falk': 'male',
    'counting, single-leg-squat, column D': 'per side',
  };

  test('what the file does not say is asked, all at once', async () => {
    const plan = await planned(fixture('one-test-a-row.csv'));
    expect(plan.ready).toBe(false);
    expect(openQuestions(plan).map(({ id }) => id)).toEqual([
      'sex, maren holt',
      'sex, iwo falk',
      'counting, single-leg-squat, column D',
    ]);
    expect(draftsIn(plan)).toEqual([]);
  });

  test('answered, it gives people and tests with every detail', async () => {
    const plan = await planned(fixture('one-test-a-row.csv'), { answers });
    expect(refusals(plan)).toEqual([]);
    expect(plan.ready).toBe(true);
    const drafts = draftsIn(plan);
    expect(bodies(drafts, 'introduced').map(({ name, sex }) => `${name}, ${sex}`)).toEqual([
      'Iwo Falk, male',
      'Maren Holt, female',
    ]);
    const [iwo, maren] = bodies(drafts, 'introduced').map((body) => body.person);
    expect(bodies(drafts, 'lifted')).toEqual([
      {
        kind: 'lifted',
        person: iwo,
        day: isoDay('2027-02-11'),
        exercise: exerciseId('Back squat'),
        machine: 'ground-unit',
        load: { text: '315', unit: 'lb' },
        repetitions: 3,
        effort: { kind: 'RPE', value: 9 },
        side: null,
      },
      {
        kind: 'lifted',
        person: iwo,
        day: isoDay('2027-02-11'),
        exercise: exerciseId('Deadlift'),
        machine: 'bar-brae',
        load: { text: '170', unit: 'kg' },
        repetitions: 2,
        effort: null,
        side: null,
      },
      {
        kind: 'lifted',
        person: maren,
        day: isoDay('2027-02-10'),
        exercise: exerciseId('Back squat'),
        machine: 'bar-brae',
        load: { text: '95', unit: 'kg' },
        repetitions: 4,
        effort: { kind: 'RPE', value: 9 },
        side: null,
      },
      {
        kind: 'lifted',
        person: maren,
        day: isoDay('2027-02-10'),
        exercise: exerciseId('Bench press'),
        machine: 'bar-brae',
        load: { text: '52.5', unit: 'kg' },
        repetitions: 5,
        effort: { kind: 'RPE', value: 8.5 },
        side: null,
      },
      {
        kind: 'lifted',
        person: maren,
        day: isoDay('2027-02-12'),
        exercise: exerciseId('Single-leg squat'),
        machine: 'bar-brae',
        load: { text: '30', unit: 'kg' },
        repetitions: 8,
        effort: null,
        side: 'left',
      },
      {
        kind: 'lifted',
        person: maren,
        day: isoDay('2027-02-12'),
        exercise: exerciseId('Single-leg squat'),
        machine: 'bar-brae',
        load: { text: '27.5', unit: 'kg' },
        repetitions: 8,
        effort: null,
        side: 'right',
      },
    ]);
    expect(drafts.at(-1)?.reason).toBe('Brought in from “tests.csv”, row 8.');
    expect(plan.preview.totals).toEqual({ people: 2, newPeople: 2, tests: 6, measurements: 0, missions: 0, facts: 8 });
  });

  test('the row that stands twice is passed over, and it is said', async () => {
    const plan = await planned(fixture('one-test-a-row.csv'), { answers });
    expect(plan.preview.passedOver.map(({ where, what }) => `${where}: ${what}`)).toEqual([
      'row 12, column D “Load”: The test was passed over: row 11 is the same.',
    ]);
  });

  test('a test in the log is passed over', async () => {
    const first = draftsIn(
      await planned(fixture('one-test-a-row.csv'), { answers, context: { people: [MAREN, IWO] } }),
    );
    const recorded = bodies(first, 'lifted').map((body) => ({
      ...body,
      id: idOf('f'),
      sequence: 1,
      recordedAt: '',
      recordedBy: idOf('s'),
      audience: [],
      supersedes: null,
      reason: null,
      digest: idOf('d'),
    }));
    const again = await planned(fixture('one-test-a-row.csv'), {
      answers,
      context: { people: [MAREN, IWO], tests: recorded as never },
    });
    expect(again.ready).toBe(false);
    expect(again.preview.totals.facts).toBe(0);
    expect(again.preview.passedOver).toHaveLength(7);
    expect(again.preview.passedOver[0]).toMatchObject({
      where: 'row 5, column D “Load”',
      what: 'The test was passed over: it is recorded already.',
    });
  });
});

describe('one person a row', () => {
  const answers = { 'day of the table': '2027-02-12', 'machine of the table': 'bar-brae' };

  test('titles, blank rows, notes and the line of averages are told apart from people', async () => {
    const plan = await planned(fixture('one-person-a-row.csv'), { answers });
    expect(refusals(plan)).toEqual([]);
    expect(plan.matching.headerRow).toBe(4);
    expect(plan.preview.passedOver.map(({ row, what }) => `${row}: ${what}`)).toEqual([
      '9: The line “Average” was passed over.',
      '10: The line was passed over: it holds “Tested by the Brae House team” and nothing else.',
    ]);
    expect(plan.preview.people.map(({ name, tests, measurements }) => [name, tests, measurements])).toEqual([
      ['Iwo Falk', 2, 2],
      ['Jún Árnason', 2, 2],
      ['Maren Holt', 3, 2],
    ]);
    const lifted = bodies(draftsIn(plan), 'lifted');
    expect(
      lifted.map(({ exercise, load, repetitions }) => `${exercise} ${load.text} ${load.unit} × ${repetitions}`),
    ).toEqual([
      'back-squat 140 kg × 5',
      'bench-press 105 kg × 1',
      'bench-press 92.5 kg × 1',
      'deadlift 365 lb × 3',
      'back-squat 92.5 kg × 5',
      'bench-press 60 kg × 1',
      'deadlift 275 lb × 3',
    ]);
    expect(
      bodies(draftsIn(plan), 'measured').map(({ what, value }) => `${what} ${value.text} ${value.unit}`),
    ).toContain('body mass 61.4 kg');
  });

  test('a sum of loads beside lifts is no load', async () => {
    const plan = await settled('Name,Sex,Squat 5RM (kg),Bench 5RM (kg),Total (kg)\nAna,F,90,50,140\n');
    expect(plan.preview.totals.tests).toBe(2);
    expect(oddities(plan)).toEqual(['column E “Total (kg)”: The column is left out.']);
  });

  test('"weight" among people is the body, beside exercises the load', async () => {
    const people = await settled('Name,Sex,Date,Weight (kg)\nAna,F,2027-02-01,61\n');
    expect(people.preview.totals).toMatchObject({ measurements: 1, tests: 0 });
    const tests = await settled('Name,Sex,Date,Exercise,Weight (kg),Reps\nAna,F,2027-02-01,Squat,61,5\n');
    expect(tests.preview.totals).toMatchObject({ measurements: 0, tests: 1 });
  });

  test('repetitions and effort beside a lift belong to it', async () => {
    const plan = await settled('Name,Sex,Squat (kg),Reps,RPE,Bench (kg),Reps,RPE\nAna,F,90,4,8,50,5,9\n');
    expect(
      bodies(draftsIn(plan), 'lifted').map(({ load, repetitions, effort }) => [load.text, repetitions, effort?.value]),
    ).toEqual([
      ['90', 4, 8],
      ['50', 5, 9],
    ]);
  });

  test('one effort behind several lifts is left out, and it is said', async () => {
    const plan = await settled('Name,Sex,Squat 5 reps (kg),Bench 5 reps (kg),RPE\nAna,F,90,50,8\n');
    expect(bodies(draftsIn(plan), 'lifted').map(({ effort }) => effort)).toEqual([null, null]);
    expect(oddities(plan)).toEqual(['column E “RPE”: The column is left out: it stands behind several lifts.']);
  });

  test('a repetition maximum leaves none in reserve, unless an effort is written', async () => {
    const plan = await settled('Name,Sex,Squat 5RM (kg),RPE\nAna,F,90,8\nIwo,M,140,\n');
    expect(
      draftsIn(plan).flatMap(({ body, reason }) => (body.kind === 'lifted' ? [[body.effort, reason]] : [])),
    ).toEqual([
      [{ kind: 'RPE', value: 8 }, 'Brought in from “tests.csv”, row 2.'],
      [
        { kind: 'repetitions in reserve', value: 0 },
        'Brought in from “tests.csv”, row 3. Taken so: a 5RM leaves none in reserve.',
      ],
    ]);
  });

  test('repetitions that no header states are asked once a column', async () => {
    const plan = await planned('Name,Sex,Date,Squat (kg)\nAna,F,2027-01-10,90\nIwo,M,2027-01-10,140\n', {
      answers: { 'repetitions, column D': '31' },
    });
    expect(openQuestions(plan).map(({ id }) => id)).toEqual(['repetitions, column D', 'machine of the table']);
    expect(openQuestions(plan)[0]).toMatchObject({
      typed: 'a number of repetitions',
      because: 'The answer “31” does not fit. The header does not say, as “5RM” would.',
    });
    const answered = await planned('Name,Sex,Date,Squat (kg)\nAna,F,2027-01-10,90\n', {
      answers: { 'repetitions, column D': '3', 'machine of the table': 'bar-brae' },
    });
    expect(bodies(draftsIn(answered), 'lifted')).toMatchObject([{ repetitions: 3 }]);
  });

  test('the day of a title is offered, never taken', async () => {
    const plan = await planned('Tests of 12 February 2027,,\nName,Sex,Squat 5RM (kg)\nAna,F,90\n');
    expect(openQuestions(plan)[0]).toMatchObject({ id: 'day of the table', suggested: '2027-02-12', answer: null });
  });

  test('a day in the future does not fit', async () => {
    const plan = await planned('Name,Sex,Squat 5RM (kg)\nAna,F,90\n', {
      answers: { 'day of the table': '2027-03-02' },
    });
    expect(openQuestions(plan).map(({ id }) => id)).toContain('day of the table');
  });
});

describe('a matching by hand', () => {
  test('goes before the headers and need not be whole', async () => {
    const file = 'Who,Tested,Leg strength\nMaren Holt,2027-02-01,90\n';
    const before = await planned(file, { context: { people: [MAREN] } });
    expect(refusals(before)).toEqual(['the file: No row with the names of the columns was found.']);
    const plan = await planned(file, {
      context: { people: [MAREN] },
      answers: { 'machine of the table': 'bar-brae' },
      matching: {
        sheet: null,
        headerRow: 1,
        columns: {
          B: { is: 'date' },
          C: { is: 'lift', exercise: exerciseId('Back squat'), repetitions: 5, unit: 'kg', counted: null, side: null },
        },
      },
    });
    expect(refusals(plan)).toEqual([]);
    expect(plan.matching.columns.map(({ letter, by }) => `${letter} by ${by}`)).toEqual([
      'A by its header',
      'B by hand',
      'C by hand',
    ]);
    expect(bodies(draftsIn(plan), 'lifted')).toMatchObject([{ load: { text: '90', unit: 'kg' }, repetitions: 5 }]);
  });

  test('a column that is not known is left out and said; one that was worked out likewise', async () => {
    const plan = await settled('Name,Sex,Squat 5RM (kg),Leg press 5RM,Squat e1RM\nAna,F,90,200,101\n');
    expect(oddities(plan)).toEqual([
      'column D “Leg press 5RM”: The column is left out.',
      'column E “Squat e1RM”: The column is left out: it holds values that were worked out.',
    ]);
  });

  test('an exercise that the catalogue has not is refused', async () => {
    const plan = await planned('Name,Sex,X\nAna,F,90\n', {
      matching: {
        sheet: null,
        headerRow: null,
        columns: {
          C: { is: 'lift', exercise: idOf('nothing'), repetitions: 5, unit: 'kg', counted: null, side: null },
        },
      },
    });
    expect(refusals(plan)).toContain('column C “X”: The exercise of the column is not in the catalogue.');
  });
});

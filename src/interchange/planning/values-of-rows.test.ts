import { describe, expect, test } from 'vitest';
import type { BringInPlan } from '../plan-bring-in.ts';
import { exerciseId, person } from '../fixtures/invented-house.ts';
import { draftsIn, oddities, openQuestions, planned, refusals, settled } from '../fixtures/bring-in.ts';

const MAREN = person('Maren Holt', { bodyMass: 61 });
const context = { people: [MAREN] };
const bar = { 'machine of the table': 'bar-brae' };

const loads = (plan: BringInPlan): readonly string[] =>
  draftsIn(plan).flatMap(({ body }) => (body.kind === 'lifted' ? [`${body.load.text} ${body.load.unit}`] : []));
const days = (plan: BringInPlan): readonly string[] =>
  plan.preview.people.flatMap(({ lines }) => lines.map(({ says }) => says.slice(0, 10)));

describe('dates', () => {
  const file = (dates: readonly string[]): string =>
    `Name,Date,BW (kg)\n${dates.map((date, index) => `Maren Holt,${date},${61 + index / 10}\n`).join('')}`;

  test('an ambiguous column is asked once', async () => {
    const plan = await planned(file(['03/04/2026', '05/06/2026']), { context });
    expect(openQuestions(plan)).toMatchObject([
      { id: 'date order, column B', where: 'column B “Date”', examples: ['03/04/2026 (row 2)', '05/06/2026 (row 3)'] },
    ]);
    expect(
      days(
        await planned(file(['03/04/2026', '05/06/2026']), {
          context,
          answers: { 'date order, column B': 'month first' },
        }),
      ),
    ).toEqual(['2026-03-04', '2026-05-06']);
    expect(
      days(
        await planned(file(['03/04/2026', '05/06/2026']), {
          context,
          answers: { 'date order, column B': 'day first' },
        }),
      ),
    ).toEqual(['2026-04-03', '2026-06-05']);
  });

  test('one unambiguous date decides the column', async () => {
    const plan = await planned(file(['03/04/2026', '25/06/2026']), { context });
    expect(plan.questions).toEqual([]);
    expect(days(plan)).toEqual(['2026-04-03', '2026-06-25']);
    expect(days(await planned(file(['03/04/2026', '06/25/2026']), { context }))).toEqual(['2026-03-04', '2026-06-25']);
  });

  test('a column that contradicts itself is asked', async () => {
    const plan = await planned(file(['03/04/2026', '25/06/2026', '06/25/2026']), { context });
    expect(openQuestions(plan)).toMatchObject([
      { because: 'Some dates of the column can only be day first and others only month first.' },
    ]);
  });

  test.each([
    ['31/02/2026', '“31/02/2026” is no day of the calendar.'],
    ['2027-03-02', '2027-03-02 is in the future.'],
    ['', 'The row has no date.'],
    ['soon', '“soon” is not a date.'],
  ])('%s is refused at its place', async (date, what) => {
    expect(refusals(await planned(file([date]), { context }))).toEqual([`row 2, column B “Date”: ${what}`]);
  });

  test('an old date is odd', async () => {
    expect(oddities(await planned(file(['2011-02-10']), { context }))).toEqual([
      'row 2, column B “Date”: 2011-02-10 is more than ten years ago.',
    ]);
  });
});

describe('units', () => {
  test('are asked once a column where neither header nor cells say', async () => {
    const file = 'Name,Date,Squat 5RM,Bench 5RM (kg)\nMaren Holt,2027-02-01,90,50\n';
    const plan = await planned(file, { context, answers: bar });
    expect(openQuestions(plan)).toMatchObject([
      { id: 'unit, column C', where: 'column C “Squat 5RM”', examples: ['90 (row 2)'] },
    ]);
    expect(loads(await planned(file, { context, answers: { ...bar, 'unit, column C': 'lb' } }))).toEqual([
      '90 lb',
      '50 kg',
    ]);
  });

  test('of a cell go before those of the row, and those before the header', async () => {
    const file =
      'Name,Date,Exercise,Load (kg),Unit,Reps\nMaren Holt,2027-02-01,Squat,90,,5\nMaren Holt,2027-02-02,Squat,200,lb,5\nMaren Holt,2027-02-03,Squat,91 kg,lb,5\n';
    expect(loads(await planned(file, { context, answers: bar }))).toEqual(['90 kg', '200 lb', '91 kg']);
  });

  test('that are none are refused', async () => {
    const file = 'Name,Date,Exercise,Load,Unit,Reps\nMaren Holt,2027-02-01,Squat,9,stone,5\n';
    expect(refusals(await planned(file, { context, answers: bar }))).toEqual([
      'row 2, column E “Unit”: “stone” is no unit of a load.',
    ]);
  });
});

describe('what a load counts', () => {
  const perSide = 'Name,Date,SLS 8RM (kg)\nMaren Holt,2027-02-01,22.5\n';
  const question = 'counting, single-leg-squat, column C';

  test.each([
    ['per side', '22.5 kg'],
    ['per hand', '45 kg'],
    ['both sides added', '11.25 kg'],
  ])('one side at a time: %s gives %s', async (answer, load) => {
    expect(openQuestions(await planned(perSide, { context, answers: bar })).map(({ id }) => id)).toEqual([question]);
    expect(loads(await planned(perSide, { context, answers: { ...bar, [question]: answer } }))).toEqual([load]);
  });

  test('a header that says so is not asked, and what was done is written down', async () => {
    const plan = await planned('Name,Date,SLS 8 reps per hand (kg)\nMaren Holt,2027-02-01,22.5\n', {
      context,
      answers: bar,
    });
    expect(plan.ready).toBe(true);
    expect(loads(plan)).toEqual(['45 kg']);
    expect(draftsIn(plan)[0]?.reason).toBe('Brought in from “tests.csv”, row 2. Taken so: 22.5 per hand, doubled.');
  });

  test('weights in each hand are asked; a bar is its total', async () => {
    const plan = await planned(
      'Name,Date,Exercise,Load (kg),Reps\nMaren Holt,2027-02-01,DB bench,20,8\nMaren Holt,2027-02-01,Bench,50,8\n',
      {
        context,
        answers: { ...bar, 'exercise, db bench': exerciseId('Bench press') },
      },
    );
    expect(openQuestions(plan).map(({ id, choices }) => [id, choices.map(({ answer }) => answer)])).toEqual([
      [
        'counting, bench-press, column D',
        ['total', 'per hand', 'plates of one side, bar of 20 kg', 'plates of one side, bar of 15 kg'],
      ],
    ]);
  });

  test('plates of one side with their bar', async () => {
    const file = 'Name,Date,Squat 5RM per side (lb)\nMaren Holt,2027-02-01,90\n';
    const answers = { ...bar, 'counting, back-squat, column C': 'plates of one side, bar of 45 lb' };
    expect(loads(await planned(file, { context, answers }))).toEqual(['225 lb']);
  });
});

describe('machines', () => {
  const file = (machine: string, site = ''): string =>
    `Name,Date,Exercise,Load (kg),Reps,Machine,Gym\nMaren Holt,2027-02-01,Squat,90,5,${machine},${site}\n`;
  const machine = (plan: BringInPlan): readonly string[] =>
    draftsIn(plan).flatMap(({ body }) => (body.kind === 'lifted' ? [body.machine] : []));

  test.each([
    ['Ground unit', '', 'ground-unit'],
    ['free bar', '', 'bar-brae'],
    ['barbell', 'Lindqvist Hall', 'bar-lindqvist'],
    ['', 'Lindqvist Hall', 'bar-lindqvist'],
    ['Lindqvist hall', '', 'bar-lindqvist'],
  ])('"%s" at "%s" is %s', async (name, site, id) => {
    expect(machine(await planned(file(name, site), { context }))).toEqual([id]);
  });

  test.each([
    ['the old rack', ''],
    ['barbell', ''],
    ['', 'Brae House'],
  ])('"%s" at "%s" is asked, ground first', async (name, site) => {
    const [question] = openQuestions(await planned(file(name, site), { context }));
    expect(question?.about).toBe('machine');
    expect(question?.choices.map(({ answer }) => answer)).toEqual([
      'bar-brae',
      'ground-unit',
      'bar-lindqvist',
      'flight-unit',
    ]);
  });

  test('not all on one: each exercise is asked', async () => {
    const wide = 'Name,Date,Squat 5RM (kg),Bench 5RM (kg)\nMaren Holt,2027-02-01,90,50\n';
    const answers = { 'machine of the table': 'by exercise' };
    const open = openQuestions(await planned(wide, { context, answers }));
    expect(open.map(({ id }) => id)).toEqual(['machine, exercise back-squat', 'machine, exercise bench-press']);
    const plan = await planned(wide, {
      context,
      answers: {
        ...answers,
        'machine, exercise back-squat': 'ground-unit',
        'machine, exercise bench-press': 'bar-brae',
      },
    });
    expect(machine(plan)).toEqual(['ground-unit', 'bar-brae']);
  });

  test('a load over the ceiling of its machine is odd', async () => {
    const plan = await planned('Name,Date,Squat 1RM (lb)\nMaren Holt,2027-02-01,610\n', {
      answers: { 'machine of the table': 'ground-unit' },
      context: { people: [person('Maren Holt')] },
    });
    expect(oddities(plan)).toEqual(['row 2, column C “Squat 1RM (lb)”: The load is over the ceiling of Ground unit.']);
  });
});

describe('exercises', () => {
  const file =
    'Name,Date,Exercise,Load (kg),Reps\nMaren Holt,2027-02-01,Hack squat,90,5\nMaren Holt,2027-02-01,Back squat 3RM,95,\nMaren Holt,2027-02-01,,95,1\n';

  test('that nobody knows are asked; what their names say of repetitions counts', async () => {
    const plan = await planned(file, { context, answers: bar });
    expect(openQuestions(plan)).toMatchObject([{ id: 'exercise, hack squat', row: 2 }]);
    expect(refusals(plan)).toEqual(['row 4, column C “Exercise”: The test names no exercise.']);
    const answered = await planned(file.replace(/\n[^\n]*\n$/, '\n'), {
      context,
      answers: { ...bar, 'exercise, hack squat': 'leave out' },
    });
    expect(answered.preview.people[0]?.lines.map(({ says }) => says)).toEqual([
      '2027-02-01 Back squat 95 kg × 3, 0 in reserve, Free bar',
    ]);
    expect(answered.preview.passedOver).toMatchObject([{ row: 2, what: 'The test of “Hack squat” is left out.' }]);
  });

  test('are asked once where a table has loads and no exercise', async () => {
    const plan = await planned('Back squat tests,,,\nName,Date,Load (kg),Reps\nMaren Holt,2027-02-01,90,5\n', {
      context,
      answers: bar,
    });
    expect(openQuestions(plan)).toMatchObject([
      { id: 'exercise of the table', choices: [{ answer: 'back-squat' }, ...Array.from({ length: 6 }, () => ({}))] },
    ]);
  });
});

describe('values that cannot be are refused, all at once and at their places', () => {
  test('tests', async () => {
    const plan = await planned(
      `Name,Date,Exercise,Load (kg),Reps,RPE,Side
Maren Holt,2027-02-01,Squat,0,5,8,
Maren Holt,2027-02-01,Squat,-20,5,8,
Maren Holt,2027-02-01,Squat,701,5,8,
Maren Holt,2027-02-01,Squat,NaN,0,8,
Maren Holt,2027-02-01,Squat,90,31,8,
Maren Holt,2027-02-01,Squat,90,2.5,11,
Maren Holt,2027-02-01,Squat,90,,0,up
Maren Holt,2027-02-01,Squat,1e9,5,hard,
`,
      { context, answers: bar },
    );
    expect(refusals(plan)).toEqual([
      'row 2, column D “Load (kg)”: The load is not above zero.',
      'row 3, column D “Load (kg)”: The load is not above zero.',
      'row 4, column D “Load (kg)”: The load is 701 kg.',
      'row 5, column D “Load (kg)”: “NaN” is not a number.',
      'row 5, column E “Reps”: A set of 0 repetitions is no strength test.',
      'row 6, column E “Reps”: A set of 31 repetitions is no strength test.',
      'row 7, column E “Reps”: 2.5 repetitions are no whole number.',
      'row 7, column F “RPE”: An RPE of 11 is not on the scale.',
      'row 8, column E “Reps”: The test has no repetitions.',
      'row 8, column F “RPE”: An RPE of 0 is not on the scale.',
      'row 8, column G “Side”: “up” is no side.',
      'row 9, column D “Load (kg)”: “1e9” is not a number.',
      'row 9, column F “RPE”: “hard” is no effort.',
    ]);
    expect(draftsIn(plan)).toEqual([]);
  });

  test('people', async () => {
    const plan = await planned(
      `Name,Sex,DOB,Height,BW (kg),Training age,Date
Ana Ruiz,F,2028-01-01,110,29,-1,2027-02-01
Bo Lund,X,31/02/1990,240,201,61,2027-02-01
12345,F,1990-01-01,170,60,5,2027-02-01
`,
      {},
    );
    expect(refusals(plan)).toEqual([
      'row 2, column C “DOB”: 2028-01-01 is in the future.',
      'row 2, column D “Height”: “110” is no stature.',
      'row 2, column E “BW (kg)”: A body mass of 29 kg is not possible.',
      'row 2, column F “Training age”: A training age of -1 years is not possible.',
      'row 3, column B “Sex”: “X” is neither female nor male.',
      'row 3, column C “DOB”: “31/02/1990” is no day of the calendar.',
      'row 3, column D “Height”: “240” is no stature.',
      'row 3, column E “BW (kg)”: A body mass of 201 kg is not possible.',
      'row 3, column F “Training age”: A training age of 61 years is not possible.',
      'row 4, column A “Name”: “12345” is no name.',
    ]);
  });

  test('missions', async () => {
    const plan = await planned(
      'Mission,Launch,Landing\nSkerry 7,2027-06-01,2027-05-01\nSkerry 8,2097-01-01,\nSkerry 9,2027-06-01,2028-02-01 to 2028-01-01\n',
    );
    expect(refusals(plan)).toEqual([
      'row 2, column C “Landing”: The landing is before the launch.',
      'row 3, column B “Launch”: A launch on 2097-01-01 is not possible.',
      'row 4, column C “Landing”: The latest landing is before the earliest.',
    ]);
  });

  test('every issue says why and what to do', async () => {
    const plan = await planned('Name,Date,Squat 5RM (kg)\nMaren Holt,31/02/2026,NaN\n,2027-01-01,90\n', { context });
    for (const { what, why, whatToDo, where } of plan.problems)
      for (const said of [what, why, whatToDo, where]) expect(said.length).toBeGreaterThan(4);
  });
});

test('odd values are said and taken', async () => {
  const plan = await settled(
    'Name,Sex,DOB,BW (kg),Date,Squat 20 reps (kg)\nMaren Holt,F,2012-01-01,90,2027-02-01,60\n',
    { context },
  );
  expect(oddities(plan)).toEqual([
    'row 2, column C “DOB”: The birth date gives an age of 15 years.',
    'row 2, column D “BW (kg)”: The body mass differs from the last one, 61 kg, by more than a fifth.',
  ]);
  expect(plan.ready).toBe(true);
});

test('markup and formulas in names are text, kept letter for letter, and said', async () => {
  const plan = await settled(
    'Name,Sex,Date,BW (kg)\n<script>alert(1)</script>,F,2027-02-01,61\n"=cmd|""/c calc""",M,2027-02-01,80\n',
  );
  expect(oddities(plan)).toHaveLength(2);
  expect(draftsIn(plan).flatMap(({ body }) => (body.kind === 'introduced' ? [body.name] : []))).toEqual([
    '<script>alert(1)</script>',
    '=cmd|"/c calc"',
  ]);
});

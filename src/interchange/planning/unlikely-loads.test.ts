import { describe, expect, test } from 'vitest';
import { exerciseId, person } from '../fixtures/invented-house.ts';
import { draftsIn, oddities, openQuestions, planned } from '../fixtures/bring-in.ts';
import type { BringInPlan } from '../plan-bring-in.ts';

const bar = { 'machine of the table': 'bar-brae' };

const loads = (plan: BringInPlan): readonly string[] =>
  draftsIn(plan).flatMap(({ body }) => (body.kind === 'lifted' ? [`${body.load.text} ${body.load.unit}`] : []));

/** Women of 60 to 64 kg who squat 1.67 times their body mass, and one of 61 kg whose cell says something else. */
const women = (load: string, unit = 'kg'): string => {
  const perKilogram = unit === 'kg' ? 1 : 2.2046;
  const others = [60, 62, 63, 64, 60.5].map(
    (mass, index) => `Person ${index + 1},F,${mass},${Math.round(mass * 1.67 * perKilogram * 10) / 10}`,
  );
  return ['Name,Sex,BW (kg),Squat 1RM', `Maren Holt,F,61,${load}`, ...others]
    .join('\n')
    .replace('Squat 1RM', `Squat 1RM (${unit})`);
};
const answers = { ...bar, 'day of the table': '2027-02-01' };
const question = 'load, row 2, column D';

describe('against the median of the column', () => {
  test('225 for a woman of 61 kg looks like pounds in a column of kilograms', async () => {
    const plan = await planned(women('225'), { answers });
    expect(openQuestions(plan)).toMatchObject([
      {
        id: question,
        about: 'unlikely load',
        where: 'row 2, column D “Squat 1RM (kg)”',
        asks: 'Is 225 kg for 1 repetition of Back squat by Maren Holt right?',
        because:
          'It is 2.21 times what the median of 6 tests of women in the column gives for a body mass of 61 kg, a maximum of about 101.9 kg: it looks like pounds in a column of kilograms.',
        suggested: 'lb',
        choices: [
          { answer: 'keep', says: 'it is right: 225 kg' },
          { answer: 'lb', says: 'it is pounds (225 lb, 102.1 kg)' },
          { answer: 'double', says: 'it is one side or one hand of two: double it (450 kg)' },
          { answer: 'halve', says: 'it is both sides added: halve it (112.5 kg)' },
          { answer: 'leave out', says: 'it cannot be told: leave this test out' },
        ],
      },
    ]);
    expect(draftsIn(plan)).toEqual([]);
  });

  test.each([
    ['keep', '225 kg', 'Brought in from “tests.csv”, row 2. Taken so: a 1RM leaves none in reserve.'],
    [
      'lb',
      '225 lb',
      'Brought in from “tests.csv”, row 2. Taken so: a 1RM leaves none in reserve; 225 read as lb, not kg.',
    ],
    ['halve', '112.5 kg', 'Brought in from “tests.csv”, row 2. Taken so: a 1RM leaves none in reserve; 225 kg halved.'],
  ])('answered "%s" it is %s, and the fact says so', async (answer, load, reason) => {
    const plan = await planned(women('225'), { answers: { ...answers, [question]: answer } });
    expect(plan.ready).toBe(true);
    const drafts = draftsIn(plan).filter(({ body }) => body.kind === 'lifted');
    expect(loads(plan)[0]).toBe(load);
    expect(drafts[0]?.reason).toBe(reason);
  });

  test('a load that no factor explains is said to be unusual', async () => {
    const plan = await planned(women('400'), { answers });
    expect(openQuestions(plan)).toEqual([]);
    expect(oddities(plan)).toEqual(['row 2, column D “Squat 1RM (kg)”: The load is unusual for the body mass.']);
  });

  test('left out it is said', async () => {
    const plan = await planned(women('225'), { answers: { ...answers, [question]: 'leave out' } });
    expect(plan.preview.totals.tests).toBe(5);
    expect(plan.preview.passedOver).toMatchObject([{ row: 2, what: 'The test is left out.' }]);
  });

  test.each([
    ['46.2', 'kg', 'a load that was converted twice', null],
    ['204', 'kg', 'both sides or both hands added together', 'halve'],
    ['51', 'kg', 'one side or one hand of two', 'double'],
    ['101.9', 'lb', 'kilograms in a column of pounds', 'kg'],
    ['495', 'lb', 'a load that was converted twice', null],
  ])('%s %s looks like %s', async (load, unit, looksLike, suggested) => {
    const [asked] = openQuestions(await planned(women(load, unit), { answers }));
    expect(asked?.because).toContain(`it looks like ${looksLike}.`);
    expect(asked?.suggested).toBe(suggested);
  });

  test.each(['97', '110', '80', '140', '150'])('%s kg is taken without a question', async (load) => {
    const plan = await planned(women(load), { answers });
    expect(openQuestions(plan)).toEqual([]);
    expect(plan.ready).toBe(true);
  });

  test('a factor is near within three in a hundred', async () => {
    const expected = (61 * 1.67) / 0.45359237;
    expect(openQuestions(await planned(women(String((expected * 1.029).toFixed(2))), { answers }))).toHaveLength(1);
    expect(openQuestions(await planned(women(String((expected * 1.031).toFixed(2))), { answers }))).toHaveLength(0);
  });

  test('the median of men says nothing of women', async () => {
    const plan = await planned(women('225').replaceAll(',F,', ',M,').replace('Maren Holt,M', 'Maren Holt,F'), {
      answers,
    });
    expect(openQuestions(plan)).toMatchObject([
      { because: 'It stands for a maximum of 225 kg, 3.69 times the body mass of 61 kg; 0.2 to 3 is usual.' },
    ]);
  });
});

describe('with fewer than five values', () => {
  const few = (load: string): string => `Name,Sex,BW (kg),Squat 1RM (kg)\nMaren Holt,F,61,${load}\nAna Ruiz,F,60,95\n`;

  test.each(['225', '184', '12'])('%s kg is questioned by body mass alone', async (load) => {
    expect(openQuestions(await planned(few(load), { answers }))).toMatchObject([{ id: question, suggested: null }]);
  });

  test.each(['13', '100', '182'])('%s kg is not', async (load) => {
    expect(openQuestions(await planned(few(load), { answers }))).toEqual([]);
  });

  test('without any body mass nothing can be compared', async () => {
    expect(openQuestions(await planned('Name,Sex,Squat 1RM (kg)\nMaren Holt,F,400\n', { answers }))).toEqual([]);
  });
});

describe('against the own estimate', () => {
  const MAREN = person('Maren Holt', { bodyMass: 61 });
  const context = {
    people: [MAREN],
    ownEstimate: (who: string, exercise: string) =>
      who === MAREN.id && exercise === exerciseId('Back squat') ? 100 : null,
  };
  const file = (load: string, repetitions = 1): string =>
    `Name,Date,Exercise,Load (kg),Reps\nMaren Holt,2027-02-01,Squat,${load},${repetitions}\n`;

  test('it goes before body mass and median', async () => {
    const [asked] = openQuestions(await planned(file('220'), { answers: bar, context }));
    expect(asked?.because).toBe(
      'It is 2.20 times the person’s own estimate, a maximum of about 100 kg: it looks like pounds in a column of kilograms.',
    );
    expect(openQuestions(await planned(file('250'), { answers: bar, context }))).toEqual([]);
  });

  test('repetitions are brought to a maximum first', async () => {
    // Brzycki: 5 repetitions of 195.6 kg stand for 36 / 32 × 195.6 = 220.1 kg.
    expect(openQuestions(await planned(file('195.6', 5), { answers: bar, context }))).toHaveLength(1);
    expect(openQuestions(await planned(file('220', 5), { answers: bar, context }))).toEqual([]);
  });

  test('repetitions in reserve count as lifted', async () => {
    const reserve = 'Name,Date,Exercise,Load (kg),Reps,RIR\nMaren Holt,2027-02-01,Squat,195.6,3,2\n';
    expect(openQuestions(await planned(reserve, { answers: bar, context }))).toHaveLength(1);
  });
});

import { describe, expect, test } from 'vitest';
import type { Draft, FactKind } from '#domain/fact.ts';
import { idOf } from '#domain/identity.ts';
import { isoDay } from '#units/day.ts';
import { draftsIn, openQuestions, planned } from '../fixtures/bring-in.ts';
import { person } from '../fixtures/invented-house.ts';

const bodies = <Kind extends FactKind>(drafts: readonly Draft[], kind: Kind) =>
  drafts.flatMap(({ body }) => (body.kind === kind ? [body as Extract<Draft['body'], { readonly kind: Kind }>] : []));

const MAREN = person('Maren Holt', { bodyMass: 61 });
const IWO = person('Iwo Falk', { sex: 'male', bodyMass: 84 });

describe('names', () => {
  const row = (name: string): string => `Name,Date,BW (kg)\n"${name}",2027-02-01,61\n`;

  test.each(['Maren Holt', 'HOLT, Maren', 'maren  holt', 'Máren Holt'])(
    '%s is Maren Holt, without a question',
    async (name) => {
      const plan = await planned(row(name), { context: { people: [MAREN, IWO] } });
      expect(plan.questions).toEqual([]);
      expect(bodies(draftsIn(plan), 'measured')).toMatchObject([{ person: MAREN.id }]);
    },
  );

  test.each(['Maren Hotl', 'M. Holt', 'Holt', 'Marren Holt', 'Maren Elisabet Holt'])(
    '%s may be Maren Holt and is asked',
    async (name) => {
      const plan = await planned(row(name), { context: { people: [MAREN, IWO] } });
      const [question] = openQuestions(plan);
      expect(question).toMatchObject({
        about: 'person',
        choices: [
          { answer: `is ${MAREN.id}`, says: 'the same as Maren Holt' },
          { answer: 'new' },
          { answer: 'leave out' },
        ],
      });
      const same = await planned(row(name), {
        context: { people: [MAREN, IWO] },
        answers: { [question?.id ?? '']: `is ${MAREN.id}` },
      });
      expect(bodies(draftsIn(same), 'measured')).toMatchObject([{ person: MAREN.id }]);
      const other = await planned(row(name), {
        context: { people: [MAREN, IWO] },
        answers: { [question?.id ?? '']: 'new' },
      });
      expect(openQuestions(other).map(({ about }) => about)).toEqual(['sex']);
    },
  );

  test('somebody quite different is new', async () => {
    const plan = await planned('Name,Sex,Date,BW (kg)\nTove Lind,F,2027-02-01,61\n', {
      context: { people: [MAREN, IWO] },
    });
    expect(plan.questions).toEqual([]);
    expect(plan.preview.people).toMatchObject([{ name: 'Tove Lind', isNew: true }]);
  });

  test('two people of one name on record are asked about', async () => {
    const twin = person('Maren Holt', { id: idOf('twin'), birthDate: isoDay('1990-05-05') });
    const plan = await planned(row('Maren Holt'), { context: { people: [MAREN, twin] } });
    expect(openQuestions(plan)).toMatchObject([
      {
        choices: [
          { says: 'the same as Maren Holt' },
          { says: 'the same as Maren Holt, born 1990-05-05' },
          { answer: 'new' },
          { answer: 'leave out' },
        ],
      },
    ]);
  });

  test('two spellings in one file are asked about and become one person', async () => {
    const file = 'Name,Sex,Date,Squat 5RM (kg)\nTove Lind,F,2027-02-01,80\nTove Lnid,F,2027-02-08,82.5\n';
    const answers = { 'machine of the table': 'bar-brae' };
    const open = await planned(file, { answers });
    expect(openQuestions(open)).toMatchObject([
      {
        id: 'person, tove lnid',
        choices: [{ answer: 'same as tove lind' }, { answer: 'new' }, { answer: 'leave out' }],
      },
    ]);
    const one = await planned(file, { answers: { ...answers, 'person, tove lnid': 'same as tove lind' } });
    expect(one.preview.people).toMatchObject([{ name: 'Tove Lind', tests: 2 }]);
    const out = await planned(file, { answers: { ...answers, 'person, tove lnid': 'leave out' } });
    expect(out.preview.people).toMatchObject([{ name: 'Tove Lind', tests: 1 }]);
    expect(out.preview.passedOver).toMatchObject([{ row: 3, what: 'The row is left out.' }]);
  });

  test('numbered people are not taken for each other', async () => {
    const plan = await planned('Name,Sex,Date,BW (kg)\nCrew 01,F,2027-02-01,61\nCrew 02,F,2027-02-01,62\n');
    expect(plan.questions).toEqual([]);
    expect(plan.preview.totals.newPeople).toBe(2);
  });

  test('given and family name may stand in two columns', async () => {
    const plan = await planned('Last,First,Date,BW (kg)\nHolt,Maren,2027-02-01,61\n', { context: { people: [MAREN] } });
    expect(bodies(draftsIn(plan), 'measured')).toMatchObject([{ person: MAREN.id }]);
  });

  test('a name written once above several rows is asked about', async () => {
    const file = 'Name,Date,Exercise,Load (kg),Reps\nMaren Holt,2027-02-01,Squat,90,4\n,2027-02-01,Bench,50,5\n';
    const context = { people: [MAREN] };
    const open = await planned(file, { context, answers: { 'machine of the table': 'bar-brae' } });
    expect(openQuestions(open).map(({ id }) => id)).toEqual(['rows without a name']);
    const answers = { 'machine of the table': 'bar-brae', 'rows without a name': 'as above' };
    expect((await planned(file, { context, answers })).preview.people).toMatchObject([
      { name: 'Maren Holt', tests: 2 },
    ]);
    const out = await planned(file, { context, answers: { ...answers, 'rows without a name': 'leave out' } });
    expect(out.preview.people).toMatchObject([{ name: 'Maren Holt', tests: 1 }]);
    expect(out.preview.passedOver).toMatchObject([{ row: 3 }]);
  });
});

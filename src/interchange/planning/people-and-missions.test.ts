import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { Draft, FactKind } from '#domain/fact.ts';
import { idOf } from '#domain/identity.ts';
import { isoDay } from '#units/day.ts';
import { draftsIn, oddities, openQuestions, planned, refusals } from '../fixtures/bring-in.ts';
import { person } from '../fixtures/invented-house.ts';

const fixture = (name: string): Uint8Array => readFileSync(new URL(`../fixtures/${name}`, import.meta.url));

const bodies = <Kind extends FactKind>(drafts: readonly Draft[], kind: Kind) =>
  drafts.flatMap(({ body }) => (body.kind === kind ? [body as Extract<Draft['body'], { readonly kind: Kind }>] : []));

const MAREN = person('Maren Holt', { bodyMass: 61 });

describe('people and missions', () => {
  test('missions with a landing range, then people who fly on them', async () => {
    const missions = await planned(fixture('missions.csv'));
    const [first, second] = bodies(draftsIn(missions), 'dated');
    expect(first).toMatchObject({
      name: 'Skerry 4',
      site: 'aboard',
      launch: isoDay('2027-06-01'),
      landing: { earliest: isoDay('2027-11-20'), latest: isoDay('2027-12-09') },
    });
    expect(second).toMatchObject({ name: 'Skerry 5', launch: isoDay('2027-10-15'), landing: null });
    const mission = {
      id: idOf<'mission'>('m4'),
      name: 'Skerry 4',
      site: idOf<'site'>('aboard'),
      launch: isoDay('2027-06-01'),
      landing: null,
      fact: idOf<'fact'>('f4'),
    };
    const people = await planned(fixture('people.csv'), {
      context: { missions: [mission] },
      answers: { 'day of the table': '2027-02-01' },
    });
    expect(refusals(people)).toEqual([]);
    const drafts = draftsIn(people);
    expect(bodies(drafts, 'introduced')).toMatchObject([
      { name: 'Iwo Falk', sex: 'male', birthDate: isoDay('1984-11-02'), trainingAge: { text: '15', unit: 'years' } },
      { name: 'Maren Holt', sex: 'female', birthDate: isoDay('1988-07-23'), trainingAge: { text: '8', unit: 'years' } },
    ]);
    expect(bodies(drafts, 'assigned')).toMatchObject([
      { mission: 'm4', role: 'backup', team: 'ours' },
      { mission: 'm4', role: 'prime', team: 'ours' },
    ]);
    expect(bodies(drafts, 'measured').map(({ what, value }) => `${what} ${value.text} ${value.unit}`)).toEqual([
      'body mass 84.2 kg',
      'stature 72 in',
      'body mass 61.4 kg',
      'stature 168 cm',
    ]);
  });

  test('a mission nobody knows is refused with those that are known', async () => {
    const plan = await planned('Name,Sex,Mission,Role\nAna,F,Skery 4,prime\n');
    expect(refusals(plan)).toEqual(['row 2, column C “Mission”: The mission “Skery 4” is not known.']);
  });

  test('a launch that differs from the record moves the mission only where it is answered so', async () => {
    const mission = {
      id: idOf<'mission'>('m4'),
      name: 'Skerry 4',
      site: idOf<'site'>('aboard'),
      launch: isoDay('2027-05-21'),
      landing: null,
      fact: idOf<'fact'>('f4'),
    };
    const file = 'Mission,Launch\nSkerry 4,2027-06-01\n';
    const context = { missions: [mission] };
    const open = await planned(file, { context });
    expect(openQuestions(open)).toMatchObject([
      {
        id: 'dates, skerry 4',
        because: 'Recorded: launch 2027-05-21, landing not told. The file: launch 2027-06-01, landing not told.',
      },
    ]);
    const moved = draftsIn(await planned(file, { context, answers: { 'dates, skerry 4': 'file' } }));
    expect(moved).toMatchObject([
      { supersedes: 'f4', body: { kind: 'dated', mission: 'm4', launch: isoDay('2027-06-01') } },
    ]);
    const kept = await planned(file, { context, answers: { 'dates, skerry 4': 'record' } });
    expect(kept.preview.totals.facts).toBe(0);
  });

  test('one file may tell of missions, people and tests together', async () => {
    const plan = await planned(
      'Name,Sex,Mission,Launch,Role,Date,BW (kg),Squat 5RM (kg)\nAna,F,Skerry 6,2028-01-10,prime,2027-02-01,61,80\n',
      { answers: { 'machine of the table': 'bar-brae' } },
    );
    expect(refusals(plan)).toEqual([]);
    const drafts = draftsIn(plan);
    expect(drafts.map(({ body }) => body.kind)).toEqual(['dated', 'introduced', 'assigned', 'measured', 'lifted']);
    const [dated] = bodies(drafts, 'dated');
    const [introduced] = bodies(drafts, 'introduced');
    expect(bodies(drafts, 'assigned')).toMatchObject([{ mission: dated?.mission, person: introduced?.person }]);
  });

  test('what is recorded of a person is not changed by a file, and a difference is said', async () => {
    const plan = await planned('Name,Sex,BW (kg),Date\nMaren Holt,M,61.4,2027-02-01\n', {
      context: { people: [MAREN] },
    });
    expect(draftsIn(plan).map(({ body }) => body.kind)).toEqual(['measured']);
    expect(oddities(plan)).toEqual([
      'row 2, column B “Sex”: The sex of Maren Holt differs from the record, which says female.',
    ]);
  });

  test('rows that contradict each other about one person are refused', async () => {
    const plan = await planned(
      'Name,Sex,Date of birth,Date,BW (kg)\nAna,F,1990-01-01,2027-02-01,61\nAna,M,1991-01-01,2027-02-01,62\n',
    );
    expect(refusals(plan)).toEqual([
      'row 3, column B “Sex”: The sex contradicts another row.',
      'row 3, column C “Date of birth”: The birth date contradicts another row.',
      'row 3, column E “BW (kg)”: The body mass contradicts row 2.',
    ]);
  });
});

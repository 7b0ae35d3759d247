import { expect, test } from 'vitest';
import { problemOf } from '#contract/facts/fact-issue.ts';
import { parseFactBody } from '#contract/facts/parse-fact.ts';
import { backSquat } from '#shipped/exercises/lower-body.ts';
import { atItsField } from './at-its-field.ts';
import { EXERCISE_LABELS, substituteLabels } from './exercise-words.ts';

const labels = { ...EXERCISE_LABELS, ...substituteLabels(1) };

/** What the program would refuse of an exercise, as it comes to the form. */
const refused = (change: object) => {
  const reading = parseFactBody({
    kind: 'catalogued',
    entry: { kind: 'exercise', exercise: { ...backSquat, ...change } },
  });
  const problems = reading.kind === 'refused' ? reading.issues.map(problemOf) : [];
  return problems.map((problem) => atItsField({ ...problem, field: `entries.0.${problem.field ?? ''}` }, labels));
};

test('a refusal comes to the field in which it was typed, in the words over that field', () => {
  const [problem] = refused({ secondsPerRepetition: 500 });
  expect(problem).toMatchObject({
    field: 'entry.exercise.secondsPerRepetition',
    what: 'One repetition is 500.',
    why: 'It must be a number from 0.1 to 120.',
  });
});

test('a line of a text is told by its number, and the others beside it', () => {
  const problems = refused({ cues: ['Heels down.', ' '], settingFields: [''] });
  expect(problems.map(({ field, what }) => [field, what])).toEqual([
    ['entry.exercise.cues', 'Cues, line 2 is " ".'],
    ['entry.exercise.settingFields', 'Settings at the machine, line 1 is "".'],
  ]);
});

test('a rating of a substitute comes to its own field', () => {
  const [problem] = refused({ substitutes: [{ exercise: 'deadlift', covers: { strength: 1.2 } }] });
  expect(problem).toMatchObject({
    field: 'entry.exercise.substitutes.0.covers.strength',
    what: 'Coverage of strength is 1.2.',
  });
});

test('what has no field of its own keeps its words', () => {
  const problem = { field: 'entries.0.supersedes', what: 'It was changed.', why: 'By another.', whatToDo: 'Look.' };
  expect(atItsField(problem, labels)).toEqual({ ...problem, field: 'supersedes' });
  expect(atItsField({ ...problem, field: null }, labels).field).toBeNull();
});

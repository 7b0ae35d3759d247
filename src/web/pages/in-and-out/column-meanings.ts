import type { ColumnMeaning } from '#contract/bring-in.ts';
import type { ExerciseLine } from '#contract/windows/house-window.ts';

type Plain = Exclude<ColumnMeaning['is'], 'load' | 'lift' | 'body mass' | 'stature'>;

interface ChoiceGroup {
  readonly label: string;
  readonly options: readonly { readonly value: string; readonly label: string }[];
}

const ABOUT_PEOPLE: readonly (Plain | 'body mass' | 'stature')[] = [
  'name',
  'given name',
  'family name',
  'birth date',
  'sex',
  'body mass',
  'stature',
  'training age',
];
const ABOUT_MISSIONS: readonly Plain[] = ['mission', 'role', 'team', 'site', 'launch', 'landing', 'latest landing'];
const ABOUT_TESTS: readonly (Plain | 'load')[] = [
  'date',
  'exercise',
  'load',
  'unit',
  'repetitions',
  'RPE',
  'repetitions in reserve',
  'side',
  'machine',
];
const WITHOUT_MORE = ['left out', ...ABOUT_PEOPLE, ...ABOUT_MISSIONS, ...ABOUT_TESTS].filter(
  (is): is is Plain => is !== 'load' && is !== 'body mass' && is !== 'stature',
);

const LIFT = 'lift: ';

const plain = (names: readonly string[]) => names.map((name) => ({ value: name, label: name }));

/** What a column may be taken for, in groups. */
export const meaningChoices = (exercises: readonly ExerciseLine[]): readonly ChoiceGroup[] => [
  { label: 'Not needed', options: plain(['left out']) },
  { label: 'People', options: plain(ABOUT_PEOPLE) },
  { label: 'One test a row', options: plain(ABOUT_TESTS) },
  {
    label: 'One person a row: load of',
    options: exercises.map(({ id, name }) => ({ value: LIFT + id, label: name })),
  },
  { label: 'Missions', options: plain(ABOUT_MISSIONS) },
];

export const keyOfMeaning = (meaning: ColumnMeaning): string =>
  meaning.is === 'lift' ? LIFT + meaning.exercise : meaning.is;

/** The meaning behind a choice. What the file does not say stays open and is asked; what was known already is kept. */
export const meaningOfKey = (key: string, before: ColumnMeaning, exercises: readonly ExerciseLine[]): ColumnMeaning => {
  const unit = before.is === 'lift' || before.is === 'load' || before.is === 'body mass' ? before.unit : null;
  const counted = before.is === 'lift' || before.is === 'load' ? before.counted : null;
  const exercise = exercises.find(({ id }) => LIFT + id === key)?.id;
  if (exercise !== undefined) {
    const { repetitions, side } = before.is === 'lift' ? before : { repetitions: null, side: null };
    return { is: 'lift', exercise, repetitions, unit, counted, side };
  }
  if (key === 'load') return { is: 'load', unit, counted };
  if (key === 'body mass') return { is: 'body mass', unit };
  if (key === 'stature') return { is: 'stature', unit: null };
  return { is: WITHOUT_MORE.find((is) => is === key) ?? 'left out' };
};

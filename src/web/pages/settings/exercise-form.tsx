import { useState } from 'react';
import type { Problem } from '#contract/problem.ts';
import type { ExerciseSetting, SettingsWindow } from '#contract/windows/settings-window.ts';
import { exerciseWarnings } from '#domain/exercise-change.ts';
import { GuardedDialog } from './guarded-dialog.tsx';
import { ChangeForm, useChange, type BuildChange } from './change-form.tsx';
import { ExerciseFields } from './exercise-fields.tsx';
import { ExerciseWordFields } from './exercise-word-fields.tsx';
import { EXERCISE_LABELS, substituteLabels } from './exercise-words.ts';
import { SubstituteFields } from './substitute-fields.tsx';
import { copyOf, exerciseOf, typedExerciseOf, type TypedExercise } from './typed-exercise.ts';
import { WarningBox } from './warning-box.tsx';

/** A new exercise, a copy of one under another name, or one that changes. */
export type ExerciseDoing =
  | { readonly kind: 'new' }
  | { readonly kind: 'copy'; readonly of: ExerciseSetting }
  | { readonly kind: 'change'; readonly of: ExerciseSetting };

interface ExerciseDialogProps {
  readonly doing: ExerciseDoing;
  readonly settings: SettingsWindow;
  readonly onDone: (said: string | null) => void;
}

export function ExerciseDialog({ doing, settings, onDone }: ExerciseDialogProps) {
  return (
    <GuardedDialog title={titleOf(doing)} onClose={() => onDone(null)}>
      <ExerciseForm doing={doing} settings={settings} onDone={onDone} />
    </GuardedDialog>
  );
}

const titleOf = (doing: ExerciseDoing): string => {
  switch (doing.kind) {
    case 'new':
      return 'New exercise';
    case 'copy':
      return `Copy of ${doing.of.exercise.name}`;
    case 'change':
      return `Change ${doing.of.exercise.name}`;
  }
};

const startOf = (doing: ExerciseDoing): TypedExercise => {
  switch (doing.kind) {
    case 'new':
      return typedExerciseOf(null);
    case 'copy':
      return copyOf(doing.of.exercise);
    case 'change':
      return typedExerciseOf(doing.of.exercise);
  }
};

function ExerciseForm({ doing, settings, onDone }: ExerciseDialogProps) {
  const before = doing.kind === 'change' ? doing.of : null;
  const [typed, setTyped] = useState(() => startOf(doing));
  const [isSeen, setSeen] = useState(false);
  const labels = { ...EXERCISE_LABELS, ...substituteLabels(typed.substitutes.length) };
  const change = useChange({
    supersedes: before?.history[0]?.fact ?? null,
    labels,
    asksWhy: before !== null,
    isSure: isSeen,
    onDone,
  });
  const exercises = settings.exercises.map(({ exercise }) => exercise);
  const warnings = before === null ? [] : exerciseWarnings(before.exercise, typed, before.uses);
  const build: BuildChange = (problems) => {
    const exercise = exerciseOf(typed, before?.exercise.id ?? null, exercises, problems);
    if (warnings.length > 0 && !isSeen) problems.push(NOT_SEEN);
    return exercise === null ? null : { kind: 'catalogued', entry: { kind: 'exercise', exercise } };
  };
  const shared = { typed, onTyped: setTyped, exercises, problems: change.problems };
  return (
    <ChangeForm
      change={change}
      build={build}
      labels={labels}
      asksWhy={before !== null}
      action={before === null ? 'Enter' : 'Change'}
      onCancel={() => onDone(null)}
    >
      {before !== null && before.cards.length > 0 && <StandingCards before={before} />}
      <ExerciseFields {...shared} own={before?.exercise.id ?? null} />
      <ExerciseWordFields {...shared} />
      <SubstituteFields {...shared} own={before?.exercise.id ?? null} />
      <WarningBox
        warnings={warnings.map(({ says }) => says)}
        isSeen={isSeen}
        onSeen={setSeen}
        problems={change.problems}
      />
    </ChangeForm>
  );
}

const StandingCards = ({ before: { cards } }: { readonly before: ExerciseSetting }) => (
  <p className="small">
    {cards.length === 1 ? 'One issued card holds' : `${cards.length} issued cards hold`} it as it is now. They stand as
    they were issued; what changes here shows on cards that are issued from now on.
  </p>
);

const NOT_SEEN: Problem = {
  field: 'warnings',
  what: 'The warnings are not ticked.',
  why: 'What is signed has been seen.',
  whatToDo: 'Read them, and tick that you have; or change the field back.',
};

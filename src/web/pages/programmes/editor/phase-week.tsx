import { useEffect } from 'react';
import type { Exercise } from '#domain/catalogue.ts';
import type { ProgrammeItem } from '#domain/programme.ts';
import { isSamePlace } from '#web/parts/block/selection.ts';
import { Problems } from '#web/parts/parts.ts';
import { startAtCell } from '../../sheet/use-range.ts';
import type { Draft, DraftPhase } from './draft.ts';
import type { PlacedProblem } from './draft-problems.ts';
import { ItemPanel } from './item-panel.tsx';
import type { Editing } from './use-draft.ts';
import { FIRST_PLACE, useWeek } from './use-week.ts';
import { slotAt } from './week.ts';
import { WeekEditor, type WeekEditorProps } from './week-editor.tsx';
import { withItem } from './with-item.ts';
import styles from './editor.module.css';

export interface PhaseWeekProps extends Pick<WeekEditorProps, 'isChanged'> {
  readonly editing: Editing;
  readonly at: number;
  readonly phase: DraftPhase;
  readonly exercises: readonly Exercise[];
  readonly problems: readonly PlacedProblem[];
}

/** The week of a phase, and beside it what the chosen line does not say. */
export const PhaseWeek = ({ editing, at, phase, exercises, problems, isChanged }: PhaseWeekProps) => {
  const week = useWeek(editing, at, phase, exercises);
  useEffect(() => startAtCell(FIRST_PLACE), []);
  const { cursor } = week.range.selection;
  const slot = slotAt(phase, cursor);
  const item = slot.kind === 'item' ? slot.item : null;
  const exercise = item && exercises.find(({ id }) => id === item.exercise);
  const wrong = problems.filter(({ place }) => place !== null && isSamePlace(place, cursor));
  const change = (draft: Draft, changed: ProgrammeItem): Draft => withItem(draft, changed);
  return (
    <div className={styles['beside']}>
      <div>
        <WeekEditor
          draft={editing.draft}
          phase={phase}
          week={week}
          exercises={exercises}
          problems={problems}
          isChanged={isChanged}
        />
        <output className={styles['said']}>{week.said}</output>
        <Keys />
      </div>
      <aside className="on-screen">
        <Problems problems={wrong.map(({ problem }) => problem)} />
        {item && exercise ? (
          <ItemPanel
            key={item.id}
            item={item}
            exercise={exercise}
            onChange={(changed, stroke) =>
              editing.change(change(editing.draft, changed), stroke && `${item.id} ${stroke}`)
            }
          />
        ) : (
          <p className="soft small">
            What a line does not say, such as its load basis and its track, stands here beside it.
          </p>
        )}
      </aside>
    </div>
  );
};

const Keys = () => (
  <p className={`${styles['keys'] ?? ''} soft small on-screen`}>
    Type to write, <kbd>Enter</kbd> to edit, <kbd>Shift</kbd> with arrows for a range, <kbd>Ctrl</kbd>+<kbd>C</kbd>{' '}
    <kbd>X</kbd> <kbd>V</kbd>, fill down <kbd>D</kbd>, fill right <kbd>R</kbd>, undo <kbd>Z</kbd>, redo <kbd>Y</kbd>;{' '}
    <kbd>Alt</kbd>+<kbd>↑</kbd> <kbd>↓</kbd> moves a line, <kbd>Delete</kbd> clears.
  </p>
);

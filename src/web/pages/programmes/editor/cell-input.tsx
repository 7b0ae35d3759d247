import { useId, useRef, useState, type KeyboardEvent } from 'react';
import type { Exercise } from '#domain/catalogue.ts';
import { exerciseOfLine, exercisesFor } from '#domain/programme-line/exercise-of-line.ts';
import type { LineReading } from '#domain/programme-line/read-line.ts';
import { join } from '#web/parts/parts.ts';
import styles from './week.module.css';

export interface CellInputProps {
  readonly label: string;
  readonly start: string;
  /** In the right half of the week it grows to the left. */
  readonly isFromRight: boolean;
  readonly exercises: readonly Exercise[];
  /** What the line would be; null where the cell is no line of an item. */
  readonly read: ((text: string) => LineReading) | null;
  readonly onDone: (text: string, then: 'down' | 'right' | 'stay') => void;
  readonly onLeave: () => void;
}

/** Names that go on from what is typed, while there is nothing but a part of a name. */
const offered = (text: string, exercises: readonly Exercise[]): readonly Exercise[] => {
  const typed = text.trim();
  return typed.length < 2 || /\d/.test(typed) || exerciseOfLine(typed, exercises) ? [] : exercisesFor(typed, exercises);
};

/** One cell being typed into: names are completed, and what the line comes to, or what is wrong with it, stands under it. */
export const CellInput = ({ label, start, isFromRight, exercises, read, onDone, onLeave }: CellInputProps) => {
  const [text, setText] = useState(start);
  const [at, setAt] = useState(0);
  const id = useId();
  const isOver = useRef(false);
  const names = read ? offered(text, exercises) : [];
  const done = (then: 'down' | 'right' | 'stay'): void => {
    if (isOver.current) return;
    isOver.current = true;
    onDone(text, then);
  };
  const complete = (exercise: Exercise | undefined): void => {
    if (exercise) setText(`${exercise.name} `);
    setAt(0);
  };
  const does: Does = {
    names: names.length,
    step: (by) => setAt((now) => (now + by + names.length) % names.length),
    complete: () => complete(names[at]),
    done,
    leave: () => {
      isOver.current = true;
      onLeave();
    },
  };
  return (
    <div
      className={join(styles['typing'], isFromRight && styles['fromright'])}
      onPointerDown={(event) => event.stopPropagation()}
      onPointerUp={(event) => event.stopPropagation()}
    >
      <input
        role="combobox"
        aria-label={label}
        aria-expanded={names.length > 0}
        aria-controls={`${id}-names`}
        aria-activedescendant={names.length > 0 ? `${id}-${at}` : undefined}
        aria-describedby={`${id}-outcome`}
        aria-autocomplete="list"
        value={text}
        onChange={(event) => {
          setText(event.target.value);
          setAt(0);
        }}
        onKeyDown={(event) => pressed(event, does)}
        onBlur={() => done('stay')}
        autoFocus // oxlint-disable-line jsx-a11y/no-autofocus -- the cell was opened to be typed into
        autoComplete="off"
        spellCheck={false}
      />
      <div className={styles['under']}>
        <Names id={id} names={names} at={at} onChoose={complete} />
        <output id={`${id}-outcome`}>{read && names.length === 0 ? <Outcome text={text} read={read} /> : null}</output>
      </div>
    </div>
  );
};

interface NamesProps {
  readonly id: string;
  readonly names: readonly Exercise[];
  readonly at: number;
  readonly onChoose: (exercise: Exercise) => void;
}

/* The keyboard stays in the cell and steers this list from there, which no element of the browser does by itself. */
const Names = ({ id, names, at, onChoose }: NamesProps) => (
  // oxlint-disable-next-line jsx-a11y/prefer-tag-over-role -- as above
  <div id={`${id}-names`} role="listbox" aria-label="Exercises">
    {names.map((exercise, place) => (
      <div
        key={exercise.id}
        id={`${id}-${place}`}
        role="option" // oxlint-disable-line jsx-a11y/prefer-tag-over-role -- as above
        tabIndex={-1}
        aria-selected={place === at}
        className={join(styles['offer'], place === at && styles['offered'])}
        onMouseDown={(event) => {
          event.preventDefault();
          onChoose(exercise);
        }}
      >
        {exercise.name}
      </div>
    ))}
  </div>
);

interface Does {
  readonly names: number;
  readonly step: (by: 1 | -1) => void;
  readonly complete: () => void;
  readonly done: (then: 'down' | 'right' | 'stay') => void;
  readonly leave: () => void;
}

const pressed = (event: KeyboardEvent, does: Does): void => {
  event.stopPropagation();
  const meant = keyMeaning(event, does);
  if (!meant) return;
  event.preventDefault();
  meant();
};

const keyMeaning = ({ key, shiftKey }: KeyboardEvent, does: Does): (() => void) | null => {
  if (key === 'Escape') return does.leave;
  if (does.names > 0) {
    if (key === 'ArrowDown') return () => does.step(1);
    if (key === 'ArrowUp') return () => does.step(-1);
    if (key === 'Enter' || (key === 'Tab' && !shiftKey)) return does.complete;
  }
  if (key === 'Enter') return () => does.done('down');
  return key === 'Tab' && !shiftKey ? () => does.done('right') : null;
};

const Outcome = ({ text, read }: { readonly text: string; readonly read: (text: string) => LineReading }) => {
  if (text.trim() === '') return <span className="soft">Back squat 4 × 6 @ 80 %, rest 2:30</span>;
  const reading = read(text);
  return reading.kind === 'problems' ? (
    <span className={styles['wrongline']}>{reading.problems.map(({ says }) => says).join(' ')}</span>
  ) : (
    <span className="soft">
      on the {reading.item.machineKind}, track “{reading.item.track}”
    </span>
  );
};

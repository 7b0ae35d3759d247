import { useId, type ReactNode } from 'react';
import type { Problem } from '#contract/problem.ts';
import { join } from './join.ts';
import styles from './field.module.css';

interface Labelled {
  readonly label: string;
  readonly hint?: string;
  /** Name of the field as refusals call it. */
  readonly name?: string;
  /** All problems of the form: those of this field are shown under it. */
  readonly problems?: readonly Problem[];
  readonly isNarrow?: boolean;
}

export interface FieldProps extends Labelled {
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly unit?: string;
  readonly type?: 'text' | 'date' | 'search';
  readonly inputMode?: 'text' | 'decimal' | 'numeric';
  readonly isLong?: boolean;
  readonly isRequired?: boolean;
  /** The keyboard starts here: in a dialog that was opened for it. */
  readonly isFirst?: boolean;
  readonly placeholder?: string;
}

export const problemsAt = (problems: readonly Problem[] | undefined, name: string | undefined): readonly Problem[] =>
  name === undefined ? [] : (problems ?? []).filter(({ field }) => field === name);

/** A label, what stands under it, and what was wrong with it. */
const Frame = ({
  id,
  children,
  label,
  hint,
  name,
  problems,
  isNarrow,
}: Labelled & { readonly id: string; readonly children: ReactNode }) => (
  <div className={join(styles['field'], isNarrow && styles['narrow'])}>
    <label htmlFor={id}>{label}</label>
    {children}
    {hint ? (
      <div className={styles['hint']} id={`${id}-hint`}>
        {hint}
      </div>
    ) : null}
    <output id={`${id}-wrong`}>
      {problemsAt(problems, name).map(({ what, why, whatToDo }) => (
        <span className={styles['wrong']} key={what}>
          <strong>{what}</strong> {why} {whatToDo}
        </span>
      ))}
    </output>
  </div>
);

const describedBy = (id: string, { hint }: Labelled): string => (hint ? `${id}-hint ${id}-wrong` : `${id}-wrong`);

/** A labelled line to type in; `isLong` for several lines. The value is text as typed, never a number. */
export const Field = (props: FieldProps) => {
  const id = useId();
  const { value, onChange, unit, type = 'text', inputMode, isLong, isRequired, isFirst, placeholder } = props;
  const shared = {
    id,
    value,
    placeholder,
    required: isRequired,
    autoFocus: isFirst,
    'aria-invalid': problemsAt(props.problems, props.name).length > 0,
    'aria-describedby': describedBy(id, props),
  };
  return (
    <Frame id={id} {...props}>
      <div className={styles['line']}>
        {isLong ? (
          <textarea {...shared} rows={3} onChange={(event) => onChange(event.target.value)} />
        ) : (
          <input
            {...shared}
            type={type}
            inputMode={inputMode}
            autoComplete="off"
            onChange={(event) => onChange(event.target.value)}
          />
        )}
        {unit ? <span className="soft">{unit}</span> : null}
      </div>
    </Frame>
  );
};

export interface ChoiceProps extends Labelled {
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly options: readonly { readonly value: string; readonly label: string }[];
  /** Shown while nothing is chosen. */
  readonly nothing?: string;
}

/** One of several, as the browser's own list. */
export const Choice = (props: ChoiceProps) => {
  const id = useId();
  const { value, onChange, options, nothing } = props;
  return (
    <Frame id={id} {...props}>
      <select
        id={id}
        value={value}
        onChange={(event) => onChange(event.target.value)}
        aria-describedby={describedBy(id, props)}
      >
        {nothing === undefined ? null : <option value="">{nothing}</option>}
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.label}
          </option>
        ))}
      </select>
    </Frame>
  );
};

/** Fields side by side while there is room. */
export const Fields = ({ children }: { readonly children: ReactNode }) => (
  <div className={styles['row']}>{children}</div>
);

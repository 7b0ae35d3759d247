import { useState } from 'react';
import { Field, type FieldProps } from '#web/parts/parts.ts';

export interface TypedFieldProps<Value> extends Pick<FieldProps, 'label' | 'unit' | 'isNarrow' | 'inputMode' | 'hint'> {
  readonly value: string;
  readonly read: (text: string) => Value | null;
  readonly onValue: (value: Value) => void;
  /** What it must be, where it cannot be read: "a whole number from 1 to 20". */
  readonly must: string;
}

/** A field whose text is read as it is typed: what cannot be read stays in the field, with the reason, and changes nothing. */
export const TypedField = <Value,>({ value, read, onValue, must, ...rest }: TypedFieldProps<Value>) => {
  const [typed, setTyped] = useState<{ readonly text: string; readonly of: string } | null>(null);
  // What was typed stands only as long as the value it was typed over, or what it was read to.
  const text = typed !== null && typed.of === value ? typed.text : value;
  const isWrong = read(text) === null;
  return (
    <Field
      {...rest}
      name="typed"
      value={text}
      onChange={(next) => {
        const made = read(next);
        setTyped({ text: next, of: value });
        if (made !== null) onValue(made);
      }}
      problems={
        isWrong
          ? [
              {
                what: `It must be ${must}.`,
                why: 'What cannot be read is not taken.',
                whatToDo: `Now it is ${value || 'empty'}.`,
                field: 'typed',
              },
            ]
          : []
      }
    />
  );
};

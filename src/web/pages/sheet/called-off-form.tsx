import { useState } from 'react';
import type { SheetColumn, SheetWindow } from '#contract/windows/sheet-window.ts';
import type { CalledOffCause } from '#domain/fact.ts';
import { Button } from '../../parts/button.tsx';
import { Actions } from '../../parts/dialog.tsx';
import { Choice, Field } from '../../parts/field.tsx';
import { Problems } from '../../parts/problems.tsx';
import { useRecording } from '../../windows.ts';

const CAUSES: readonly CalledOffCause[] = ['medical', 'machine', 'operations', 'travel', 'rest by agreement'];

export interface CalledOffFormProps {
  readonly sheet: SheetWindow;
  readonly column: SheetColumn;
  readonly onDone: () => void;
  readonly onLeave: () => void;
}

/** A session that was taken away, with its cause: it counts neither as done nor as missed. */
export const CalledOffForm = ({ sheet, column, onDone, onLeave }: CalledOffFormProps) => {
  const [cause, setCause] = useState('');
  const [text, setText] = useState('');
  const { record, isSending, problems } = useRecording();
  const chosen = CAUSES.find((each) => each === cause);
  const confirm = (): void => {
    if (!chosen) return;
    const person = sheet.person.id;
    record(
      [{ body: { kind: 'called off', person, day: column.day, card: column.card, cause: chosen, text: text.trim() } }],
      onDone,
    );
  };
  return (
    <>
      <Choice
        label="Cause"
        value={cause}
        onChange={setCause}
        nothing="choose the cause"
        options={CAUSES.map((each) => ({ value: each, label: each }))}
      />
      <Field label="In their words, or yours" value={text} onChange={setText} isLong />
      <Problems problems={problems} />
      <Actions>
        <Button kind="main" onPress={confirm} isDisabled={isSending || !chosen}>
          Record as called off
        </Button>
        <Button onPress={onLeave}>Leave it</Button>
      </Actions>
    </>
  );
};

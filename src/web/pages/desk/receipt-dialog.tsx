import { useState } from 'react';
import type { DeskLine } from '#contract/windows/desk-window.ts';
import type { Day } from '#units/day.ts';
import { Button } from '../../parts/button.tsx';
import { Actions, Dialog } from '../../parts/dialog.tsx';
import { Field } from '../../parts/field.tsx';
import { Problems } from '../../parts/problems.tsx';
import { useRecording } from '../../windows.ts';

export interface ReceiptDialogProps {
  readonly line: Extract<DeskLine, { readonly kind: 'recalled' }>;
  readonly today: Day;
  readonly onClose: () => void;
}

/** The person knows that the card is called back: how it was said. */
export const ReceiptDialog = ({ line, today, onClose }: ReceiptDialogProps) => {
  const [how, setHow] = useState('');
  const { record, isSending, problems } = useRecording();
  const confirm = (): void =>
    record(
      [
        {
          body: { kind: 'received', person: line.person, card: line.card, what: 'recall', how: how.trim(), on: today },
        },
      ],
      onClose,
    );
  return (
    <Dialog title={`${line.name} knows of the recall`} isOpen onClose={onClose}>
      <p>{line.readUp}</p>
      <Field label="How it was confirmed" hint="such as: read back over voice" value={how} onChange={setHow} isFirst />
      <Problems problems={problems} />
      <Actions>
        <Button kind="main" onPress={confirm} isDisabled={isSending || how.trim() === ''}>
          Record receipt
        </Button>
        <Button onPress={onClose}>Not yet</Button>
      </Actions>
    </Dialog>
  );
};

import { useState } from 'react';
import type { DeskLine } from '#contract/windows/desk-window.ts';
import { dayFromIso, isoOfDay, type Day } from '#units/day.ts';
import { Button } from '../../parts/button.tsx';
import { Actions, Dialog } from '../../parts/dialog.tsx';
import { Choice, Field, Fields } from '../../parts/field.tsx';
import { Problems } from '../../parts/problems.tsx';
import { useRecording } from '../../windows.ts';

interface LookDialogProps {
  readonly line: Extract<DeskLine, { readonly kind: 'hands to be looked at' }>;
  readonly today: Day;
  readonly onClose: () => void;
}

/** Hands with nails and skin, and shoulders, after a space walk: grip and pressing go on, or they stay out. */
export const LookDialog = ({ line, today, onClose }: LookDialogProps) => {
  const [passed, setPassed] = useState('yes');
  const [observedBy, setObservedBy] = useState('');
  const [typed, setTyped] = useState(isoOfDay(today));
  const { record, isSending, problems } = useRecording();
  const day = dayFromIso(typed);
  const isReady = day !== null && day >= line.walk && observedBy.trim() !== '';
  const confirm = (): void => {
    if (day === null) return;
    const look = { kind: 'looked at', what: 'hands and shoulders' } as const;
    record(
      [{ body: { ...look, person: line.person, day, passed: passed === 'yes', observedBy: observedBy.trim() } }],
      onClose,
    );
  };
  return (
    <Dialog title={`${line.name}: hands and shoulders`} isOpen onClose={onClose}>
      <p>{line.says} Hands, nails, skin and both shoulders were looked at:</p>
      <Choice label="Found" value={passed} onChange={setPassed} options={FOUND} />
      <Fields>
        <Field
          label="Who looked"
          name="observedBy"
          value={observedBy}
          onChange={setObservedBy}
          problems={problems}
          isRequired
          isFirst
        />
        <Field
          label="Day"
          name="day"
          type="date"
          value={typed}
          onChange={setTyped}
          problems={problems}
          hint="not before the space walk"
        />
      </Fields>
      <Problems problems={problems} shownElsewhere={['observedBy', 'day']} />
      <Actions>
        <Button kind="main" onPress={confirm} isDisabled={isSending || !isReady}>
          Record the look
        </Button>
        <Button onPress={onClose}>Not yet</Button>
      </Actions>
    </Dialog>
  );
};

const FOUND = [
  { value: 'yes', label: 'all sound: grip and pressing go on' },
  { value: 'no', label: 'not sound: grip and pressing stay out' },
] as const;

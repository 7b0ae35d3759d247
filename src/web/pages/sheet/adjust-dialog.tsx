import { useState } from 'react';
import { ROUTES } from '#contract/routes.ts';
import type { SheetCell, SheetColumn, SheetRow, SheetWindow } from '#contract/windows/sheet-window.ts';
import { Button } from '../../parts/button.tsx';
import { longDate } from '../../parts/dates.ts';
import { Actions, Dialog } from '../../parts/dialog.tsx';
import { Field } from '../../parts/field.tsx';
import { SignAs } from '../../parts/sign-as.tsx';
import { Problems } from '../../parts/problems.tsx';
import { useSigner } from '../../signer.tsx';
import { useWrite } from '../../windows.ts';

export interface AdjustDialogProps {
  readonly sheet: SheetWindow;
  readonly column: SheetColumn;
  readonly exercise: SheetRow;
  readonly cell: SheetCell;
  readonly change: 'hold' | 'back off' | 'keep' | 'leave out';
  readonly onClose: () => void;
}

const SAYS = {
  hold: 'No raise while it stands. The load stays where it is; results are still taken.',
  'back off': 'Takes 10 % off the machine load, at once. Coming back is a raise and needs a signature.',
  keep: 'Never left out for want of time while it stands: something else goes first.',
  'leave out': 'Leaves it out of this session; the others stay as they are.',
} as const;

const TITLES = { hold: 'hold', 'back off': 'back off 10 %', keep: 'keep', 'leave out': 'leave out' } as const;
const SIGNS = {
  hold: 'Sign the hold',
  'back off': 'Sign 10 % less',
  keep: 'Sign it',
  'leave out': 'Leave it out',
} as const;

/** One person's departure from the programme on one lift, with its reason. */
export const AdjustDialog = ({ sheet, column, exercise, cell, change, onClose }: AdjustDialogProps) => {
  const [reason, setReason] = useState('');
  const { signer } = useSigner();
  const { send, isSending, problems } = useWrite();
  const from = column.past ? sheet.today : column.day;
  const until = change === 'leave out' ? from : null;
  const confirm = (): void => {
    if (!signer) return;
    const request = {
      signer: signer.id,
      change: { kind: change },
      track: cell.track,
      from,
      until,
      reason: reason.trim(),
    };
    send(ROUTES.adjust(sheet.person.id), request, onClose);
  };
  return (
    <Dialog title={`${exercise.name}: ${TITLES[change]}`} isOpen onClose={onClose}>
      <p>
        {SAYS[change]} {until === null ? 'From' : 'On'} {longDate(from)}, for {sheet.person.name}.
      </p>
      <Field label="Reason" name="reason" value={reason} onChange={setReason} problems={problems} isRequired isFirst />
      <Problems problems={problems} shownElsewhere={['reason']} />
      <Actions>
        <Button kind="main" onPress={confirm} isDisabled={isSending || !signer || reason.trim() === ''}>
          {SIGNS[change]}
        </Button>
        <Button onPress={onClose}>Leave it</Button>
        <SignAs />
      </Actions>
    </Dialog>
  );
};

import { useState } from 'react';
import { ROUTES } from '#contract/routes.ts';
import type { DeskLine } from '#contract/windows/desk-window.ts';
import { Button } from '../../parts/button.tsx';
import { Actions, Dialog } from '../../parts/dialog.tsx';
import { Field } from '../../parts/field.tsx';
import { SignAs } from '../../parts/sign-as.tsx';
import { Problems } from '../../parts/problems.tsx';
import { RaiseTable } from '../../parts/raise-table.tsx';
import { useSigner } from '../../signer.tsx';
import { useHouse, useWrite } from '../../windows.ts';

export interface ProposalDialogProps {
  readonly line: Extract<DeskLine, { readonly kind: 'proposal' }>;
  readonly answer: 'sign' | 'decline';
  readonly onClose: () => void;
}

/** A named person's yes or no to what the program proposes. */
export const ProposalDialog = ({ line, answer, onClose }: ProposalDialogProps) => {
  const [reason, setReason] = useState('');
  const [sets, setSets] = useState(line.setsBy === null ? '' : String(line.setsBy));
  const setsBy = /^-?\d{1,2}$/.test(sets.trim()) ? Number(sets) : null;
  const { signer } = useSigner();
  const basis = useHouse().data?.upTo;
  const { send, isSending, problems } = useWrite();
  const needsReason = answer === 'decline' || line.raises.some((raise) => raise.needsReason);
  const isReady =
    signer !== null &&
    basis !== undefined &&
    (!needsReason || reason.trim() !== '') &&
    (line.setsBy === null || answer === 'decline' || (setsBy !== null && setsBy !== 0));
  const confirm = (): void => {
    if (!signer || basis === undefined) return;
    const request = { signer: signer.id, person: line.person, answer, reason: reason.trim(), setsBy, basis };
    send(ROUTES.proposal(line.proposal), request, onClose);
  };
  return (
    <Dialog title={`${line.name}: ${answer === 'sign' ? 'sign' : 'decline'}`} isOpen onClose={onClose}>
      <p>{line.says}</p>
      {line.raises.length > 0 ? <RaiseTable raises={line.raises} /> : null}
      {line.setsBy !== null && answer === 'sign' ? (
        <Field label="Sets or bouts more each time" value={sets} onChange={setSets} inputMode="numeric" isNarrow />
      ) : null}
      <Field
        label={needsReason ? 'Reason' : 'Reason, if there is one to keep'}
        name="reason"
        value={reason}
        onChange={setReason}
        problems={problems}
        isRequired={needsReason}
        isFirst={answer === 'decline'}
      />
      <Problems problems={problems} shownElsewhere={['reason']} />
      <Actions>
        <Button kind="main" onPress={confirm} isDisabled={isSending || !isReady} isFirst={answer === 'sign'}>
          {answer === 'sign' ? 'Sign' : 'Decline'}
        </Button>
        <Button onPress={onClose}>Leave it open</Button>
        <SignAs />
      </Actions>
    </Dialog>
  );
};

import { useState } from 'react';
import { ROUTES } from '#contract/routes.ts';
import type { PolicyRequest } from '#contract/requests/requests.ts';
import type { CrossingDetail } from '#contract/windows/crossing-window.ts';
import type { ReplacementPolicy } from '#domain/decision.ts';
import { Actions, Button, Dialog, Field, Problems, showFraction, SignAs, useSigner } from '../../parts/parts.ts';
import { useWrite } from '../../windows.ts';

interface PolicySignatureProps {
  readonly person: string;
  readonly detail: CrossingDetail;
  readonly policy: ReplacementPolicy;
  readonly onClose: () => void;
}

/** What is signed, by whom, and why. */
export function PolicySignature({ person, detail, policy, onClose }: PolicySignatureProps) {
  const [reason, setReason] = useState('');
  const { signer } = useSigner();
  const write = useWrite();
  const sign = (): void => {
    if (signer === null || write.isSending) return;
    const request: PolicyRequest = { signer: signer.id, exercise: detail.exercise, policy, reason };
    write.send(ROUTES.policy(person), request, onClose);
  };
  return (
    <Dialog title={`Body weight added back: ${detail.name}`} isOpen onClose={onClose}>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          sign();
        }}
      >
        <p>
          From {nameOf(detail.signedPolicy)} to <b>{nameOf(policy)}</b>. Cards that are issued keep their loads; the
          ones that are planned are computed anew, and whatever goes up waits for a signature of its own.
        </p>
        <Field
          label="Why"
          name="reason"
          value={reason}
          onChange={setReason}
          problems={write.problems}
          isLong
          isRequired
          isFirst
        />
        <Problems problems={write.problems} shownElsewhere={['reason']} />
        <Actions>
          <Button kind="main" type="submit" isDisabled={signer === null || reason.trim() === ''}>
            Sign
          </Button>
          <SignAs />
          <Button onPress={onClose}>Leave it</Button>
        </Actions>
      </form>
    </Dialog>
  );
}

const nameOf = (policy: ReplacementPolicy): string =>
  typeof policy === 'string' ? policy : `own share ${showFraction(policy.share)}`;

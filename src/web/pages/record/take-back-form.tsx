import { useState } from 'react';
import { ROUTES } from '#contract/routes.ts';
import type { RetractRequest } from '#contract/requests/requests.ts';
import type { RecordLine } from '#contract/windows/record-window.ts';
import { Actions, Button, Field, Problems, SignAs, useSigner } from '../../parts/parts.ts';
import { useWrite } from '../../windows.ts';

/** Takes an entry back: it stays visible and counts no more. */
export function TakeBackForm({ line, onDone }: { readonly line: RecordLine; readonly onDone: () => void }) {
  const [reason, setReason] = useState('');
  const { signer } = useSigner();
  const write = useWrite();
  return (
    <form
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        if (signer === null || write.isSending) return;
        const request: RetractRequest = { signer: signer.id, fact: line.fact.id, reason };
        write.send(ROUTES.retract, request, onDone);
      }}
    >
      <p>
        <b>{line.says}</b> of {line.when} stays visible, struck through, and counts no more.
      </p>
      <Field
        label="Why is it taken back"
        name="reason"
        value={reason}
        onChange={setReason}
        problems={write.problems}
        isRequired
        isFirst
      />
      <Problems problems={write.problems} shownElsewhere={['reason']} />
      <Actions>
        <Button kind="stop" type="submit" isDisabled={signer === null || reason.trim() === ''}>
          Take back
        </Button>
        <SignAs />
        <Button onPress={onDone}>Leave it</Button>
      </Actions>
    </form>
  );
}

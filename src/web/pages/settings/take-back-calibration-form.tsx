import { useState } from 'react';
import { ROUTES } from '#contract/routes.ts';
import type { MachineSetting } from '#contract/windows/settings-window.ts';
import { Actions, Button, dateWithYear, Field, Problems, SignAs, useSigner } from '../../parts/parts.ts';
import { useWrite } from '../../windows.ts';
import { NO_REASON } from './change-form.tsx';

interface TakeBackCalibrationFormProps {
  readonly calibration: MachineSetting['calibrations'][number];
  readonly onDone: (said: string | null) => void;
}

/** A calibration of another machine, or one that never was: it stays in the log and counts no more. */
export function TakeBackCalibrationForm({ calibration: { fact }, onDone }: TakeBackCalibrationFormProps) {
  const [reason, setReason] = useState('');
  const { signer } = useSigner();
  const write = useWrite();
  const [isAsked, setAsked] = useState(false);
  const problems = isAsked && reason.trim() === '' ? [NO_REASON] : write.problems;
  const takeBack = (): void => {
    if (signer === null || write.isSending) return;
    setAsked(true);
    if (reason.trim() === '') return;
    write.send(ROUTES.retract, { signer: signer.id, fact: fact.id, reason }, () => onDone(null));
  };
  return (
    <form
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        takeBack();
      }}
    >
      <p>
        From {dateWithYear(fact.day)}: delivers {fact.factor} of what is set.
      </p>
      <Field
        label="Why is it taken back"
        name="reason"
        value={reason}
        onChange={setReason}
        problems={problems}
        hint="It stays in the log with this reason, and counts no more."
        isRequired
        isFirst
      />
      <Problems problems={problems} shownElsewhere={['reason']} />
      <Actions>
        <Button kind="stop" type="submit" isDisabled={signer === null}>
          Take back
        </Button>
        <SignAs />
        <Button onPress={() => onDone(null)}>Leave it</Button>
      </Actions>
    </form>
  );
}

import { useState, type ReactNode } from 'react';
import type { Problem } from '#contract/problem.ts';
import type { HouseWindow } from '#contract/windows/house-window.ts';
import type { Fact, FactBody, FactKind } from '#domain/fact.ts';
import type { PersonId } from '#domain/identity.ts';
import { Actions, Button, Field, Problems, SignAs, useSigner } from '../../parts/parts.ts';
import { useRecording } from '../../windows.ts';

/** What every form of this page is given. `correcting`: the fact whose place the new one takes. */
export interface FormProps<Kind extends FactKind = FactKind> {
  readonly person: PersonId;
  readonly house: HouseWindow;
  readonly correcting: Fact<Kind> | null;
  readonly onDone: () => void;
}

/** The bodies that a form comes to, or null where its problems stand against them. */
export type Build = (problems: Problem[]) => readonly FactBody[] | null;

export interface FactFormState {
  readonly problems: readonly Problem[];
  readonly reason: string;
  readonly setReason: (text: string) => void;
  readonly submit: (build: Build) => void;
}

/** Sends what a form builds; keeps what was wrong with it, here or there. */
export const useFactForm = (correcting: Fact | null, onDone: () => void): FactFormState => {
  const recording = useRecording();
  const { signer } = useSigner();
  const [reason, setReason] = useState('');
  const [own, setOwn] = useState<readonly Problem[]>([]);
  const submit = (build: Build): void => {
    // A button that goes dead under the hand loses the keyboard: a second press is passed over instead.
    if (recording.isSending) return;
    const problems: Problem[] = [];
    const bodies = build(problems);
    if (correcting !== null && reason.trim() === '') problems.push(NO_REASON);
    setOwn(problems);
    recording.forget();
    if (bodies === null || problems.length > 0) return;
    const entry = (body: FactBody, place: number) =>
      // A correction is one fact for one: what comes beside it is new.
      correcting !== null && place === 0 ? { body, supersedes: correcting.id, reason } : { body };
    recording.record(bodies.map(entry), onDone);
  };
  return {
    // Who signs is asked beside the button.
    problems: [...own, ...(signer === null ? [] : recording.problems.map(atField))],
    reason,
    setReason,
    submit,
  };
};

const NO_REASON: Problem = {
  field: 'reason',
  what: 'The correction has no reason.',
  why: 'The old entry stays visible, with why it was corrected.',
  whatToDo: 'Type the reason.',
};

/** "entries.0.body.load.text" is the field "load.text" of the only form on the screen. */
export const atField = (problem: Problem): Problem => ({
  ...problem,
  field: problem.field?.replace(/^(entries\.)?\d+\./, '').replace(/^body\./, '') ?? null,
});

interface FactFormProps {
  readonly form: FactFormState;
  readonly build: Build;
  /** Names of the fields that show their own problems. */
  readonly fields: readonly string[];
  readonly correcting: Fact | null;
  readonly onCancel: () => void;
  readonly children: ReactNode;
}

/** Fields, the reason of a correction, every problem, and the signature. */
export function FactForm({ form, build, fields, correcting, onCancel, children }: FactFormProps) {
  const { signer } = useSigner();
  return (
    <form
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        form.submit(build);
      }}
    >
      {children}
      {correcting !== null && (
        <Field
          label="Why is it corrected"
          name="reason"
          value={form.reason}
          onChange={form.setReason}
          problems={form.problems}
          hint="The old entry stays visible, struck through, with this reason."
          isRequired
        />
      )}
      <Problems problems={form.problems} shownElsewhere={[...fields, 'reason']} />
      <Actions>
        <Button kind="main" type="submit" isDisabled={signer === null}>
          {correcting === null ? 'Record' : 'Correct'}
        </Button>
        <SignAs />
        <Button onPress={onCancel}>Leave it</Button>
      </Actions>
    </form>
  );
}

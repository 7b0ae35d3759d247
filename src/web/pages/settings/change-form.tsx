import { useState, type ReactNode } from 'react';
import type { Problem } from '#contract/problem.ts';
import { ROUTES } from '#contract/routes.ts';
import type { FactBody } from '#domain/fact.ts';
import type { FactId } from '#domain/identity.ts';
import { Actions, Button, Field, Problems, SignAs, useSigner } from '../../parts/parts.ts';
import { useWrite } from '../../windows.ts';
import { atItsField, type Labels } from './at-its-field.ts';

/** The fact that a form comes to, or null where its problems stand against it. */
export type BuildChange = (problems: Problem[]) => FactBody | null;

export interface Change {
  readonly problems: readonly Problem[];
  readonly reason: string;
  readonly setReason: (text: string) => void;
  readonly submit: (build: BuildChange, reason?: string) => void;
}

interface ChangeOf {
  /** The entry whose place the new one takes; null for a new thing. */
  readonly supersedes: FactId | null;
  readonly labels: Labels;
  readonly asksWhy: boolean;
  /** What the program warns of has been seen, and is meant. */
  readonly isSure?: boolean;
  /** `said`: what the change entailed, where it entailed something. */
  readonly onDone: (said: string | null) => void;
}

interface Recorded {
  readonly recalled: number;
}

/** Sends what a form of this page comes to; keeps every problem at the field in which it was typed. */
export const useChange = ({ supersedes, labels, asksWhy, isSure = false, onDone }: ChangeOf): Change => {
  const write = useWrite<Recorded>();
  const { signer } = useSigner();
  const [reason, setReason] = useState('');
  const [own, setOwn] = useState<readonly Problem[]>([]);
  const submit = (build: BuildChange, given: string = reason): void => {
    // A button that goes dead under the hand loses the keyboard: a second press is passed over instead.
    if (write.isSending) return;
    const problems: Problem[] = [];
    const body = build(problems);
    if (asksWhy && given.trim() === '') problems.push(NO_REASON);
    setOwn(problems);
    write.forget();
    if (body === null || problems.length > 0 || signer === null) return;
    const entry = { body, supersedes, reason: given.trim() === '' ? null : given.trim(), sure: isSure };
    write.send(ROUTES.facts, { signer: signer.id, entries: [entry] }, ({ recalled }) => onDone(saysRecalled(recalled)));
  };
  return { problems: [...own, ...write.problems.map((each) => atItsField(each, labels))], reason, setReason, submit };
};

export const NO_REASON: Problem = {
  field: 'reason',
  what: 'No reason is typed.',
  why: 'What stood before stays in the log, with why it was changed.',
  whatToDo: 'Type the reason.',
};

const saysRecalled = (recalled: number): string | null =>
  recalled === 0
    ? null
    : `${recalled === 1 ? 'One issued card was' : `${recalled} issued cards were`} recalled: a physician’s limit reaches them now. Tell the people concerned.`;

interface ChangeFormProps {
  readonly change: Change;
  readonly build: BuildChange;
  readonly labels: Labels;
  readonly asksWhy: boolean;
  readonly action: string;
  readonly onCancel: () => void;
  readonly children: ReactNode;
}

/** Fields, why it changes, every problem that has no field, and the signature. */
export function ChangeForm({ change, build, labels, asksWhy, action, onCancel, children }: ChangeFormProps) {
  const { signer } = useSigner();
  const { problems } = change;
  return (
    <form
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        change.submit(build);
      }}
    >
      {children}
      {asksWhy && (
        <Field
          label="Why it changes"
          name="reason"
          value={change.reason}
          onChange={change.setReason}
          problems={problems}
          hint="What stood before stays in the log, with this reason."
          isRequired
        />
      )}
      <Problems problems={problems} shownElsewhere={[...Object.keys(labels), 'reason']} />
      {problems.length > 1 && (
        <p className="small" aria-live="polite">
          {problems.length} things are to be put right; nothing was written.
        </p>
      )}
      <Actions>
        <Button kind="main" type="submit" isDisabled={signer === null}>
          {action}
        </Button>
        <SignAs />
        <Button onPress={onCancel}>Leave it</Button>
      </Actions>
    </form>
  );
}

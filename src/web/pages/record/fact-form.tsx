import { useState, type ReactNode } from 'react';
import type { Problem } from '#contract/problem.ts';
import type { HouseWindow } from '#contract/windows/house-window.ts';
import type { Fact, FactBody, FactKind } from '#domain/fact.ts';
import type { PersonId } from '#domain/identity.ts';
import { AsTyped } from '../../parts/as-typed.tsx';
import { Actions, Button, Field, Problems, SignAs, useSigner } from '../../parts/parts.ts';
import { useRecording } from '../../windows.ts';

/** What every form of this page is given. `correcting`: the fact whose place the new one takes. */
export interface FormProps<Kind extends FactKind = FactKind> {
  readonly person: PersonId;
  readonly house: HouseWindow;
  readonly correcting: Fact<Kind> | null;
  readonly onDone: () => void;
}

/** A fact of a form that makes several, with the name of the place where it was typed: its problems are shown there. */
export interface Placed {
  readonly at: string;
  readonly body: FactBody;
}

/** The facts that a form comes to, or null where its problems stand against them. */
export type Build = (problems: Problem[]) => readonly (FactBody | Placed)[] | null;

const bodyOf = (built: FactBody | Placed): FactBody => ('body' in built ? built.body : built);
const placeOf = (built: FactBody | Placed): string => ('body' in built ? built.at : '');

export interface FactFormState {
  readonly problems: readonly Problem[];
  readonly reason: string;
  readonly setReason: (text: string) => void;
  readonly sure: boolean;
  readonly setSure: (sure: boolean) => void;
  readonly submit: (build: Build) => void;
}

/** Sends what a form builds; keeps what was wrong with it, here or there. */
export const useFactForm = (correcting: Fact | null, onDone: () => void): FactFormState => {
  const recording = useRecording();
  const { signer } = useSigner();
  const [reason, setReason] = useState('');
  const [sure, setSure] = useState(false);
  const [places, setPlaces] = useState<readonly string[]>([]);
  const [own, setOwn] = useState<readonly Problem[]>([]);
  const submit = (build: Build): void => {
    // A button that goes dead under the hand loses the keyboard: a second press is passed over instead.
    if (recording.isSending) return;
    const problems: Problem[] = [];
    const built = build(problems);
    if (correcting !== null && reason.trim() === '') problems.push(NO_REASON);
    setOwn(problems);
    recording.forget();
    if (built === null || problems.length > 0) return;
    setPlaces(built.map(placeOf));
    const entry = (body: FactBody, place: number) =>
      // A correction is one fact for one: what comes beside it is new.
      correcting !== null && place === 0 ? { body, sure, supersedes: correcting.id, reason } : { body, sure };
    recording.record(built.map(bodyOf).map(entry), onDone);
  };
  return {
    // Who signs is asked beside the button.
    problems: [...own, ...(signer === null ? [] : once(recording.problems.map((problem) => atField(problem, places))))],
    reason,
    setReason,
    sure,
    setSure,
    submit,
  };
};

const NO_REASON: Problem = {
  field: 'reason',
  what: 'The correction has no reason.',
  why: 'The old entry stays visible, with why it was corrected.',
  whatToDo: 'Type the reason.',
};

/** "entries.0.body.load.text" is the field "load.text" of the only form on the screen, or of the place that made the entry. */
export const atField = (problem: Problem, places: readonly string[] = []): Problem => {
  const [, place, field] = /^(?:entries\.)?(\d+)\.(?:body\.)?(.*)$/.exec(problem.field ?? '') ?? [];
  if (place === undefined || field === undefined)
    return { ...problem, field: problem.field?.replace(/^body\./, '') ?? null };
  const at = places[Number(place)] ?? '';
  // The day of all is typed once.
  return { ...problem, field: at === '' || field === 'day' ? field : `${at}.${field}` };
};

const once = (problems: readonly Problem[]): readonly Problem[] =>
  problems.filter(
    ({ field, what }, at) => problems.findIndex((other) => other.field === field && other.what === what) === at,
  );

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
      <AsTyped problems={form.problems} sure={form.sure} onSure={form.setSure} />
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

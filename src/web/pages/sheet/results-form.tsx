import type { Problem } from '#contract/problem.ts';
import type { RecordWindow } from '#contract/windows/record-window.ts';
import type { SheetColumn, SheetWindow } from '#contract/windows/sheet-window.ts';
import type { Fact } from '#domain/fact.ts';
import { AsTyped } from '../../parts/as-typed.tsx';
import { Await } from '../../parts/await.tsx';
import { Button } from '../../parts/button.tsx';
import { Actions } from '../../parts/dialog.tsx';
import { Choice, Field, Fields } from '../../parts/field.tsx';
import { Problems } from '../../parts/problems.tsx';
import { useRecordOf } from '../../windows.ts';
import { HurtFields } from './hurt-fields.tsx';
import { PieceFields } from './piece-fields.tsx';
import { doneAsPlanned } from './planned-sets.ts';
import type { ResultsDraft } from './results-draft.ts';
import { SetFields } from './set-fields.tsx';
import { itemsOf } from './grid-places.ts';
import { useResults } from './use-results.ts';

export interface ResultsFormProps {
  readonly sheet: SheetWindow;
  readonly column: SheetColumn;
  readonly item: string | null;
  readonly onDone: () => void;
  readonly onLeave: () => void;
}

/** The result that stands for a card, if there is one: it is corrected, not doubled. */
const standingIn = ({ lines }: RecordWindow, card: string): Fact<'trained'> | null => {
  for (const { fact, standing } of lines)
    if (fact.kind === 'trained' && fact.card === card && standing === 'stands') return fact;
  return null;
};

/** Results of one card: new ones, or those that stand, to be corrected. */
export const ResultsForm = (props: ResultsFormProps) => {
  const { sheet, column } = props;
  const hasResult = column.outcome === 'done' || column.outcome === 'part done';
  const query = useRecordOf(sheet.person.id, hasResult);
  if (!hasResult) return <Form {...props} standing={null} />;
  return (
    <Await query={query}>{(record) => <Form {...props} standing={standingIn(record, column.card ?? '')} />}</Await>
  );
};

interface Typing {
  readonly draft: ResultsDraft;
  readonly change: (change: Partial<ResultsDraft>) => void;
  readonly items: readonly { readonly value: string; readonly label: string }[];
  readonly problems: readonly Problem[];
}

const Session = ({ draft, change, items, problems }: Typing) => (
  <>
    <HurtFields hurts={draft.hurts} items={items} problems={problems} onChange={(hurts) => change({ hurts })} />
    <Field label="Note, verbatim" value={draft.note} onChange={(note) => change({ note })} isLong />
    {draft.note === '' ? null : (
      <Choice
        label="The note is about"
        value={draft.noteOn}
        onChange={(noteOn) => change({ noteOn })}
        options={items}
        nothing="the whole session"
      />
    )}
    <Fields>
      <Field
        label="Whole-session RPE"
        name="sessionRpe"
        value={draft.sessionRpe}
        onChange={(sessionRpe) => change({ sessionRpe })}
        problems={problems}
        inputMode="decimal"
        isNarrow
      />
      <Field
        label="Minutes in all"
        name="minutes"
        value={draft.minutes}
        onChange={(minutes) => change({ minutes })}
        problems={problems}
        inputMode="numeric"
        isNarrow
      />
    </Fields>
  </>
);

/** Set by set and piece by piece, where it hurt, what was written beside it. */
const Form = (props: ResultsFormProps & { readonly standing: Fact<'trained'> | null }) => {
  const { sheet, column, item, standing, onLeave } = props;
  const { draft, setDraft, sets, pieces, problems, reason, setReason, ...sending } = useResults(props);
  const items = itemsOf(sheet, column).map(({ name, cell }) => ({ value: cell.item as string, label: name }));
  const change = (changed: Partial<ResultsDraft>): void => setDraft({ ...draft, ...changed });
  const atFields = pieces.flatMap((piece) => piece.asks.map((field) => `piece ${piece.item} ${field}`));
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        sending.confirm();
      }}
    >
      <Actions>
        <Button onPress={() => setDraft(doneAsPlanned(draft, sets, pieces))}>All as planned</Button>
      </Actions>
      {sets.length === 0 ? null : (
        <SetFields sets={sets} draft={draft} onChange={setDraft} problems={problems} item={item} />
      )}
      <PieceFields pieces={pieces} draft={draft} onChange={setDraft} problems={problems} item={item} />
      <Session draft={draft} change={change} items={items} problems={problems} />
      {standing ? (
        <Field label="Why the earlier result is corrected" value={reason} onChange={setReason} isRequired />
      ) : null}
      <Problems problems={problems} shownElsewhere={['sessionRpe', 'minutes', ...atFields]} />
      <AsTyped problems={problems} sure={sending.sure} onSure={sending.setSure} />
      <Actions>
        <Button kind="main" type="submit" isDisabled={sending.isSending || (standing !== null && reason.trim() === '')}>
          Record results
        </Button>
        <Button onPress={onLeave}>Leave it</Button>
      </Actions>
    </form>
  );
};

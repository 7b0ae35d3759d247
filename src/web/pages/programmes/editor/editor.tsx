import { useMemo, useState } from 'react';
import { Link } from 'wouter';
import type { ProgrammesWindow } from '#contract/windows/programmes-window.ts';
import type { ItemId } from '#domain/identity.ts';
import type { ProgrammeItem, ProgrammeVersion } from '#domain/programme.ts';
import { programmeDifference } from '#domain/programme-difference.ts';
import type { Day } from '#units/day.ts';
import { Button, Field, Fields, Page, Problems } from '#web/parts/parts.ts';
import { DifferenceList } from '../difference-list.tsx';
import { phasesOf, withPhase, type Draft } from './draft.ts';
import { withNewPhase, withoutPhase } from './draft-phases.ts';
import { problemsOfDraft } from './draft-problems.ts';
import { draftRequest } from './draft-request.ts';
import { LookingAhead } from './looking-ahead.tsx';
import { PhaseFields, PhaseTabs } from './phase-bar.tsx';
import { PhaseWeek, type PhaseWeekProps } from './phase-week.tsx';
import type { TakeUpProps } from './take-up.tsx';
import { useDraft, type Editing } from './use-draft.ts';
import styles from './editor.module.css';

export interface EditorProps {
  /** What the draft is kept under: the version it is made from, or "new". */
  readonly from: string;
  readonly base: ProgrammeVersion | null;
  readonly start: Draft;
  readonly window: ProgrammesWindow;
  readonly today: Day;
  readonly onTaken: TakeUpProps['onTaken'];
}

/** A programme being written: its phases, the week of one of them, what is otherwise by now, and what that changes. */
export const Editor = ({ from, base, start, window, today, onTaken }: EditorProps) => {
  const editing = useDraft(from, start);
  const { draft } = editing;
  const [chosen, setChosen] = useState(0);
  const at = Math.min(chosen, draft.phases.length - 1);
  const { exercises } = window;
  const problems = useMemo(() => problemsOfDraft(draft, exercises), [draft, exercises]);
  const wrong = new Set(problems.flatMap(({ phase }) => phase ?? []));
  const phase = draft.phases[at];
  const isOwn = draft.follows === null;
  return (
    <Page title={draft.name.trim() || 'A new programme'} lead={leadOf(base, draft)} aside={<Kept editing={editing} />}>
      <NameFields editing={editing} base={base} />
      <PhaseTabs
        draft={draft}
        at={at}
        wrong={wrong}
        onGo={setChosen}
        onAdd={(name) => {
          const next = withNewPhase(draft, name);
          editing.change(next);
          setChosen(next.phases.findIndex((each) => each.name === name));
        }}
      />
      {phase ? (
        <OnePhase
          key={phase.name}
          editing={editing}
          at={at}
          phase={phase}
          exercises={exercises}
          problems={problems.filter((each) => each.phase === at)}
          isChanged={changedSince(base)}
        />
      ) : null}
      <Problems
        problems={problems
          .filter((each) => each.place === null || each.phase !== at)
          .map((each) => withPhaseName(each, draft))}
      />
      <Otherwise base={base} draft={draft} window={window} />
      <LookingAhead
        draft={draftRequest(draft)}
        isInOrder={problems.length === 0}
        today={today}
        others={isOwn ? everybody(window) : []}
        onTaken={(taken) => {
          editing.forget();
          onTaken(taken);
        }}
      />
    </Page>
  );
};

const OnePhase = (props: PhaseWeekProps) => {
  const { editing, at, phase } = props;
  const { draft, change } = editing;
  return (
    <>
      <PhaseFields
        phase={phase}
        onChange={(next, stroke) =>
          change(
            withPhase(draft, at, () => next),
            stroke,
          )
        }
        onTakeOut={draft.phases.length > 1 ? () => change(withoutPhase(draft, at)) : null}
      />
      <PhaseWeek {...props} />
    </>
  );
};

const leadOf = (base: ProgrammeVersion | null, { follows }: Draft): string => {
  if (!base) return 'a draft of a programme of its own';
  return follows === null
    ? `a draft of a programme of its own, copied from ${base.name}, version ${base.number}`
    : `a draft of the version that follows version ${base.number}`;
};

const Kept = ({ editing }: { readonly editing: Editing }) => (
  <span className="on-screen">
    {editing.isTouched ? (
      <>
        {editing.isKept ? 'kept in this browser until it is taken up' : 'not kept: this browser keeps nothing'}{' '}
        <Button kind="link" onPress={editing.startAnew}>
          Start anew
        </Button>{' '}
      </>
    ) : null}
    <Link href="/programmes">All programmes</Link>
  </span>
);

const NameFields = ({ editing, base }: { readonly editing: Editing; readonly base: ProgrammeVersion | null }) => {
  const { draft, change } = editing;
  return (
    <div className="on-screen">
      <Fields>
        <Field label="Name" value={draft.name} onChange={(name) => change({ ...draft, name }, 'name')} />
        {base ? (
          <label className={styles['own']}>
            <input
              type="checkbox"
              checked={draft.follows === null}
              onChange={(event) => change({ ...draft, follows: event.target.checked ? null : base.id })}
            />{' '}
            as a programme of its own, under another name
          </label>
        ) : null}
      </Fields>
    </div>
  );
};

const withPhaseName = ({ phase, problem }: ReturnType<typeof problemsOfDraft>[number], draft: Draft) => {
  const name = phase === null ? undefined : draft.phases[phase]?.name;
  return name === undefined || problem.what.includes(name) ? problem : { ...problem, what: `${name}: ${problem.what}` };
};

/** Tells whether an item says the same as in the version that the draft was made from. */
const changedSince = (base: ProgrammeVersion | null): ((item: ProgrammeItem) => boolean) => {
  const items = new Map<ItemId, string>(
    (base?.phases ?? []).flatMap(({ sessions }) =>
      sessions.flatMap((session) => session.items.map((item) => [item.id, sayingOf(item)] as const)),
    ),
  );
  return (item) => base !== null && items.get(item.id) !== sayingOf(item);
};

const sayingOf = (item: ProgrammeItem): string =>
  JSON.stringify(Object.entries(item).toSorted(([a], [b]) => a.localeCompare(b)));

const everybody = ({ versions }: ProgrammesWindow) => {
  const all = versions.flatMap(({ followers, canFollow }) => [...followers, ...canFollow]);
  return all.filter(({ id }, place) => all.findIndex((each) => each.id === id) === place);
};

const Otherwise = ({ base, draft, window }: Pick<EditorProps, 'base' | 'window'> & { readonly draft: Draft }) => {
  const differences = useMemo(
    () =>
      base
        ? programmeDifference(
            base,
            { name: draft.name.trim(), phases: phasesOf(draft) },
            new Map(window.exercises.map((exercise) => [exercise.id, exercise])),
          )
        : [],
    [base, draft, window.exercises],
  );
  if (!base) return null;
  return (
    <section aria-label="What is otherwise" className={styles['otherwise']}>
      <h2>
        What is otherwise <span className="soft">than in version {base.number}</span>
      </h2>
      {differences.length === 0 ? <p className="soft">Nothing yet.</p> : <DifferenceList differences={differences} />}
    </section>
  );
};

import { useState } from 'react';
import type { Deload, PhaseName, RoadEdge } from '#domain/programme.ts';
import { showDeload, showSpan } from '#domain/programme-words.ts';
import { Button, Choice, Field, Fields } from '#web/parts/parts.ts';
import type { Draft, DraftPhase } from './draft.ts';
import { freePhaseNames } from './draft-phases.ts';
import { TypedField } from './typed-field.tsx';
import { EDGE_KINDS, edgeFrom, edgeInWords, leastCount, wholeFrom, type EdgeKind } from './typed-parts.ts';
import styles from './editor.module.css';

export interface PhaseTabsProps {
  readonly draft: Draft;
  readonly at: number;
  readonly wrong: ReadonlySet<number>;
  readonly onGo: (at: number) => void;
  readonly onAdd: (name: PhaseName) => void;
}

/** The phases along the road, one of them open. */
export const PhaseTabs = ({ draft, at, wrong, onGo, onAdd }: PhaseTabsProps) => {
  const free = freePhaseNames(draft);
  return (
    <div className={styles['phases']}>
      <nav aria-label="Phases">
        {draft.phases.map(({ name }, place) => (
          <button key={name} type="button" aria-current={place === at ? 'true' : undefined} onClick={() => onGo(place)}>
            {name}
            {wrong.has(place) ? <span className={styles['flag']}> – not in order</span> : null}
          </button>
        ))}
      </nav>
      {free.length > 0 ? (
        <select
          aria-label="Add a phase"
          className="on-screen"
          value=""
          onChange={(event) => onAdd(event.target.value as PhaseName)}
        >
          <option value="">add a phase …</option>
          {free.map((name) => (
            <option key={name} value={name}>
              {name}
            </option>
          ))}
        </select>
      ) : null}
    </div>
  );
};

export interface PhaseFieldsProps {
  readonly phase: DraftPhase;
  readonly onChange: (phase: DraftPhase, stroke?: string) => void;
  readonly onTakeOut: (() => void) | null;
}

/** From when to when a phase lasts, and its lighter weeks. */
export const PhaseFields = ({ phase, onChange, onTakeOut }: PhaseFieldsProps) => {
  const { span, deload } = phase;
  const [isSourceOpen, setSourceOpen] = useState(false);
  return (
    <>
      <p className={styles['onpaper']}>
        {showSpan(span)}; {showDeload(deload)}
      </p>
      <div className="on-screen">
        <Fields>
          <EdgeFields
            label="First day"
            edge={span.first}
            onChange={(first) => onChange({ ...phase, span: { ...span, first: first ?? span.first } }, 'first day')}
          />
          <EdgeFields
            label="Last day"
            edge={span.last}
            open={openWords(span.first)}
            onChange={(last) => onChange({ ...phase, span: { ...span, last } }, 'last day')}
          />
          <DeloadFields deload={deload} onChange={(next) => onChange({ ...phase, deload: next }, 'deload')} />
        </Fields>
      </div>
      <div className={styles['source']}>
        {isSourceOpen ? (
          <Field
            label="What the phase rests on"
            isLong
            value={phase.source}
            onChange={(source) => onChange({ ...phase, source }, 'phase source')}
          />
        ) : (
          <p className="soft small">{phase.source || 'No source is named.'}</p>
        )}
        <Button kind="link" onPress={() => setSourceOpen(!isSourceOpen)}>
          {isSourceOpen ? 'Close the source' : 'Write the source'}
        </Button>
        {onTakeOut ? (
          <Button kind="link" onPress={onTakeOut}>
            Take this phase out
          </Button>
        ) : null}
      </div>
    </>
  );
};

const openWords = ({ from, days }: RoadEdge): string =>
  from === 'landing' && days >= 0 ? 'none: for good' : 'the day before landing';

interface EdgeFieldsProps {
  readonly label: string;
  readonly edge: RoadEdge | null;
  /** What it is called to name no day. */
  readonly open?: string;
  readonly onChange: (edge: RoadEdge | null) => void;
}

const MOST_DAYS = 2000;

const EdgeFields = ({ label, edge, open, onChange }: EdgeFieldsProps) => {
  const { kind, count } = edge ? edgeInWords(edge) : { kind: null, count: 1 };
  const options = EDGE_KINDS.map((value) => ({ value: value as string, label: kindWords(value) }));
  return (
    <div className={styles['edge']}>
      <Choice
        label={label}
        value={kind ?? 'open'}
        onChange={(next) =>
          onChange(next === 'open' ? null : edgeFrom(next as EdgeKind, Math.max(count, leastCount(next as EdgeKind))))
        }
        options={open === undefined ? options : [{ value: 'open', label: open }, ...options]}
      />
      {kind ? (
        <TypedField
          label="number"
          isNarrow
          inputMode="numeric"
          value={String(count)}
          read={(text) => wholeFrom(text, leastCount(kind), MOST_DAYS)}
          onValue={(next) => onChange(edgeFrom(kind, next))}
          must={`a whole number from ${leastCount(kind)} to ${MOST_DAYS}`}
        />
      ) : null}
    </div>
  );
};

const kindWords = (kind: EdgeKind): string => (kind === 'flight day' ? 'flight day' : `days ${kind}`);

const USUAL_DELOAD: Deload = { everyWeeks: 5, fewerSets: 1, loadBy: 0.9 };
const PERCENT = 100;

const DeloadFields = ({
  deload,
  onChange,
}: {
  readonly deload: Deload | null;
  readonly onChange: (deload: Deload | null) => void;
}) => (
  <div className={styles['edge']}>
    <Choice
      label="Lighter weeks"
      value={deload ? 'some' : 'none'}
      onChange={(which) => onChange(which === 'some' ? USUAL_DELOAD : null)}
      options={[
        { value: 'none', label: 'none' },
        { value: 'some', label: 'every so many weeks' },
      ]}
    />
    {deload ? (
      <>
        <TypedField
          label="every, weeks"
          isNarrow
          value={String(deload.everyWeeks)}
          read={(text) => wholeFrom(text, 1, PERCENT)}
          onValue={(everyWeeks) => onChange({ ...deload, everyWeeks })}
          must="weeks from 1 to 100"
        />
        <TypedField
          label="fewer sets"
          isNarrow
          value={String(deload.fewerSets)}
          read={(text) => wholeFrom(text, 0, 20)}
          onValue={(fewerSets) => onChange({ ...deload, fewerSets })}
          must="sets from 0 to 20"
        />
        <TypedField
          label="less load"
          unit="%"
          isNarrow
          value={String(Math.round((1 - deload.loadBy) * PERCENT))}
          read={(text) => wholeFrom(text, 0, 90)}
          onValue={(less) => onChange({ ...deload, loadBy: (PERCENT - less) / PERCENT })}
          must="percent from 0 to 90"
        />
      </>
    ) : null}
  </div>
);

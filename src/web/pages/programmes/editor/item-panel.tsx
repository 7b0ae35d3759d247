import {
  ITEM_CONDITIONS,
  type BoutsItem,
  type DrillItem,
  type ItemCondition,
  type ProgrammeItem,
} from '#domain/programme.ts';
import type { Exercise } from '#domain/catalogue.ts';
import { idOf } from '#domain/identity.ts';
import { onMachineKind } from '#domain/programme-line/on-machine-kind.ts';
import type { Kind } from '#domain/programme-line/new-item.ts';
import { writeItem } from '#domain/programme-line/write-line.ts';
import { Choice, Field, Fields } from '#web/parts/parts.ts';
import { FeelField, LoadFields, ReserveField } from './load-fields.tsx';
import { TypedField } from './typed-field.tsx';
import { numberFrom, wholeFrom } from './typed-parts.ts';
import styles from './editor.module.css';

export interface ItemPanelProps {
  readonly item: ProgrammeItem;
  readonly exercise: Exercise;
  readonly onChange: (item: ProgrammeItem, stroke?: string) => void;
}

/** What a line does not say of an item, beside the grid. */
export const ItemPanel = ({ item, exercise, onChange }: ItemPanelProps) => (
  <section className={styles['panel']} aria-label="What the line does not say">
    <h3>{exercise.name}</h3>
    <p className="soft">{writeItem(item, exercise)}</p>
    {item.kind === 'lift' ? <LoadFields item={item} exercise={exercise} onChange={onChange} /> : null}
    {item.kind === 'bouts' ? <AroundFields item={item} onChange={onChange} /> : null}
    {item.kind === 'drill' ? <TargetField item={item} onChange={onChange} /> : null}
    <Fields>
      <TypedField
        label="Priority"
        isNarrow
        value={String(item.priority)}
        read={(text) => wholeFrom(text, 1, 1000)}
        onValue={(priority) => onChange({ ...item, priority }, 'priority')}
        must="a whole number from 1"
      />
      {item.kind === 'lift' ? <ReserveField item={item} onChange={onChange} /> : null}
      <FeelField value={item.shouldFeel} onValue={(shouldFeel) => onChange({ ...item, shouldFeel }, 'should feel')} />
    </Fields>
    <MachineChoice item={item} exercise={exercise} onChange={onChange} />
    <Choice
      label="For"
      value={item.condition}
      onChange={(condition) => onChange({ ...item, condition: condition as ItemCondition })}
      options={ITEM_CONDITIONS.map((value) => ({ value, label: value }))}
    />
    <TypedField
      label="Track"
      value={item.track}
      read={(text) => (text.trim() === '' || text.length > LONGEST_NAME ? null : text)}
      onValue={(track) => onChange({ ...item, track: idOf<'track'>(track) }, 'track')}
      must="a name, such as squat heavy"
      hint="Its loads run through weeks, phases and versions under this name."
    />
    <Field
      label="Source"
      isLong
      value={item.source}
      onChange={(source) => onChange({ ...item, source }, 'source')}
      placeholder="what it rests on: a paper, common practice, our own design"
    />
  </section>
);

const LONGEST_NAME = 200;

const MachineChoice = ({ item, exercise, onChange }: ItemPanelProps) => {
  const kinds = exercise.machineKinds.includes(item.machineKind)
    ? exercise.machineKinds
    : [item.machineKind, ...exercise.machineKinds];
  const possible = kinds.filter((kind) => onMachineKind(item, kind, exercise) !== null);
  return (
    <Choice
      label="On"
      value={item.machineKind}
      onChange={(kind) => {
        const moved = onMachineKind(item, kind as Kind, exercise);
        if (moved) onChange(moved);
      }}
      options={possible.map((value) => ({ value, label: value }))}
    />
  );
};

const MINUTE = 60;
const LONGEST = 240;

const AroundFields = ({
  item,
  onChange,
}: {
  readonly item: BoutsItem;
  readonly onChange: ItemPanelProps['onChange'];
}) => (
  <Fields>
    {(['warmUpSeconds', 'coolDownSeconds'] as const).map((which) => (
      <TypedField
        key={which}
        label={which === 'warmUpSeconds' ? 'Warm-up' : 'Cool-down'}
        unit="min"
        isNarrow
        inputMode="decimal"
        value={String(item[which] / MINUTE)}
        read={(text) => numberFrom(text, 0, LONGEST)}
        onValue={(minutes) => onChange({ ...item, [which]: Math.round(minutes * MINUTE) }, which)}
        must="minutes from 0 to 240"
      />
    ))}
  </Fields>
);

const TARGETS = [
  { value: 'none', label: 'by feel' },
  { value: 'of critical force', label: 'critical force of the hand' },
  { value: 'of greatest grip', label: 'greatest grip of the hand' },
] as const;

const USUAL_TARGET = 0.4;

/** The fraction itself stands in the line. */
const TargetField = ({
  item,
  onChange,
}: {
  readonly item: DrillItem;
  readonly onChange: ItemPanelProps['onChange'];
}) => (
  <Choice
    label="Measured against"
    value={item.target?.kind ?? 'none'}
    onChange={(kind) =>
      onChange({
        ...item,
        target:
          kind === 'of critical force' || kind === 'of greatest grip'
            ? { kind, of: item.target?.of ?? USUAL_TARGET }
            : null,
      })
    }
    options={TARGETS}
  />
);

import type { Exercise } from '#domain/catalogue.ts';
import type { LiftItem, LoadBasis } from '#domain/programme.ts';
import { USUAL_RULES } from '#domain/programme-line/lift-line.ts';
import { Choice, Fields } from '#web/parts/parts.ts';
import { TypedField } from './typed-field.tsx';
import { bandFrom, decimalFrom, warmUpsFrom, warmUpsText, wholeFrom } from './typed-parts.ts';

export interface LoadFieldsProps {
  readonly item: LiftItem;
  readonly exercise: Exercise;
  readonly onChange: (item: LiftItem, stroke?: string) => void;
}

const LOADS = [
  { value: 'fraction', label: 'a fraction of capacity each time' },
  { value: 'fraction, then last', label: 'a fraction at first, then from last' },
  { value: 'effort, then last', label: 'found by effort, then from last' },
  { value: 'effort', label: 'by effort each time' },
  { value: 'fixed', label: 'the same load each time' },
] as const;
type LoadKind = (typeof LOADS)[number]['value'];

const kindOf = ({ basis }: LiftItem): LoadKind => {
  if (basis.kind !== 'from last') return basis.kind;
  return basis.start === 'effort' ? 'effort, then last' : 'fraction, then last';
};

/** Where nothing says better: a moderate set of eight to ten. */
const USUAL_FRACTION = 0.7;
const USUAL_LOAD = { text: '20', unit: 'kg' } as const;

const fractionOf = ({ basis }: LiftItem): number => {
  if (basis.kind === 'fraction') return basis.of;
  return basis.kind === 'from last' && basis.start !== 'effort' ? basis.start : USUAL_FRACTION;
};

const ruleOf = ({ basis }: LiftItem, { bodyPart }: Exercise) =>
  basis.kind === 'from last' ? basis.rule : USUAL_RULES[bodyPart];

const basisOf = (kind: LoadKind, item: LiftItem, exercise: Exercise): LoadBasis => {
  switch (kind) {
    case 'fraction':
      return { kind: 'fraction', of: fractionOf(item) };
    case 'fraction, then last':
      return { kind: 'from last', start: fractionOf(item), rule: ruleOf(item, exercise) };
    case 'effort, then last':
      return { kind: 'from last', start: 'effort', rule: ruleOf(item, exercise) };
    case 'effort':
      return { kind: 'effort', rpe: item.shouldFeel };
    case 'fixed':
      return { kind: 'fixed', load: item.basis.kind === 'fixed' ? item.basis.load : USUAL_LOAD };
  }
};

/** Where a lift's load comes from, and what goes before and with it. Numbers of the line itself are typed in the line. */
export const LoadFields = ({ item, exercise, onChange }: LoadFieldsProps) => {
  const { basis } = item;
  return (
    <>
      <Choice
        label="Load"
        value={kindOf(item)}
        onChange={(kind) => onChange({ ...item, basis: basisOf(kind as LoadKind, item, exercise) })}
        options={LOADS}
      />
      {basis.kind === 'from last' ? <RuleFields item={item} basis={basis} onChange={onChange} /> : null}
      <TypedField
        label="Warm-ups, of the work load"
        value={warmUpsText(item.warmUps)}
        read={warmUpsFrom}
        onValue={(warmUps) => onChange({ ...item, warmUps }, 'warm-ups')}
        must="such as 60 % × 6, 80 % × 4, or empty"
      />
      <Choice
        label="Of this lift"
        value={item.leading ? 'leads' : 'follows'}
        onChange={(leading) => onChange({ ...item, leading: leading === 'leads' })}
        options={[
          { value: 'leads', label: 'it leads: raises are judged here' },
          { value: 'follows', label: 'it follows the leading track' },
        ]}
      />
    </>
  );
};

const RuleFields = ({
  item,
  basis,
  onChange,
}: Pick<LoadFieldsProps, 'item' | 'onChange'> & { readonly basis: Extract<LoadBasis, { kind: 'from last' }> }) => (
  <Fields>
    {(['lb', 'kg'] as const).map((unit) => (
      <TypedField
        key={unit}
        label={`Step in ${unit}`}
        unit={unit}
        isNarrow
        inputMode="decimal"
        value={basis.rule.add[unit]}
        read={decimalFrom}
        onValue={(text) =>
          onChange({ ...item, basis: { ...basis, rule: { add: { ...basis.rule.add, [unit]: text } } } }, `step ${unit}`)
        }
        must="a load from 0.01 to 500"
      />
    ))}
  </Fields>
);

/** Repetitions that a set is meant to leave. */
export const ReserveField = ({ item, onChange }: Pick<LoadFieldsProps, 'item' | 'onChange'>) => (
  <TypedField
    label="Reserve"
    isNarrow
    value={item.reserve === null ? '' : String(item.reserve)}
    read={(text) => (text.trim() === '' ? 'none' : wholeFrom(text, 0, 20))}
    onValue={(reserve) => onChange({ ...item, reserve: reserve === 'none' ? null : reserve }, 'reserve')}
    must="repetitions from 0 to 20, or empty"
  />
);

/** How a set should feel, for every kind of item. */
export const FeelField = ({
  value,
  onValue,
}: {
  readonly value: readonly [number, number];
  readonly onValue: (band: readonly [number, number]) => void;
}) => (
  <TypedField
    label="Should feel"
    isNarrow
    value={value[0] === value[1] ? String(value[0]) : `${value[0]} to ${value[1]}`}
    read={bandFrom}
    onValue={onValue}
    must="ratings from 1 to 10, such as 7 to 8"
  />
);

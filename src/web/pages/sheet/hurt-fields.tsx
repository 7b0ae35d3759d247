import type { Problem } from '#contract/problem.ts';
import { BODY_SITES } from '#domain/catalogue.ts';
import { Button } from '../../parts/button.tsx';
import { Choice, Field, Fields } from '../../parts/field.tsx';
import type { HurtDraft } from './results-draft.ts';

export interface HurtFieldsProps {
  readonly hurts: readonly HurtDraft[];
  readonly items: readonly { readonly value: string; readonly label: string }[];
  readonly problems: readonly Problem[];
  readonly onChange: (hurts: readonly HurtDraft[]) => void;
}

const NEW: HurtDraft = { site: '', side: '', score: '', when: 'during', item: '' };

const SIDES = [
  { value: 'left', label: 'left' },
  { value: 'right', label: 'right' },
];

const MOMENTS = [
  { value: 'during', label: 'during' },
  { value: 'next morning', label: 'next morning' },
];

interface OneProps extends Omit<HurtFieldsProps, 'hurts' | 'onChange'> {
  readonly hurt: HurtDraft;
  readonly place: number;
  readonly change: (change: Partial<HurtDraft>) => void;
}

const One = ({ hurt, place, items, problems, change }: OneProps) => (
  <Fields>
    <Choice
      label="Discomfort at"
      name={`hurt ${place}`}
      problems={problems}
      value={hurt.site}
      onChange={(site) => change({ site })}
      nothing="choose where"
      options={BODY_SITES.map((site) => ({ value: site, label: site }))}
    />
    <Choice label="Side" isNarrow value={hurt.side} onChange={(side) => change({ side })} nothing="–" options={SIDES} />
    <Field label="0 to 10" isNarrow value={hurt.score} onChange={(score) => change({ score })} inputMode="decimal" />
    <Choice
      label="When"
      isNarrow
      value={hurt.when}
      onChange={(when) => change({ when: when === 'during' ? 'during' : 'next morning' })}
      options={MOMENTS}
    />
    <Choice
      label="On"
      value={hurt.item}
      onChange={(item) => change({ item })}
      nothing="the whole session"
      options={items}
    />
  </Fields>
);

/** Where it hurt, by site and side, during and the morning after. */
export const HurtFields = ({ hurts, onChange, ...rest }: HurtFieldsProps) => (
  <>
    {hurts.map((hurt, place) => (
      <One
        // Lines are only added at the end, so that their place names them.
        key={`line ${place}`}
        hurt={hurt}
        place={place}
        change={(change) => onChange(hurts.map((each, at) => (at === place ? { ...each, ...change } : each)))}
        {...rest}
      />
    ))}
    <Button onPress={() => onChange([...hurts, NEW])}>{hurts.length === 0 ? 'Add discomfort' : 'Add another'}</Button>{' '}
    {hurts.length > 0 ? <Button onPress={() => onChange(hurts.slice(0, -1))}>Take the last one out</Button> : null}
  </>
);

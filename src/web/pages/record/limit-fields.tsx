import { Choice, Field, Fields } from '../../parts/parts.ts';
import { AmountFields } from './amount-fields.tsx';
import type { RestrictionFieldsProps } from './scope-fields.tsx';

/** What a restriction allows. */
export function LimitFields({ typed, type, problems }: RestrictionFieldsProps) {
  return (
    <Fields>
      <Choice
        label="Limit"
        value={typed.limit}
        onChange={type('limit')}
        options={[
          { value: 'forbidden', label: 'forbidden' },
          { value: 'load at most', label: 'load at most' },
          { value: 'fraction at most', label: 'part of the capacity before flight at most' },
          { value: 'RPE at most', label: 'effort (RPE) at most' },
          { value: 'no straining', label: 'no straining, breathe throughout' },
        ]}
      />
      {typed.limit === 'load at most' && (
        <AmountFields
          label="At most"
          name="restriction.limit.load.text"
          value={typed.load}
          onValue={type('load')}
          unit={typed.unit}
          units={['lb', 'kg']}
          onUnit={type('unit')}
          problems={problems}
        />
      )}
      {typed.limit === 'fraction at most' && (
        <Field
          label="At most"
          name="restriction.limit.of"
          value={typed.percent}
          onChange={type('percent')}
          unit="%"
          inputMode="decimal"
          problems={problems}
          isNarrow
        />
      )}
      {typed.limit === 'RPE at most' && (
        <Field
          label="RPE at most"
          name="restriction.limit.rpe"
          value={typed.rpe}
          onChange={type('rpe')}
          inputMode="decimal"
          problems={problems}
          isNarrow
        />
      )}
    </Fields>
  );
}

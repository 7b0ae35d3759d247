import type { Problem } from '#contract/problem.ts';
import { Choice, Field, Fields } from '../../parts/parts.ts';

interface AmountFieldsProps {
  readonly label: string;
  readonly name: string;
  readonly value: string;
  readonly onValue: (text: string) => void;
  readonly unit: string;
  readonly units: readonly string[];
  readonly onUnit: (unit: string) => void;
  readonly problems: readonly Problem[];
  readonly hint?: string;
}

/** A number and the unit that it was read in. */
export function AmountFields({ label, name, value, onValue, unit, units, onUnit, problems, hint }: AmountFieldsProps) {
  return (
    <Fields>
      <Field
        label={label}
        name={name}
        value={value}
        onChange={onValue}
        problems={problems}
        inputMode="decimal"
        {...(hint === undefined ? {} : { hint })}
      />
      <Choice
        label="Unit"
        value={unit}
        onChange={onUnit}
        options={units.map((each) => ({ value: each, label: each }))}
        isNarrow
      />
    </Fields>
  );
}

export const massUnitOf = (text: string): 'kg' | 'lb' => (text === 'lb' ? 'lb' : 'kg');

import { useState } from 'react';
import { Field, Fields } from '../../parts/parts.ts';
import { FactForm, useFactForm, type Build, type FormProps } from './fact-form.tsx';
import { LimitFields } from './limit-fields.tsx';
import { ScopeFields, type RestrictionFieldsProps } from './scope-fields.tsx';
import { restrictionOf, startOfRestriction, type TypedRestriction } from './typed-restriction.ts';
import styles from './record-page.module.css';

const FIELDS = [
  'restriction.scope.exercise',
  'restriction.scope.pattern',
  'restriction.scope.site',
  'restriction.limit.load.text',
  'restriction.limit.of',
  'restriction.limit.rpe',
  'restriction.toldBy',
  'restriction.toldOn',
  'restriction.from',
  'restriction.reviewOn',
  'medicalReason',
];

/** A physician's limit, entered by whoever was told. */
export function RestrictionForm({ person, house, correcting, onDone }: FormProps<'restricted'>) {
  const form = useFactForm(correcting, onDone);
  const [typed, setTyped] = useState<TypedRestriction>(() => startOfRestriction(house.today, correcting));
  const type = (key: keyof TypedRestriction) => (text: string) => setTyped((before) => ({ ...before, [key]: text }));
  const { problems } = form;
  const build: Build = (found) => {
    const restriction = restrictionOf(typed, house, found);
    const medicalReason = typed.medicalReason.trim() === '' ? null : typed.medicalReason.trim();
    return restriction === null ? null : [{ kind: 'restricted', person, restriction, medicalReason }];
  };
  return (
    <FactForm form={form} build={build} fields={FIELDS} correcting={correcting} onCancel={onDone}>
      <p>
        It binds from its day on and recalls every issued card that it forbids. Confirmed or not, it binds; its review
        day lifts nothing.
      </p>
      <ScopeFields typed={typed} type={type} house={house} problems={problems} />
      <LimitFields typed={typed} type={type} problems={problems} />
      <Fields>
        <Field
          label="From"
          name="restriction.from"
          type="date"
          value={typed.from}
          onChange={type('from')}
          problems={problems}
        />
        <Field
          label="Review on"
          name="restriction.reviewOn"
          type="date"
          value={typed.reviewOn}
          onChange={type('reviewOn')}
          problems={problems}
          hint="may be left open"
        />
      </Fields>
      <TellingFields typed={typed} type={type} problems={problems} />
      <Field
        label="Medical reason"
        name="medicalReason"
        value={typed.medicalReason}
        onChange={type('medicalReason')}
        problems={problems}
        isLong
        hint="Kept for the physician only: on no card, in no other export. May be left empty."
      />
    </FactForm>
  );
}

/** Who said it, when, and whether it was confirmed. */
function TellingFields({ typed, type, problems }: RestrictionFieldsProps) {
  return (
    <>
      <Fields>
        <Field
          label="Told by"
          name="restriction.toldBy"
          value={typed.toldBy}
          onChange={type('toldBy')}
          problems={problems}
          hint="the physician’s name"
        />
        <Field
          label="Told on"
          name="restriction.toldOn"
          type="date"
          value={typed.toldOn}
          onChange={type('toldOn')}
          problems={problems}
        />
      </Fields>
      <label className={styles['tick']}>
        <input
          type="checkbox"
          checked={typed.confirmed === 'yes'}
          onChange={(event) => type('confirmed')(event.target.checked ? 'yes' : 'no')}
        />
        Confirmed in writing by the physician
      </label>
    </>
  );
}

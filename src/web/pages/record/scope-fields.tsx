import type { Problem } from '#contract/problem.ts';
import type { HouseWindow } from '#contract/windows/house-window.ts';
import { BODY_SITES, PATTERNS } from '#domain/catalogue.ts';
import { Choice, Fields } from '../../parts/parts.ts';
import { SideChoice } from './test-form.tsx';
import type { TypedRestriction } from './typed-restriction.ts';

export interface RestrictionFieldsProps {
  readonly typed: TypedRestriction;
  readonly type: (key: keyof TypedRestriction) => (text: string) => void;
  readonly problems: readonly Problem[];
}

/** What a restriction reaches. */
export function ScopeFields({
  typed,
  type,
  house,
  problems,
}: RestrictionFieldsProps & { readonly house: HouseWindow }) {
  return (
    <Fields>
      <Choice
        label="Reaches"
        value={typed.scope}
        onChange={type('scope')}
        options={[
          { value: 'site', label: 'everything that loads a site' },
          { value: 'exercise', label: 'one exercise' },
          { value: 'pattern', label: 'a movement pattern' },
          { value: 'all', label: 'every exercise' },
        ]}
      />
      {typed.scope === 'exercise' && (
        <Choice
          label="Exercise"
          name="restriction.scope.exercise"
          value={typed.exercise}
          onChange={type('exercise')}
          options={house.exercises.map(({ id, name }) => ({ value: id, label: name }))}
          nothing="choose …"
          problems={problems}
        />
      )}
      {typed.scope === 'pattern' && (
        <Choice
          label="Pattern"
          name="restriction.scope.pattern"
          value={typed.pattern}
          onChange={type('pattern')}
          options={PATTERNS.map((each) => ({ value: each, label: each }))}
          nothing="choose …"
          problems={problems}
        />
      )}
      {typed.scope === 'site' && (
        <>
          <Choice
            label="Site"
            name="restriction.scope.site"
            value={typed.site}
            onChange={type('site')}
            options={BODY_SITES.map((each) => ({ value: each, label: each }))}
            nothing="choose …"
            problems={problems}
          />
          <SideChoice value={typed.side} onChange={type('side')} />
        </>
      )}
    </Fields>
  );
}

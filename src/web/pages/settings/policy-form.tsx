import { useState } from 'react';
import type { SettingsWindow } from '#contract/windows/settings-window.ts';
import { POLICY_TERMS } from '#domain/policy-terms.ts';
import { DEFAULT_POLICIES, type Policies } from '#domain/policies.ts';
import { Actions, Button, Field } from '../../parts/parts.ts';
import { ChangeForm, useChange, type BuildChange } from './change-form.tsx';
import { POLICY_WORDS, shownPolicy } from './policy-words.ts';
import { policyFact, standingFor } from './policy-fact.ts';
import { policyOf, typedPolicyOf } from './typed-policy.ts';

interface PolicyFormProps {
  readonly name: keyof Policies;
  readonly settings: SettingsWindow;
  readonly onDone: (said: string | null) => void;
}

/** One policy: its value in its own unit, what it was shipped as, what that rests on, and how far it may go. */
export function PolicyForm({ name, settings, onDone }: PolicyFormProps) {
  const { policies } = settings;
  const [typed, setTyped] = useState(() => typedPolicyOf(name, policies));
  const field = `policies.${name}`;
  const { title, means, unit } = POLICY_WORDS[name];
  const labels = { [field]: title };
  const standing = standingFor(name, settings);
  const change = useChange({ supersedes: standing?.fact.id ?? null, labels, asksWhy: true, onDone });
  const build: BuildChange = (problems) => {
    const value = policyOf(name, typed, problems);
    return value && policyFact(value, standing, policies);
  };
  const isRamp = POLICY_TERMS[name].unit === 'steps';
  return (
    <ChangeForm change={change} build={build} labels={labels} asksWhy action="Set" onCancel={() => onDone(null)}>
      <p>{means}</p>
      <Field
        label={title}
        name={field}
        value={typed}
        onChange={setTyped}
        problems={change.problems}
        inputMode={isRamp ? 'text' : 'decimal'}
        {...(unit === '' ? {} : { unit })}
        hint={boundsOf(name)}
        isFirst
      />
      <p className="soft small">
        {POLICY_TERMS[name].bounded} As shipped: {shownPolicy(name, DEFAULT_POLICIES)}. {POLICY_TERMS[name].restsOn}
      </p>
      {isRamp && (
        <p className="soft small">
          Whoever is on this ramp keeps the number of their step: look through the next cards before you issue them.
        </p>
      )}
      <Actions>
        <Button kind="link" onPress={() => setTyped(typedPolicyOf(name, DEFAULT_POLICIES))}>
          as shipped
        </Button>
      </Actions>
    </ChangeForm>
  );
}

const boundsOf = (name: keyof Policies): string => {
  const { least, most, isWhole, unit } = POLICY_TERMS[name];
  if (unit === 'steps')
    return `Steps from ${least} to ${most}, with blanks between them, none lower than the one before.`;
  const by = unit === '%' ? 100 : 1;
  return `From ${Number((least * by).toFixed(4))} to ${Number((most * by).toFixed(4))}${isWhole ? ', whole' : ''}.`;
};

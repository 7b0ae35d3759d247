import type { SettingsWindow } from '#contract/windows/settings-window.ts';
import type { FactBody } from '#domain/fact.ts';
import type { Policies } from '#domain/policies.ts';

type Standing = SettingsWindow['policiesSet'][number];

/** The standing entry that sets a policy: the newest, for a later one counts. */
export const standingFor = (name: keyof Policies, { policiesSet }: SettingsWindow): Standing | null =>
  policiesSet.find(({ fact }) => Object.hasOwn(fact.policies, name)) ?? null;

/** The entry that takes its place: whatever else the standing one set goes on as it counts now. */
export const policyFact = (
  changed: Partial<Policies>,
  standing: Standing | null,
  policies: Policies,
): Extract<FactBody, { readonly kind: 'policies set' }> => {
  const kept = Object.keys(standing?.fact.policies ?? {}) as (keyof Policies)[];
  return {
    kind: 'policies set',
    policies: { ...Object.fromEntries(kept.map((name) => [name, policies[name]])), ...changed },
  };
};

import { PHASE_NAMES, type PhaseName } from '#domain/programme.ts';
import type { Draft, DraftPhase } from './draft.ts';

/** Names of phases that a draft has not got yet. */
export const freePhaseNames = ({ phases }: Draft): readonly PhaseName[] =>
  PHASE_NAMES.filter((name) => !phases.some((phase) => phase.name === name));

/** What a phase usually spans: common practice, to be changed. */
const USUAL_SPANS: Readonly<Record<PhaseName, DraftPhase['span']>> = {
  'general preparation': { first: { from: 'launch', days: -730 }, last: { from: 'launch', days: -181 } },
  'flight-specific preparation': { first: { from: 'launch', days: -180 }, last: { from: 'launch', days: -15 } },
  taper: { first: { from: 'launch', days: -14 }, last: { from: 'launch', days: -8 } },
  quarantine: { first: { from: 'launch', days: -7 }, last: { from: 'launch', days: -1 } },
  'first flight weeks': { first: { from: 'launch', days: 0 }, last: { from: 'launch', days: 13 } },
  'main flight': { first: { from: 'launch', days: 14 }, last: { from: 'landing', days: -15 } },
  'last flight weeks': { first: { from: 'landing', days: -14 }, last: null },
  'first return stage': { first: { from: 'landing', days: 0 }, last: { from: 'landing', days: 13 } },
  'second return stage': { first: { from: 'landing', days: 14 }, last: { from: 'landing', days: 27 } },
  'third return stage': { first: { from: 'landing', days: 28 }, last: { from: 'landing', days: 44 } },
};

/** A new phase stands where its name stands in the order of a mission. */
export const withNewPhase = (draft: Draft, name: PhaseName): Draft => {
  const rank = (each: PhaseName): number => PHASE_NAMES.indexOf(each);
  const at = draft.phases.filter((phase) => rank(phase.name) < rank(name)).length;
  const phase: DraftPhase = { name, span: USUAL_SPANS[name], deload: null, sessions: [], source: '' };
  return { ...draft, phases: [...draft.phases.slice(0, at), phase, ...draft.phases.slice(at)] };
};

export const withoutPhase = (draft: Draft, at: number): Draft => ({
  ...draft,
  phases: draft.phases.filter((_, place) => place !== at),
});

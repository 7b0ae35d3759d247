import type { Exercise } from './catalogue.ts';
import { canonicalJson } from './digest.ts';
import type { ExerciseId } from './identity.ts';
import type { PhaseName, ProgrammeContent, ProgrammePhase } from './programme.ts';
import { showDeload, showSpan } from './programme-words.ts';
import { placesOf, sessionDifferences, type PlacesOf } from './session-difference.ts';

/** One thing that is otherwise in another version, as a sentence. */
export interface Difference {
  /** Null where it is about the programme as a whole. */
  readonly phase: PhaseName | null;
  readonly says: string;
}

export type Catalogue = ReadonlyMap<ExerciseId, Exercise>;
type Content = Pick<ProgrammeContent, 'name' | 'phases'>;

/** What is otherwise in a programme, phase by phase in its own order; empty exactly where both ask for the same. */
export const programmeDifference = (was: Content, is: Content, exercises: Catalogue): readonly Difference[] => {
  const places = { was: placesOf(was.phases), is: placesOf(is.phases) };
  const gone = was.phases.filter(({ name }) => !is.phases.some((phase) => phase.name === name));
  return [
    ...(was.name === is.name ? [] : [{ phase: null, says: `Called “${is.name}”, was “${was.name}”.` }]),
    ...(phaseOrder(was, is) ? [{ phase: null, says: 'The phases stand in another order.' }] : []),
    ...is.phases.flatMap((phase) => phaseDifferences(was, phase, places, exercises)),
    ...gone.map((phase) => ({ phase: phase.name, says: `Taken out, with its ${sessionCount(phase)}.` })),
  ];
};

const phaseOrder = (was: Content, is: Content): boolean => {
  const [before, after] = [was, is].map(({ phases }) => phases.map(({ name }) => name));
  const inBoth = (names: readonly PhaseName[] = [], others: readonly PhaseName[] = []): string =>
    names.filter((name) => others.includes(name)).join('|');
  return inBoth(before, after) !== inBoth(after, before);
};

const phaseDifferences = (
  { phases }: Content,
  phase: ProgrammePhase,
  places: { readonly was: PlacesOf; readonly is: PlacesOf },
  exercises: Catalogue,
): readonly Difference[] => {
  const before = phases.find(({ name }) => name === phase.name);
  const sentences = [
    ...(before ? frameSentences(before, phase) : [`New: ${showSpan(phase.span)}, ${showDeload(phase.deload)}.`]),
    ...sessionDifferences(before ?? null, phase, places, exercises),
  ];
  return sentences.map((says) => ({ phase: phase.name, says }));
};

const frameSentences = (was: ProgrammePhase, is: ProgrammePhase): readonly string[] => [
  ...(canonicalJson(was.span) === canonicalJson(is.span)
    ? []
    : [`Span: ${showSpan(was.span)} → ${showSpan(is.span)}.`]),
  ...(canonicalJson(was.deload) === canonicalJson(is.deload)
    ? []
    : [`Lighter weeks: ${showDeload(was.deload)} → ${showDeload(is.deload)}.`]),
  ...(was.source === is.source ? [] : ['Its source is written anew.']),
];

const sessionCount = ({ sessions }: ProgrammePhase): string =>
  sessions.length === 1 ? 'session' : `${sessions.length} sessions`;

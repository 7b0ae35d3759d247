import type { Fact } from '#domain/fact.ts';
import type { ExerciseId, PersonId, TrackId } from '#domain/identity.ts';
import { liftsOf } from '#domain/card.ts';
import type { IssuedCard } from '#domain/issued-card.ts';
import { currentFacts, endOfLog, factsOfKind } from '#domain/log.ts';
import { type Day, daysBetween } from '#units/day.ts';

/** Done of what was planned on one track in one session. */
interface TrackResult {
  readonly track: TrackId;
  readonly exercise: ExerciseId;
  readonly done: number;
}

/** Under this a session counts as missed repetitions that a specialist acts on. */
const MISSED = 0.9;
/** A track that was backed off is given time before it is judged again. */
const DAYS_OF_PATIENCE = 14;

/** Every track of a lift whose last two sessions both fell short of the planned repetitions. */
export const failingTracks = (log: readonly Fact[], person: PersonId, today: Day): readonly TrackId[] => {
  const facts = currentFacts(log, endOfLog(log));
  const results = trackResults(facts, person);
  const spared = new Set(backedOffLately(facts, person, today));
  const failing = [...new Set(results.map(({ exercise }) => exercise))].filter((exercise) => {
    const [last, before] = results.filter((result) => result.exercise === exercise);
    return last && before && last.done < MISSED && before.done < MISSED;
  });
  const tracks = results.filter(({ exercise }) => failing.includes(exercise)).map(({ track }) => track);
  return [...new Set(tracks)].filter((track) => !spared.has(track));
};

/** The newest first. */
const trackResults = (facts: readonly Fact[], person: PersonId): readonly TrackResult[] => {
  const documents = documentsOf(facts);
  return factsOfKind(facts, 'trained')
    .filter((trained) => trained.person === person)
    .toSorted((a, b) => b.day - a.day)
    .flatMap((trained) => resultsOn(documents.get(trained.card), trained));
};

const resultsOn = (document: IssuedCard | undefined, trained: Fact<'trained'>): readonly TrackResult[] =>
  document
    ? liftsOf(document.card).map(({ item, track, exercise }) => ({
        track,
        exercise,
        done: doneOf(document, item, trained),
      }))
    : [];

const documentsOf = (facts: readonly Fact[]): ReadonlyMap<string, IssuedCard> =>
  new Map(
    factsOfKind(facts, 'decided').flatMap(({ decision }) =>
      decision.kind === 'issue' ? [[decision.card.id, decision.card] as const] : [],
    ),
  );

const doneOf = (document: IssuedCard, item: string, trained: Fact<'trained'>): number => {
  const planned =
    liftsOf(document.card)
      .find((one) => one.item === item)
      ?.sets.filter((set) => set.kind === 'work') ?? [];
  const ids = new Set<string>(document.sets.flatMap((set) => (set.item === item ? [set.id] : [])));
  const done = trained.sets.filter(({ set }) => ids.has(set)).reduce((sum, set) => sum + set.repetitions, 0);
  return done / planned.reduce((sum, set) => sum + set.repetitions, 0);
};

const backedOffLately = (facts: readonly Fact[], person: PersonId, today: Day): readonly TrackId[] =>
  factsOfKind(facts, 'decided').flatMap(({ decision }) =>
    decision.kind === 'adjust' &&
    decision.person === person &&
    decision.change.kind === 'back off' &&
    daysBetween(decision.from, today) < DAYS_OF_PATIENCE
      ? [decision.track]
      : [],
  );

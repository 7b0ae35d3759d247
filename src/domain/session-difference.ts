import type { Exercise } from './catalogue.ts';
import type { ExerciseId, ItemId, SessionId } from './identity.ts';
import type { ProgrammeItem, ProgrammePhase, ProgrammeSession } from './programme.ts';
import { itemDifference, itemInWords } from './item-difference.ts';

type Catalogue = ReadonlyMap<ExerciseId, Exercise>;

/** Where sessions and items stand in one version. */
export interface PlacesOf {
  readonly items: ReadonlyMap<
    ItemId,
    { readonly item: ProgrammeItem; readonly session: ProgrammeSession; readonly phase: ProgrammePhase }
  >;
  readonly sessions: ReadonlyMap<SessionId, { readonly session: ProgrammeSession; readonly phase: ProgrammePhase }>;
}

export const placesOf = (phases: readonly ProgrammePhase[]): PlacesOf => {
  const sessions = phases.flatMap((phase) => phase.sessions.map((session) => ({ session, phase })));
  return {
    sessions: new Map(sessions.map((place) => [place.session.id, place])),
    items: new Map(
      sessions.flatMap(({ session, phase }) =>
        session.items.map((item) => [item.id, { item, session, phase }] as const),
      ),
    ),
  };
};

/** What is otherwise in the sessions of a phase, against a version where the phase may have been missing. */
export const sessionDifferences = (
  was: ProgrammePhase | null,
  is: ProgrammePhase,
  places: { readonly was: PlacesOf; readonly is: PlacesOf },
  exercises: Catalogue,
): readonly string[] => {
  const gone = (was?.sessions ?? []).filter(({ id }) => !places.is.sessions.has(id));
  return [
    ...is.sessions.flatMap((session) => {
      const before = places.was.sessions.get(session.id);
      return before
        ? changedSession(
            before.session,
            session,
            was === null || before.phase.name !== was.name ? before.phase : null,
            places,
            exercises,
          )
        : newSession(session, places.was, exercises);
    }),
    ...gone.map(
      (session) => `${session.title}: taken out, day ${session.weekday} ${contents(session.items, exercises)}.`,
    ),
    ...orderOfSessions(was, is),
  ];
};

const contents = (items: readonly ProgrammeItem[], exercises: Catalogue): string =>
  items.length === 0 ? 'with nothing in it' : `with ${items.map((item) => itemInWords(item, exercises)).join('; ')}`;

const newSession = (session: ProgrammeSession, was: PlacesOf, exercises: Catalogue): readonly string[] => {
  const isNew = (item: ProgrammeItem): boolean => !was.items.has(item.id);
  return [
    `${session.title}: new, day ${session.weekday}, block of ${session.blockMinutes} min, ${contents(session.items.filter(isNew), exercises)}.`,
    ...session.items.filter((item) => !isNew(item)).flatMap((item) => arrived(session, item, was, exercises)),
  ];
};

const changedSession = (
  was: ProgrammeSession,
  is: ProgrammeSession,
  cameFrom: ProgrammePhase | null,
  places: { readonly was: PlacesOf; readonly is: PlacesOf },
  exercises: Catalogue,
): readonly string[] => [
  ...(cameFrom ? [`${is.title}: moved here from ${cameFrom.name}.`] : []),
  ...(was.title === is.title ? [] : [`${is.title}: was called “${was.title}”.`]),
  ...(was.weekday === is.weekday ? [] : [`${is.title}: moved from day ${was.weekday} to day ${is.weekday}.`]),
  ...(was.blockMinutes === is.blockMinutes
    ? []
    : [`${is.title}: block of ${was.blockMinutes} → ${is.blockMinutes} min.`]),
  ...is.items.flatMap((item) => {
    const before = places.was.items.get(item.id);
    if (!before) return [`${is.title}: new, ${itemInWords(item, exercises)}.`];
    if (before.session.id !== is.id) return arrived(is, item, places.was, exercises);
    return itemDifference(before.item, item, exercises).map((says) => `${is.title}: ${says}.`);
  }),
  ...was.items
    .filter(({ id }) => !places.is.items.has(id))
    .map((item) => `${is.title}: without ${itemInWords(item, exercises)}.`),
  ...orderOfItems(was, is, exercises),
];

/** An item that stood in another session. */
const arrived = (
  session: ProgrammeSession,
  item: ProgrammeItem,
  was: PlacesOf,
  exercises: Catalogue,
): readonly string[] => {
  const before = was.items.get(item.id);
  if (!before) return [];
  return [
    `${session.title}: ${itemInWords(item, exercises)}, moved here from ${before.session.title}, ${before.phase.name}.`,
    ...itemDifference(before.item, item, exercises).map((says) => `${session.title}: ${says}.`),
  ];
};

const orderOfItems = (was: ProgrammeSession, is: ProgrammeSession, exercises: Catalogue): readonly string[] =>
  movedAmong(
    was.items.map(({ id }) => id),
    is.items.map(({ id }) => id),
  ).flatMap((id) => {
    const item = is.items.find((each) => each.id === id);
    const [from, to] = [was, is].map(({ items }) => items.findIndex((each) => each.id === id) + 1);
    return item ? [`${is.title}: ${nameOf(item, exercises)} moved from place ${from} to place ${to}.`] : [];
  });

const nameOf = ({ exercise }: ProgrammeItem, exercises: Catalogue): string =>
  (exercises.get(exercise)?.name ?? exercise).toLowerCase();

/** Days say when a session is; of two on one day, or where only the list is otherwise, the order is a difference too. */
const orderOfSessions = (was: ProgrammePhase | null, is: ProgrammePhase): readonly string[] =>
  movedAmong(
    (was?.sessions ?? []).map(({ id }) => id),
    is.sessions.map(({ id }) => id),
  ).flatMap((id) =>
    is.sessions.filter((session) => session.id === id).map(({ title }) => `${title}: stands elsewhere in the list.`),
  );

/** The fewest that have to move so that what is in both stands in the new order. */
export const movedAmong = <Id extends string>(was: readonly Id[], is: readonly Id[]): readonly Id[] => {
  const common = is.filter((id) => was.includes(id));
  const stays = new Set(longestRising(common, (id) => was.indexOf(id)));
  return common.filter((id) => !stays.has(id));
};

const longestRising = <Id>(ids: readonly Id[], rank: (id: Id) => number): readonly Id[] => {
  const best: (readonly Id[])[] = [];
  for (const id of ids) {
    const before = best.filter((run) => rank(run.at(-1) as Id) < rank(id));
    const longest = before.reduce<readonly Id[]>((long, run) => (run.length > long.length ? run : long), []);
    best.push([...longest, id]);
  }
  return best.reduce<readonly Id[]>((long, run) => (run.length > long.length ? run : long), []);
};

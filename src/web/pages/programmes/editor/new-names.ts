import type { Exercise } from '#domain/catalogue.ts';
import { idOf, type ItemId, type SessionId, type TrackId } from '#domain/identity.ts';
import type { PhaseName, ProgrammeItem } from '#domain/programme.ts';
import type { PlaceOfItem } from '#domain/programme-line/new-item.ts';
import { itemOf, slugOf, type Draft, type DraftPhase, type DraftSession, type Slot } from './draft.ts';

/** Names that are not taken in a draft: readable, so that whoever reads the log knows what they meant. */

const itemsOf = (slots: readonly Slot[]): readonly ProgrammeItem[] =>
  slots.flatMap((slot) => (slot.kind === 'unread' ? (slot.before ?? []) : (itemOf(slot) ?? [])));

const itemsOfPhase = ({ sessions }: DraftPhase): readonly ProgrammeItem[] =>
  sessions.flatMap(({ slots }) => itemsOf(slots));

export const itemsOfDraft = ({ phases }: Draft): readonly ProgrammeItem[] => phases.flatMap(itemsOfPhase);

const notTaken = (wanted: string, taken: ReadonlySet<string>): string => {
  if (!taken.has(wanted)) return wanted;
  let number = 2;
  while (taken.has(`${wanted}-${number}`)) number += 1;
  return `${wanted}-${number}`;
};

export const newSessionId = ({ phases }: Draft, phase: PhaseName, weekday: number): SessionId => {
  const taken = new Set<string>(phases.flatMap(({ sessions }) => sessions.map(({ id }) => id)));
  return idOf(notTaken(`day-${weekday}-${slugOf(phase)}`, taken));
};

export const newItemId = (draft: Draft, session: SessionId, exercise: string): ItemId => {
  const taken = new Set<string>(itemsOfDraft(draft).map(({ id }) => id));
  return idOf(notTaken(`${exercise}-${session}`, taken));
};

/** Where a line typed into a session of a phase comes to stand. */
export const placeIn = (draft: Draft, phase: DraftPhase, session: DraftSession): PlaceOfItem => {
  const own = itemsOf(session.slots);
  return {
    newId: ({ id }) => newItemId(draft, session.id, id),
    trackFor: (exercise) => trackFor(draft, session, exercise),
    isLed: ({ id }) => itemsOfPhase(phase).some((item) => item.kind === 'lift' && item.leading && item.exercise === id),
    machineKinds: [...mostUsual(own), ...mostUsual(itemsOfPhase(phase)), usualIn(phase)],
    lowestPriority: Math.max(0, ...own.map(({ priority }) => priority)) + 1,
  };
};

/** The same exercise on a day of the same title goes on along its track, in whatever phase; else a track of its own. */
const trackFor = (draft: Draft, { title }: DraftSession, exercise: Exercise): TrackId => {
  const alike = draft.phases
    .flatMap(({ sessions }) => sessions)
    .filter((session) => session.title === title)
    .flatMap(({ slots }) => itemsOf(slots))
    .find((item) => item.exercise === exercise.id);
  if (alike) return alike.track;
  const ofOthers = new Set<string>(
    itemsOfDraft(draft)
      .filter((item) => item.exercise !== exercise.id)
      .map(({ track }) => track),
  );
  const day = title.toLowerCase().replace(/^(\D+?)\s+day$/, '$1');
  return idOf(notTaken(`${exercise.name.toLowerCase()} ${day}`.trim(), ofOthers));
};

const mostUsual = (items: readonly ProgrammeItem[]): readonly ProgrammeItem['machineKind'][] => {
  const counts = new Map<ProgrammeItem['machineKind'], number>();
  for (const { machineKind } of items) counts.set(machineKind, (counts.get(machineKind) ?? 0) + 1);
  return [...counts].toSorted(([, a], [, b]) => b - a).map(([kind]) => kind);
};

/** Aboard there is the resistive machine, on the ground a bar. */
const usualIn = ({ span: { first } }: DraftPhase): ProgrammeItem['machineKind'] => {
  const isAboard = first.from === 'launch' ? first.days >= 0 : first.days < 0;
  return isAboard ? 'resistive machine' : 'free bar';
};

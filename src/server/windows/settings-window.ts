import { factsOfKind, currentFacts } from '#domain/log.ts';
import type { Known } from '#domain/known.ts';
import type { CardAhead, MachineSetting, ProgrammeUse, SettingsWindow } from '#contract/windows/settings-window.ts';
import type { Snapshot } from '#actions/snapshot.ts';
import { cardRecords, stands } from '#planning/card-records.ts';
import { houseHistories, type HouseHistories } from './house-history.ts';
import { followedBy, peopleInOrder } from './person-head.ts';

/** The whole house as it can be changed, with what rests on each part of it. */
export const settingsWindow = (snapshot: Snapshot): SettingsWindow => {
  const { house } = snapshot;
  const people = peopleInOrder(snapshot);
  const histories = houseHistories(snapshot);
  const uses = usesByExercise(snapshot, people);
  const cards = cardsAhead(snapshot, people);
  return {
    exercises: [...house.exercises.values()].map((exercise) => ({
      exercise,
      history: histories.of('exercise', exercise.id),
      uses: uses.get(exercise.id) ?? [],
      cards: cards.get(exercise.id) ?? [],
    })),
    machines: machineSettings(snapshot, histories, cards),
    sites: [...house.sites.values()].map((site) => ({ site, history: histories.of('site', site.id) })),
    signers: [...house.signers.values()].map((signer) => ({ signer, history: histories.of('signer', signer.id) })),
    policiesSet: factsOfKind(currentFacts(snapshot.log, snapshot.upTo), 'policies set')
      .map((fact) => ({ fact, by: histories.signerOf(fact) }))
      .toReversed(),
    policies: house.policies,
  };
};

const machineSettings = (
  { house }: Snapshot,
  histories: HouseHistories,
  cards: ReadonlyMap<string, readonly CardAhead[]>,
): readonly MachineSetting[] =>
  [...house.machines.values()].map((machine) => ({
    machine,
    history: histories.of('machine', machine.id),
    calibrations: house.calibrations
      .filter((fact) => fact.machine === machine.id)
      .toSorted((a, b) => b.day - a.day)
      .map((fact) => ({ fact, by: histories.signerOf(fact) })),
    cards: cards.get(machine.id) ?? [],
  }));

/** Of each exercise, the lines of programmes that ask for it. */
const usesByExercise = (
  { house }: Snapshot,
  people: readonly Known[],
): ReadonlyMap<string, readonly ProgrammeUse[]> => {
  const uses = new Map<string, ProgrammeUse[]>();
  for (const { id, name, number, phases } of house.programmes.values()) {
    const followers = people.filter((known) => followedBy(known).some(({ version }) => version.id === id)).length;
    for (const phase of phases)
      for (const session of phase.sessions)
        for (const item of session.items) {
          const before = uses.get(item.exercise) ?? [];
          uses.set(item.exercise, before);
          before.push({
            version: id,
            programme: name,
            number,
            phase: phase.name,
            session: session.title,
            machineKind: item.machineKind,
            needsCapacity: 'basis' in item && item.basis.kind === 'fraction',
            followers,
          });
        }
  }
  return uses;
};

/** Issued cards from today on that nobody has answered for, by exercise and by machine. */
const cardsAhead = ({ today }: Snapshot, people: readonly Known[]): ReadonlyMap<string, readonly CardAhead[]> => {
  const ahead = new Map<string, CardAhead[]>();
  for (const known of people)
    for (const record of cardRecords(known, today)) {
      const { id, card } = record.document;
      if (card.day < today || !stands(record) || record.outcome !== 'none') continue;
      const named = card.items.flatMap((item) => [item.exercise, ...('machine' in item ? [item.machine] : [])]);
      for (const each of new Set<string>(named)) {
        const before = ahead.get(each) ?? [];
        ahead.set(each, before);
        before.push({ card: id, person: known.name, day: card.day });
      }
    }
  return ahead;
};

import { factsOfKind, currentFacts } from '#domain/log.ts';
import { usesByExercise } from '#domain/exercise-change.ts';
import type { Known } from '#domain/known.ts';
import type { CardAhead, MachineSetting, SettingsWindow } from '#contract/windows/settings-window.ts';
import type { Snapshot } from '#actions/snapshot.ts';
import { cardRecords, stands } from '#planning/card-records.ts';
import { houseHistories, type HouseHistories } from './house-history.ts';
import { followedBy, peopleInOrder } from './person-head.ts';

/** The whole house as it can be changed, with what rests on each part of it. */
export const settingsWindow = (snapshot: Snapshot): SettingsWindow => {
  const { house } = snapshot;
  const people = peopleInOrder(snapshot);
  const histories = houseHistories(snapshot);
  const uses = usesByExercise(house.programmes.values());
  const followers = followersOf(people);
  const cards = cardsAhead(snapshot, people);
  return {
    exercises: [...house.exercises.values()].map((exercise) => ({
      exercise,
      history: histories.of('exercise', exercise.id),
      uses: (uses.get(exercise.id) ?? []).map((use) => ({ ...use, followers: followers.get(use.version) ?? 0 })),
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

/** How many people follow each version. */
const followersOf = (people: readonly Known[]): ReadonlyMap<string, number> => {
  const followers = new Map<string, number>();
  for (const known of people)
    for (const { version } of followedBy(known)) followers.set(version.id, (followers.get(version.id) ?? 0) + 1);
  return followers;
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

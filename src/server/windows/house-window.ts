import type { HouseWindow } from '#contract/windows/house-window.ts';
import type { Snapshot } from '#actions/snapshot.ts';
import { SQUAT_GATE_TABLE, type SquatGate } from '#science/novice/squat-gates.table.ts';
import { followedBy, peopleInOrder, personLine } from './person-head.ts';

export const houseWindow = (snapshot: Snapshot, about: HouseWindow['about']): HouseWindow => {
  const { house, today } = snapshot;
  const people = peopleInOrder(snapshot);
  return {
    about,
    today,
    upTo: snapshot.upTo,
    people: people.map((known) => personLine(known, today)),
    signers: [...house.signers.values()],
    exercises: [...house.exercises.values()].map(({ id, name, bodyPart, perSide, settingFields, machineKinds }) => ({
      id,
      name,
      bodyPart,
      perSide,
      settingFields,
      machineKinds,
    })),
    machines: [...house.machines.values()],
    sites: [...house.sites.values()],
    missions: [...house.missions.values()].map(({ id, name, launch, landing }) => ({ id, name, launch, landing })),
    programmes: [...house.programmes.values()].map(({ id, name, number }) => ({
      id,
      name,
      number,
      followers: people.filter((known) => followedBy(known).some(({ version }) => version.id === id)).length,
    })),
    policies: house.policies,
    squatGates: SQUAT_GATE_TABLE.rows.map((gate) => ({ name: gate.name, asks: asksOf(gate), opens: gate.opens })),
  };
};

const asksOf = ({ sessions, sets, repetitions, load, mostExertion, mostFaults, weeks, confirms }: SquatGate) => [
  ...(sets > 0 ? [`${sets} × ${repetitions} in ${sessions === 1 ? 'one session' : `${sessions} sessions`}`] : []),
  ...(load ? [`with ${load[0] * 100} to ${load[1] * 100} % of body mass`] : []),
  ...(mostExertion === null ? [] : [`at RPE ${mostExertion} or less`]),
  ...(mostFaults === null ? [] : [`at most ${mostFaults} of the ten faults`]),
  ...(weeks > 0 ? [`after ${weeks} weeks of training`] : []),
  ...confirms,
];

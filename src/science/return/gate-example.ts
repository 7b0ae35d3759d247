import type { GateEvidence, ScoreTest } from './gate-evidence.ts';

/** A worked gate of an invented person, nine days into stage 2: every item in date, tested twice. */

const twice = (previous: number, latest: number, test?: string): readonly ScoreTest[] => {
  const named = test === undefined ? {} : { test };
  return [
    { on: 17, score: previous, ...named },
    { on: 20, score: latest, ...named },
  ];
};

/** Agility 12.0 s before flight; 13.0 s now is 92.3 %. */
const AGILITY_NOW = (100 * 12) / 13;

export const WORKED_GATE: GateEvidence = {
  gate: 'second',
  today: 21,
  enteredStage: 12,
  scores: {
    balance: twice(96, 97),
    tandemOpen: twice(96, 97),
    tandemClosed: twice(81, 84),
    sitToStand: twice(92, 93),
    agility: twice(89, AGILITY_NOW),
    heelRaiseLeft: twice(83, 86),
    heelRaiseRight: twice(82, 84),
    legStrength: twice(86, (100 * 184) / 208),
    legSymmetry: twice(88, (100 * 212) / 236),
    jump: twice(84, 85),
    oxygenUptake: twice(86, 88),
  },
  standTests: [{ on: 20, normal: true }],
  balanceTests: [{ on: 20, fallsIn: [] }],
  sickness: [18.5, 19.5, 20.5].map((on) => ({ on, value: 0 })),
  pain: [{ on: 20.5, value: 1 }],
  redFlags: [],
  required: [],
  judgements: [],
};

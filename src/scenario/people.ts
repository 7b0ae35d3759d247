import { idOf } from '#domain/identity.ts';
import { bentOverRow } from '#shipped/exercises/upper-body.ts';
import { backSquat, deadlift } from '#shipped/exercises/lower-body.ts';
import type { Grip, Habits, InventedPerson, Stamina } from './invented-person.ts';
import { SKERRY_19, SKERRY_20, SKERRY_21, SKERRY_22, SKERRY_23, SKERRY_24, SKERRY_27, SKERRY_29 } from './missions.ts';

/* Nobody here exists. Numbers, histories and troubles are invented. */

const USUAL: Habits = { effort: 'as felt', prompt: false, blankFrom: null, shouldersBear: null, quiet: null };

const stamina = (uptake: number, greatestRate: number, restingRate: number, costs: number): Stamina => ({
  uptake,
  greatestRate,
  restingRate,
  costs,
});
const grip = (left: number, right: number, lasting: number): Grip => ({ left, right, lasting });

const nameOf = (name: string): Pick<InventedPerson, 'id' | 'name'> => ({
  id: idOf(name.toLowerCase().replaceAll(' ', '-')),
  name,
});

/** Everything as it should be. */
export const INES: InventedPerson = {
  ...nameOf('Ines Okafor-Lund'),
  sex: 'female',
  birthDate: '1988-04-17',
  stature: '168.5',
  trainingAge: '6',
  mission: SKERRY_22.id,
  team: 'ours',
  bodyMass: 71.4,
  strength: { backSquat: 105, deadlift: 122, benchPress: 52, heelRaiseTwelve: 97.5, rightOverLeft: 0.01 },
  stamina: stamina(46, 184, 54, 1.02),
  grip: grip(372, 391, 0.37),
  spaceWalks: true,
  habits: { ...USUAL, prompt: true },
  incidents: {
    11: { kind: 'note', exercise: deadlift.id, text: 'Straps short was right. Felt light.' },
    18: { kind: 'note', exercise: backSquat.id, text: 'Third set best. Pads moved a little, shoulders fine.' },
  },
};

/** First week lost to sickness and a docking; silent for four sessions, then everything at once. */
export const TOMAS: InventedPerson = {
  ...nameOf('Tomas Varga'),
  sex: 'male',
  birthDate: '1985-11-02',
  stature: '181',
  trainingAge: '9',
  mission: SKERRY_22.id,
  team: 'ours',
  bodyMass: 84.6,
  strength: { backSquat: 132, deadlift: 158, benchPress: 92, heelRaiseTwelve: 125, rightOverLeft: 0.02 },
  stamina: stamina(49, 181, 52, 0.98),
  grip: grip(512, 540, 0.36),
  spaceWalks: false,
  habits: { ...USUAL, blankFrom: 13, quiet: { from: 13, until: 20, heardOn: 22 } },
  incidents: {
    4: { kind: 'called off', cause: 'medical', text: 'Motion sickness, resting.' },
    6: { kind: 'called off', cause: 'operations', text: 'Docking: no machine all afternoon.' },
    15: { kind: 'sent twice' },
    20: { kind: 'contradicting note', exercise: deadlift.id, lighterBy: 30 },
  },
};

/** Backup who became prime; her shoulders do not take the way up. */
export const OONA: InventedPerson = {
  ...nameOf('Oona Whitlock'),
  sex: 'female',
  birthDate: '1990-08-23',
  stature: '164',
  trainingAge: '4',
  mission: SKERRY_22.id,
  team: 'ours',
  bodyMass: 63.8,
  strength: { backSquat: 84, deadlift: 101, benchPress: 44, heelRaiseTwelve: 82.5, rightOverLeft: -0.02 },
  stamina: stamina(43, 186, 60, 1.03),
  grip: grip(331, 346, 0.35),
  spaceWalks: false,
  habits: { ...USUAL, shouldersBear: 76 },
  incidents: {
    6: { kind: 'called off', cause: 'operations', text: 'Docking: no machine all afternoon.' },
    15: { kind: 'note', exercise: backSquat.id, text: 'Right shoulder again, from the second set on.' },
  },
};

/** Writes 7 whatever happens; lighter than before launch. */
export const KERTTU: InventedPerson = {
  ...nameOf('Kerttu Saarela'),
  sex: 'female',
  birthDate: '1983-01-30',
  stature: '171',
  trainingAge: '12',
  mission: SKERRY_21.id,
  team: 'ours',
  bodyMass: 66.2,
  strength: { backSquat: 106, deadlift: 128, benchPress: 55, heelRaiseTwelve: 105, rightOverLeft: 0 },
  stamina: stamina(47, 178, 53, 1),
  grip: grip(365, 377, 0.4),
  spaceWalks: true,
  habits: { ...USUAL, effort: 'always 7' },
  incidents: {
    29: { kind: 'called off', cause: 'operations', text: 'Cargo day, no time.' },
    48: { kind: 'not heard' },
    67: { kind: 'missed' },
    97: { kind: 'called off', cause: 'machine', text: 'Machine open for its belt change.' },
  },
};

/** So strong that the machine's ceiling is in the way. */
export const RAFAEL: InventedPerson = {
  ...nameOf('Rafael Nwosu'),
  sex: 'male',
  birthDate: '1982-06-09',
  stature: '189',
  trainingAge: '17',
  mission: SKERRY_21.id,
  team: 'ours',
  bodyMass: 103.8,
  strength: { backSquat: 214, deadlift: 242, benchPress: 140, heelRaiseTwelve: 185, rightOverLeft: 0.01 },
  stamina: stamina(44, 176, 58, 1.01),
  grip: grip(655, 672, 0.34),
  spaceWalks: true,
  habits: USUAL,
  incidents: {
    34: { kind: 'not heard' },
    60: { kind: 'trained on', flightDay: 62 },
    62: { kind: 'trained on', flightDay: 60 },
    88: { kind: 'note', exercise: bentOverRow.id, text: 'Handle turns in the grip, taped it.' },
    97: { kind: 'called off', cause: 'machine', text: 'Machine open for its belt change.' },
  },
};

/** Two of another team aboard: machine and minutes only. */
export const DARIO: InventedPerson = {
  ...nameOf('Dario Benkert'),
  sex: 'male',
  birthDate: '1986-02-26',
  stature: '178',
  trainingAge: null,
  mission: SKERRY_21.id,
  team: 'another team',
  bodyMass: 82,
  strength: null,
  stamina: stamina(45, 180, 58, 1),
  grip: grip(500, 515, 0.36),
  spaceWalks: false,
  habits: USUAL,
  incidents: {},
};
export const TEUILA: InventedPerson = {
  ...DARIO,
  ...nameOf('Teuila Sorensen'),
  sex: 'female',
  birthDate: '1989-07-05',
  stature: '173',
  bodyMass: 70,
};

/** Nothing carried on the shoulders in the last eight weeks: the heaviest bar is typed by hand. */
export const MIRELA: InventedPerson = {
  ...nameOf('Mirela Haug'),
  sex: 'female',
  birthDate: '1991-03-05',
  stature: '166',
  trainingAge: '5',
  mission: SKERRY_23.id,
  team: 'ours',
  bodyMass: 61.2,
  strength: { backSquat: 113, deadlift: 128, benchPress: 49, heelRaiseTwelve: 95, rightOverLeft: 0.01 },
  stamina: stamina(45, 187, 57, 1.01),
  grip: grip(348, 361, 0.38),
  spaceWalks: false,
  habits: USUAL,
  incidents: {},
};

/** Knows the ground unit of the flight machine. */
export const YUSUF: InventedPerson = {
  ...nameOf('Yusuf Adeyemi-Roth'),
  sex: 'male',
  birthDate: '1987-12-14',
  stature: '176',
  trainingAge: '8',
  mission: SKERRY_23.id,
  team: 'ours',
  bodyMass: 78.9,
  strength: { backSquat: 128, deadlift: 150, benchPress: 88, heelRaiseTwelve: 120, rightOverLeft: 0.02 },
  stamina: stamina(50, 183, 50, 0.99),
  grip: grip(530, 548, 0.37),
  spaceWalks: false,
  habits: USUAL,
  incidents: {},
};

/** Right leg 9 % over the left since long before flight; was to fly on Skerry 22. */
export const WEN_LI: InventedPerson = {
  ...nameOf('Wen-li Abara'),
  sex: 'female',
  birthDate: '1989-09-19',
  stature: '162',
  trainingAge: '7',
  mission: SKERRY_24.id,
  team: 'ours',
  bodyMass: 58.7,
  strength: { backSquat: 88, deadlift: 104, benchPress: 43, heelRaiseTwelve: 85, rightOverLeft: 0.09 },
  stamina: stamina(48, 185, 55, 1),
  grip: grip(340, 352, 0.41),
  spaceWalks: true,
  habits: USUAL,
  incidents: {},
};

/** Tests in pounds, far from home. */
export const ADAEZE: InventedPerson = {
  ...nameOf('Adaeze Brandt'),
  sex: 'female',
  birthDate: '1993-02-11',
  stature: '174',
  trainingAge: '2',
  mission: SKERRY_27.id,
  team: 'ours',
  bodyMass: 69.5,
  strength: { backSquat: 72, deadlift: 90, benchPress: 38, heelRaiseTwelve: 70, rightOverLeft: -0.01 },
  stamina: stamina(41, 190, 63, 1.04),
  grip: grip(355, 366, 0.36),
  spaceWalks: false,
  habits: USUAL,
  incidents: {},
};

/** Never squatted. */
export const ANSELM: InventedPerson = {
  ...nameOf('Anselm Fitzroy'),
  sex: 'male',
  birthDate: '1994-07-28',
  stature: '179',
  trainingAge: '0',
  mission: SKERRY_29.id,
  team: 'ours',
  bodyMass: 74.2,
  strength: null,
  stamina: stamina(38, 188, 66, 1.05),
  grip: grip(460, 482, 0.33),
  spaceWalks: false,
  habits: USUAL,
  incidents: {},
};

/** Landed nine days ago, 19 days late. */
export const JOON_HO: InventedPerson = {
  ...nameOf('Joon-ho Salcedo'),
  sex: 'male',
  birthDate: '1981-10-06',
  stature: '177',
  trainingAge: '11',
  mission: SKERRY_20.id,
  team: 'ours',
  bodyMass: 80.3,
  strength: { backSquat: 136, deadlift: 160, benchPress: 95, heelRaiseTwelve: 130, rightOverLeft: 0 },
  stamina: stamina(46, 174, 55, 1),
  grip: grip(505, 523, 0.38),
  spaceWalks: false,
  habits: USUAL,
  incidents: {},
};

/** A month home. */
export const NOOR: InventedPerson = {
  ...nameOf('Noor Castellan'),
  sex: 'female',
  birthDate: '1984-05-21',
  stature: '169',
  trainingAge: '10',
  mission: SKERRY_19.id,
  team: 'ours',
  bodyMass: 65,
  strength: { backSquat: 98, deadlift: 120, benchPress: 50, heelRaiseTwelve: 95, rightOverLeft: 0.01 },
  stamina: stamina(44, 179, 59, 1.02),
  grip: grip(358, 371, 0.37),
  spaceWalks: false,
  habits: USUAL,
  incidents: {},
};

export const INVENTED_PEOPLE: readonly InventedPerson[] = [
  INES,
  TOMAS,
  OONA,
  KERTTU,
  RAFAEL,
  DARIO,
  TEUILA,
  MIRELA,
  YUSUF,
  WEN_LI,
  ADAEZE,
  ANSELM,
  JOON_HO,
  NOOR,
];

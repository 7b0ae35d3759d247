import type { Effort } from '#domain/effort.ts';
import type { Fact } from '#domain/fact.ts';
import type { ExerciseId } from '#domain/identity.ts';
import { type Known, knownAt, ofKind } from '#domain/known.ts';
import { endOfLog } from '#domain/log.ts';
import { backSquat, deadlift, heelRaise, singleLegSquat } from '#shipped/exercises/lower-body.ts';
import { benchPress } from '#shipped/exercises/upper-body.ts';
import { type Day, isoOfDay } from '#units/day.ts';
import { INVENTED_PEOPLE } from '../people.ts';
import { scenarioLog } from '../scenario-log.ts';
import { GROUND_UNIT } from '../skerry-station.ts';
import { decimalComma, type Table } from './table.ts';

/** Our people as they were before flight, with the last body mass from before launch. */
export const peopleTable = (today: Day): Table => [
  ['Name', 'Sex', 'Birth date', 'Stature (cm)', 'Body mass (kg)', 'Measured on', 'Training age (years)'],
  ...ourPeople(today).map((known) => {
    const mass = lastMassBeforeLaunch(known);
    const stature = ofKind(known, 'measured').find(({ what }) => what === 'stature');
    return [
      known.name,
      known.sex === 'female' ? 'F' : 'M',
      known.birthDate === null ? '' : isoOfDay(known.birthDate),
      stature?.value.text ?? '',
      mass?.value.text ?? '',
      mass ? isoOfDay(mass.day) : '',
      known.trainingAge === null ? '' : String(known.trainingAge),
    ];
  }),
];

/** Who flies on what, and when. */
export const missionsTable = (today: Day): Table => [
  ['Mission', 'Name', 'Role', 'Launch', 'Landing', 'Latest landing'],
  ...ourPeople(today).map(({ name, mission, assignment }) => [
    mission?.name ?? '',
    name,
    assignment?.role ?? '',
    mission ? isoOfDay(mission.launch) : '',
    mission?.landing ? isoOfDay(mission.landing.earliest) : '',
    mission?.landing ? isoOfDay(mission.landing.latest) : '',
  ]),
];

/** One test a row, the oldest first: day first, decimal comma, and whatever unit the gym had. */
export const testsTable = (today: Day): Table => [
  ['Datum', 'Name', 'Exercise', 'Load', 'Unit', 'Reps', 'RIR', 'Side'],
  ...ourPeople(today)
    .flatMap((known) => testsBeforeFlight(known).map((test) => ({ name: known.name, test })))
    .toSorted((a, b) => a.test.day - b.test.day)
    .map(({ name, test }) => [
      dayFirst(test.day),
      name,
      WRITTEN[test.exercise] ?? test.exercise,
      decimalComma(test.load.text),
      test.load.unit,
      String(test.repetitions),
      reserveOf(test.effort),
      test.side ?? '',
    ]),
];

/** As one writes it in the gym. */
const WRITTEN: Readonly<Record<ExerciseId, string>> = {
  [backSquat.id]: 'Squat',
  [deadlift.id]: 'Deadlift',
  [benchPress.id]: 'Bench',
  [heelRaise.id]: 'Calf raise',
  [singleLegSquat.id]: 'Single-leg squat',
};

export const ourPeople = (today: Day): readonly Known[] => {
  const { log } = scenarioLog(today);
  return INVENTED_PEOPLE.filter(({ team }) => team === 'ours').flatMap(
    ({ id }) => knownAt(log, id, endOfLog(log)) ?? [],
  );
};

type BodyMass = Extract<Fact<'measured'>, { readonly what: 'body mass' }>;

const lastMassBeforeLaunch = (known: Known): BodyMass | undefined =>
  ofKind(known, 'measured')
    .filter((fact): fact is BodyMass => fact.what === 'body mass' && isBeforeLaunch(known, fact.day))
    .toSorted((a, b) => a.day - b.day)
    .at(-1);

/** Loads of the ground unit are left out: whoever starts empty has none. */
const testsBeforeFlight = (known: Known): readonly Fact<'lifted'>[] =>
  ofKind(known, 'lifted').filter((test) => isBeforeLaunch(known, test.day) && test.machine !== GROUND_UNIT.id);

const isBeforeLaunch = ({ mission }: Known, day: Day): boolean => mission === null || day < mission.launch;

const dayFirst = (day: Day): string => isoOfDay(day).split('-').toReversed().join('.');

const reserveOf = (effort: Effort | null): string => {
  if (!effort) return '';
  return String(effort.kind === 'RPE' ? 10 - effort.value : effort.value);
};

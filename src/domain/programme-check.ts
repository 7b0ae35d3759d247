import { day, type Day } from '#units/day.ts';
import type { Exercise } from './catalogue.ts';
import type { ExerciseId } from './identity.ts';
import { daysOfPhase, type ProgrammeContent, type ProgrammeItem, type ProgrammePhase } from './programme.ts';
import { isEndurance, loadsLifts } from './programme-line/new-item.ts';

/** What stands against taking a programme up, at its place: `phases.0.sessions.1.items.2.exercise`. */
export interface ProgrammeProblem {
  readonly what: string;
  readonly why: string;
  readonly whatToDo: string;
  readonly field: string;
}

type Content = Pick<ProgrammeContent, 'phases'>;
type Exercises = ReadonlyMap<ExerciseId, Exercise>;

/** Everything that is wrong with a programme in itself, whoever is to follow it. */
export const programmeProblems = (content: Content, exercises: Exercises): readonly ProgrammeProblem[] => [
  ...emptyProblems(content),
  ...phaseProblems(content.phases),
  ...twiceProblems(content),
  ...content.phases.flatMap((phase, place) => dayProblems(phase, place)),
  ...placedItems(content).flatMap(({ item, field }) => itemProblems(item, field, exercises)),
];

interface PlacedItem {
  readonly item: ProgrammeItem;
  readonly field: string;
}

const placedItems = ({ phases }: Content): readonly PlacedItem[] =>
  phases.flatMap(({ sessions }, phase) =>
    sessions.flatMap(({ items }, session) =>
      items.map((item, place) => ({ item, field: `phases.${phase}.sessions.${session}.items.${place}` })),
    ),
  );

const emptyProblems = (content: Content): readonly ProgrammeProblem[] =>
  placedItems(content).length > 0
    ? []
    : [
        {
          what: 'There is nothing in this programme.',
          why: 'Whoever followed it would get no card.',
          whatToDo: 'Write at least one exercise on one day.',
          field: 'phases',
        },
      ];

/** A flight longer than any edge reaches: what overlaps in it overlaps in every flight. */
const LONG_FLIGHT = 20_000;
const DATES = { launch: day(0), landing: { earliest: day(LONG_FLIGHT), latest: day(LONG_FLIGHT) } };

const phaseProblems = (phases: readonly ProgrammePhase[]): readonly ProgrammeProblem[] =>
  phases.flatMap((phase, place) => {
    const field = `phases.${place}`;
    const earlier = phases.slice(0, place);
    const days = daysOfPhase(phase, DATES);
    const over = days && earlier.find((other) => overlap(days, daysOfPhase(other, DATES)));
    return [
      ...(earlier.some(({ name }) => name === phase.name) ? [phaseTwice(phase, `${field}.name`)] : []),
      ...(days ? [] : [noDays(phase, `${field}.span`)]),
      ...(over ? [overlapping(phase, over, `${field}.span`)] : []),
      ...((phase.deload?.loadBy ?? 1) > 1 ? [heavierWeek(phase, `${field}.deload`)] : []),
    ];
  });

type Days = ReturnType<typeof daysOfPhase>;

const overlap = (a: NonNullable<Days>, b: Days): boolean => b !== null && a.first <= lastOf(b) && b.first <= lastOf(a);

const lastOf = ({ last }: NonNullable<Days>): Day => last ?? day(LONG_FLIGHT * 2);

const phaseTwice = ({ name }: ProgrammePhase, field: string): ProgrammeProblem => ({
  what: `There are two phases called ${name}.`,
  why: 'Phases are told apart by their names, on the road and from version to version.',
  whatToDo: 'Give one of them another name, or put their sessions into one.',
  field,
});

const heavierWeek = ({ name }: ProgrammePhase, field: string): ProgrammeProblem => ({
  what: `The lighter weeks of ${name} would be heavier.`,
  why: 'What a lighter week takes off is a part of the load.',
  whatToDo: 'Write how much less: 0 % to 100 %.',
  field,
});

const noDays = ({ name }: ProgrammePhase, field: string): ProgrammeProblem => ({
  what: `The phase ${name} has no day.`,
  why: 'Its last day lies before its first.',
  whatToDo: 'Put the first day before the last.',
  field,
});

const overlapping = ({ name }: ProgrammePhase, other: ProgrammePhase, field: string): ProgrammeProblem => ({
  what: `The phases ${other.name} and ${name} overlap.`,
  why: 'On a day that lies in both nobody could say which one is trained.',
  whatToDo: 'Let one end before the other begins.',
  field,
});

const twiceProblems = ({ phases }: Content): readonly ProgrammeProblem[] => {
  const sessions = phases.flatMap((phase, place) =>
    phase.sessions.map(({ id }, at) => ({
      id: id as string,
      field: `phases.${place}.sessions.${at}`,
      what: 'session',
    })),
  );
  const items = placedItems({ phases }).map(({ item, field }) => ({ id: item.id as string, field, what: 'item' }));
  return [sessions, items].flatMap((all) => {
    const seen = new Set<string>();
    return all.flatMap(({ id, field, what }) => {
      if (!seen.has(id)) {
        seen.add(id);
        return [];
      }
      return [
        {
          what: `Two ${what}s have the identity ${id}.`,
          why: `Results and notes know ${what === 'item' ? 'an item' : 'a session'} by its identity, from version to version.`,
          whatToDo: 'Delete one of them and write it anew.',
          field,
        },
      ];
    });
  });
};

/** A card is one session of one day: a second one on the same day would never be planned. */
const dayProblems = ({ name, sessions }: ProgrammePhase, phase: number): readonly ProgrammeProblem[] =>
  sessions.flatMap(({ weekday, title }, place) => {
    const before = sessions.slice(0, place).find((each) => each.weekday === weekday);
    return before
      ? [
          {
            what: `${before.title} and ${title} are both on day ${weekday} of ${name}.`,
            why: 'A day has one session: only the first of them would get a card.',
            whatToDo: 'Put one of them on another day, or write both into one session.',
            field: `phases.${phase}.sessions.${place}.weekday`,
          },
        ]
      : [];
  });

const itemProblems = (item: ProgrammeItem, field: string, exercises: Exercises): readonly ProgrammeProblem[] => {
  const exercise = exercises.get(item.exercise);
  if (!exercise) return [unknownExercise(item, `${field}.exercise`)];
  const isMadeFor = exercise.machineKinds.length === 0 || exercise.machineKinds.includes(item.machineKind);
  return [
    ...(isMadeFor ? [] : [wrongMachine(exercise, item, `${field}.machineKind`)]),
    ...(isMadeFor && !suitsKind(item) ? [wrongKind(exercise, item, `${field}.machineKind`)] : []),
    ...(isEmpty(item) ? [nothingToDo(exercise, `${field}.sets`)] : []),
    ...loadProblems(item, exercise, field),
  ];
};

const unknownExercise = ({ exercise }: ProgrammeItem, field: string): ProgrammeProblem => ({
  what: `There is no exercise ${exercise}.`,
  why: 'A card takes cues, minutes and loads from the list of exercises in Settings.',
  whatToDo: 'Choose one of the list, or enter it in Settings first.',
  field,
});

const wrongMachine = ({ name, machineKinds }: Exercise, item: ProgrammeItem, field: string): ProgrammeProblem => ({
  what: `${name} is not done on a ${item.machineKind}.`,
  why: `It is made for ${machineKinds.join(', ')}; on another machine it would be left out of every card.`,
  whatToDo: `Choose ${machineKinds.join(' or ')}.`,
  field,
});

const suitsKind = ({ kind, machineKind }: ProgrammeItem): boolean => {
  if (kind === 'bouts') return isEndurance(machineKind);
  return kind === 'lift' ? loadsLifts(machineKind) : !isEndurance(machineKind);
};

const wrongKind = ({ name }: Exercise, { kind, machineKind }: ProgrammeItem, field: string): ProgrammeProblem => ({
  what: `${name} stands as ${kind === 'bouts' ? 'bouts' : 'sets'} on a ${machineKind}.`,
  why: 'Loads need a machine that gives them, bouts one that is run, ridden or rowed.',
  whatToDo: 'Choose another machine, or write the line anew.',
  field,
});

const isEmpty = (item: ProgrammeItem): boolean => (item.kind === 'bouts' ? item.bouts : item.sets).length === 0;

const nothingToDo = ({ name }: Exercise, field: string): ProgrammeProblem => ({
  what: `${name} has no sets.`,
  why: 'There is nothing to do in it.',
  whatToDo: 'Write sets, such as 4 × 6 @ 80 %, or delete it.',
  field,
});

/** Limits are held against the first set: none after it may be heavier. */
const loadProblems = (item: ProgrammeItem, { name }: Exercise, field: string): readonly ProgrammeProblem[] =>
  item.kind === 'lift' &&
  item.sets.some(({ loadBy = 1 }, place) => loadBy > 1 || loadBy <= 0 || (place === 0 && loadBy !== 1))
    ? [
        {
          what: `${name} has a later set that is heavier than the first, or weighs nothing.`,
          why: 'Every limit is held against the first set.',
          whatToDo: 'Write the heaviest set first, and later ones as −10 %.',
          field: `${field}.sets`,
        },
      ]
    : [];

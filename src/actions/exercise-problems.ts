import type { Exercise } from '#domain/catalogue.ts';
import { exerciseWarnings, usesByExercise } from '#domain/exercise-change.ts';
import type { Fact } from '#domain/fact.ts';
import type { House } from '#domain/known.ts';
import { factsOfKind } from '#domain/log.ts';
import { isWithinScope } from '#domain/restriction.ts';
import { spelling } from '#interchange/layout/spelling.ts';
import type { Problem } from '#contract/problem.ts';

/** What stands against an exercise that is entered or changed. */
export const exerciseProblems = (exercise: Exercise, house: House, current: readonly Fact[]): readonly Problem[] => {
  const others = [...house.exercises.values()].filter(({ id }) => id !== exercise.id);
  return [
    ...spellingProblems(exercise, others),
    ...(exercise.machineKinds.length === 0 ? [doneOnNothing()] : []),
    ...(exercise.loads.length === 0 ? [loadsNothing()] : []),
    ...capacityProblems(exercise, others),
    ...substituteProblems(exercise),
    ...restrictionProblems(exercise, house, current),
    ...warnings(exercise, house),
  ];
};

/** What is only to be seen before it is signed. */
const warnings = (after: Exercise, house: House): readonly Problem[] => {
  const before = house.exercises.get(after.id);
  if (!before) return [];
  const uses = usesByExercise(house.programmes.values()).get(after.id) ?? [];
  return exerciseWarnings(before, { ...after, capacity: after.capacity.kind }, uses).map(({ field, says }) => ({
    ...at(field, says, 'What is signed has been seen.', 'Say that it is meant, or leave it as it was.'),
    mayStand: true,
  }));
};

const at = (field: string, what: string, why: string, whatToDo: string): Problem => ({
  what,
  why,
  whatToDo,
  field: `entry.exercise.${field}`,
});

/** No spelling stands for two exercises: a spreadsheet that says "squat" must mean one of them. */
const spellingProblems = ({ name, alsoKnownAs }: Exercise, others: readonly Exercise[]): readonly Problem[] => {
  const holderOf = (text: string): Exercise | undefined =>
    others.find((each) => [each.name, ...each.alsoKnownAs].some((one) => spelling(one) === spelling(text)));
  return [
    { text: name, field: 'name' },
    ...alsoKnownAs.map((text, place) => ({ text, field: `alsoKnownAs.${place}` })),
  ].flatMap(({ text, field }) => {
    const holder = holderOf(text);
    return holder
      ? [
          at(
            field,
            `“${text}” is ${holder.name} already.`,
            ONE_SPELLING,
            'Choose another, or take it away there first.',
          ),
        ]
      : [];
  });
};

const ONE_SPELLING = 'A spreadsheet that says it must mean one exercise.';

const doneOnNothing = (): Problem =>
  at('machineKinds', 'It is done on nothing.', 'A plan puts it where its machine is.', 'Choose one or more.');

const loadsNothing = (): Problem =>
  at(
    'loads',
    'It loads no site of the body.',
    "A physician's limit on a site reaches what loads it.",
    'Choose every site that it loads.',
  );

const capacityProblems = (exercise: Exercise, others: readonly Exercise[]): readonly Problem[] => {
  const { capacity } = exercise;
  if (capacity.kind === 'ratio') {
    const to = others.find(({ id }) => id === capacity.to);
    return to && isTested(to) ? [] : [at('capacity.to', ...RATIO_OF_WHAT)];
  }
  const resting = others.filter((each) => each.capacity.kind === 'ratio' && each.capacity.to === exercise.id);
  if (isTested(exercise) || resting.length === 0) return [];
  return [restedOn(resting)];
};

const isTested = ({ capacity }: Exercise): boolean => capacity.kind !== 'ratio' && capacity.kind !== 'none';

const RATIO_OF_WHAT = [
  'The ratio is to no lift that is tested itself.',
  'A ratio of a ratio rests on nothing that was measured.',
  'Choose another exercise with a maximum of its own.',
] as const;

const restedOn = (resting: readonly Exercise[]): Problem =>
  at(
    'capacity.kind',
    `The capacity of ${resting.map(({ name }) => name.toLowerCase()).join(', ')} is a ratio of this one.`,
    'It would rest on nothing that is tested.',
    'Give those another source of capacity first.',
  );

const substituteProblems = ({ id, substitutes }: Exercise): readonly Problem[] =>
  substitutes.flatMap(({ exercise }, place) => {
    const field = `substitutes.${place}.exercise`;
    if (exercise === id) return [at(field, 'It stands in for itself.', 'That covers nothing.', 'Choose another.')];
    return substitutes.slice(0, place).some((each) => each.exercise === exercise)
      ? [at(field, 'This one stands above already.', 'It would be rated twice.', 'Leave one of the two out.')]
      : [];
  });

/** Only a physician lifts a restriction: an exercise does not leave its reach by being described otherwise. */
const restrictionProblems = (after: Exercise, house: House, current: readonly Fact[]): readonly Problem[] => {
  const before = house.exercises.get(after.id);
  if (!before) return [];
  const lifted = new Set(factsOfKind(current, 'restriction lifted').map(({ restriction }) => restriction));
  const names = new Map(factsOfKind(current, 'introduced').map(({ person, name }) => [person, name]));
  return factsOfKind(current, 'restricted').flatMap(({ id, person, restriction: { scope } }) => {
    if (lifted.has(id) || !isWithinScope(scope, before) || isWithinScope(scope, after)) return [];
    const field = scope.kind === 'site' ? 'loads' : 'pattern';
    const of = scope.kind === 'site' ? scope.site : before.pattern;
    return [
      at(
        field,
        `A physician's limit for ${names.get(person) ?? 'somebody'} reaches this exercise by its ${field === 'loads' ? 'site' : 'pattern'}, ${of}.`,
        'It would be free of that limit, and only a physician lifts one.',
        'Leave it as it was until the limit is lifted, or enter a copy under another name.',
      ),
    ];
  });
};

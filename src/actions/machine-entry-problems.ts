import { decimalOf } from '#units/entered.ts';
import { isoOfDay } from '#units/day.ts';
import type { Machine } from '#domain/catalogue.ts';
import type { House } from '#domain/known.ts';
import type { Problem } from '#contract/problem.ts';

/** What stands against a machine that is entered or changed, beside its unit, step and gravity, which stay. */
export const machineEntryProblems = (machine: Machine, house: House): readonly Problem[] => [
  ...placeProblems(machine, house),
  ...loadProblems(machine),
  ...limitProblems(machine),
  ...serviceProblems(machine),
];

const at = (field: string, what: string, why: string, whatToDo: string): Problem => ({
  what,
  why,
  whatToDo,
  field: `entry.machine.${field}`,
});

const placeProblems = (machine: Machine, { sites, machines }: House): readonly Problem[] => {
  const [site, before] = [sites.get(machine.site), machines.get(machine.id)];
  const namesake = [...machines.values()].some(
    (each) => each.id !== machine.id && each.site === machine.site && sameName(each.name, machine.name),
  );
  return [
    ...(namesake ? [at('name', `${machine.name} stands there already.`, TOLD_APART, 'Give it another name.')] : []),
    ...(site && (site.place === 'aboard') !== (machine.gravity === '0 g')
      ? [at('site', `${site.name} is ${site.place}.`, GRAVITY_OF_SITE, 'Choose a site of the same gravity.')]
      : []),
    ...(before && before.kind !== machine.kind
      ? [at('kind', `${before.name} is a ${before.kind}.`, KIND_STAYS, 'Enter it as a machine of its own.')]
      : []),
    ...unitOfProblems(machine, machines),
  ];
};

const sameName = (one: string, other: string): boolean => one.trim().toLowerCase() === other.trim().toLowerCase();

const TOLD_APART = 'On a card the machine is named: two of one name at one site could not be told apart.';
const GRAVITY_OF_SITE = 'Aboard a machine pulls in weightlessness, on the ground it is loaded in 1 g.';
const KIND_STAYS = 'Programmes and capacities count on the kind of a machine.';

const unitOfProblems = ({ groundUnitOf, gravity, kind, id }: Machine, machines: House['machines']) => {
  if (groundUnitOf === null) return [];
  const flown = machines.get(groundUnitOf);
  const fits = flown?.gravity === '0 g' && flown.kind === kind && flown.id !== id && gravity === '1 g';
  return fits
    ? []
    : [
        at(
          'groundUnitOf',
          'A ground unit stands on the ground for a machine aboard of the same kind.',
          'A capacity is carried over from one to the other at launch.',
          'Choose the machine aboard, or none.',
        ),
      ];
};

/** A millionth of a step: decimals are binary inside. */
const isWholeSteps = (load: number, increment: number): boolean =>
  Math.abs(load / increment - Math.round(load / increment)) < 1e-6;

const loadProblems = ({ least, ceiling, increment, unit }: Machine): readonly Problem[] => {
  const [low, high, step] = [least, ceiling, increment].map((text) => decimalOf(text) ?? 0) as [number, number, number];
  return [
    ...(low >= high
      ? [at('ceiling', `The most, ${ceiling} ${unit}, is not above the least, ${least} ${unit}.`, BETWEEN, CORRECT)]
      : []),
    ...(step > 0 && !isWholeSteps(low, step)
      ? [at('least', `${least} ${unit} is no whole number of steps of ${increment} ${unit}.`, WHOLE_STEPS, CORRECT)]
      : []),
  ];
};

const BETWEEN = 'Every load that is set lies between the two.';
const WHOLE_STEPS = 'What is set is counted in whole steps of the machine.';
const CORRECT = 'Correct one of them.';

const limitProblems = ({ limits, ceiling, unit }: Machine): readonly Problem[] =>
  limits.flatMap(({ exercise, attachment, most }, place) => [
    ...((decimalOf(most) ?? 0) > (decimalOf(ceiling) ?? 0)
      ? [
          at(
            `limits.${place}.most`,
            `${most} ${unit} is more than the machine gives.`,
            `Its ceiling is ${ceiling} ${unit}.`,
            'Leave the limit out, or correct it.',
          ),
        ]
      : []),
    ...(limits.slice(0, place).some((each) => each.exercise === exercise && each.attachment === attachment)
      ? [at(`limits.${place}.exercise`, 'This limit stands above already.', 'Two could differ.', 'Leave one out.')]
      : []),
  ]);

const serviceProblems = ({ outOfService }: Machine): readonly Problem[] => {
  if (outOfService === null) return [];
  const { from, until, reason } = outOfService;
  return [
    ...(until !== null && until < from
      ? [
          at(
            'outOfService.until',
            `${isoOfDay(until)} is before ${isoOfDay(from)}.`,
            'Out of service is from one day to another, both with it.',
            CORRECT,
          ),
        ]
      : []),
    ...(reason.trim() === ''
      ? [at('outOfService.reason', 'No reason is given.', 'Cards say why a lift is left out.', 'Type the reason.')]
      : []),
  ];
};

import type { Problem } from '#contract/problem.ts';
import type { Side } from '#domain/effort.ts';
import type { Fact } from '#domain/fact.ts';
import { idOf, type PersonId } from '#domain/identity.ts';
import { HAND_UNITS, type HandUnit, type Test } from '#domain/tested.ts';
import { isoOfDay, type Day } from '#units/day.ts';
import type { Entered } from '#units/entered.ts';
import type { Placed } from './fact-form.tsx';
import { typedAmount, typedDay } from './typed-values.ts';

/** One stage as it stands in the fields: watts or km/h, and what the body answered. */
export interface TypedStage {
  readonly setting: string;
  readonly heartRate: string;
  readonly uptake: string;
}

export const EMPTY_STAGE: TypedStage = { setting: '', heartRate: '', uptake: '' };
/** Three stages draw a line. */
const USUAL_STAGES = 3;
const usualStages = Array.from({ length: USUAL_STAGES }, () => EMPTY_STAGE);

/** Tests beside lifts as text, the way they stand in the fields; all but the day may be left open. */
export interface TypedTests {
  readonly day: string;
  readonly uptake: string;
  readonly how: string;
  readonly greatest: string;
  readonly resting: string;
  readonly cycle: readonly TypedStage[];
  readonly machine: string;
  readonly running: readonly TypedStage[];
  readonly handUnit: string;
  readonly gripLeft: string;
  readonly gripRight: string;
  readonly criticalLeft: string;
  readonly criticalRight: string;
  readonly jump: string;
  readonly jumpUnit: string;
  readonly raisesLeft: string;
  readonly raisesRight: string;
}

const emptyTests = (day: Day): TypedTests => ({
  day: isoOfDay(day),
  uptake: '',
  how: 'measured',
  greatest: '',
  resting: '',
  cycle: usualStages,
  machine: '',
  running: usualStages,
  handUnit: 'kg',
  gripLeft: '',
  gripRight: '',
  criticalLeft: '',
  criticalRight: '',
  jump: '',
  jumpUnit: 'cm',
  raisesLeft: '',
  raisesRight: '',
});

export const startOfTests = (today: Day, correcting: Fact<'tested'> | null): TypedTests =>
  correcting === null ? emptyTests(today) : { ...emptyTests(correcting.day), ...typedTest(correcting.test) };

const typedTest = (test: Test): Partial<TypedTests> => {
  switch (test.what) {
    case 'greatest oxygen uptake':
      return { uptake: test.value.text, how: test.how };
    case 'greatest heart rate':
      return { greatest: test.value.text };
    case 'resting heart rate':
      return { resting: test.value.text };
    case 'cycle stage':
      return { cycle: [typedStage(test.watts, test)], machine: test.machine ?? '' };
    case 'running stage':
      return { running: [typedStage(test.speed, test)] };
    case 'greatest grip':
      return { [test.side === 'left' ? 'gripLeft' : 'gripRight']: test.value.text, handUnit: test.value.unit };
    case 'critical force':
      return { [test.side === 'left' ? 'criticalLeft' : 'criticalRight']: test.value.text, handUnit: test.value.unit };
    case 'jump height':
      return { jump: test.value.text, jumpUnit: test.value.unit };
    case 'heel raises':
      return { [test.side === 'left' ? 'raisesLeft' : 'raisesRight']: test.value.text };
  }
};

const typedStage = (
  setting: Entered<string>,
  { heartRate, uptake }: { readonly heartRate: Entered<string> | null; readonly uptake: Entered<string> | null },
): TypedStage => ({ setting: setting.text, heartRate: heartRate?.text ?? '', uptake: uptake?.text ?? '' });

interface PlacedTest {
  readonly at: string;
  readonly test: Test;
}

/** Where a number was typed there is a test; nothing typed is no test. */
const oneOf = <Unit extends string>(
  at: string,
  text: string,
  unit: Unit,
  problems: Problem[],
  make: (value: Entered<Unit>) => Test,
): readonly PlacedTest[] => {
  if (text.trim() === '') return [];
  const value = typedAmount(text, unit, `${at}.test.value.text`, problems);
  return value === null ? [] : [{ at, test: make(value) }];
};

const enduranceTests = (typed: TypedTests, problems: Problem[]): readonly PlacedTest[] => [
  ...oneOf('uptake', typed.uptake, 'mL/(kg min)', problems, (value) => ({
    what: 'greatest oxygen uptake',
    value,
    how: typed.how === 'estimated' ? 'estimated' : 'measured',
  })),
  ...oneOf('greatest', typed.greatest, '1/min', problems, (value) => ({ what: 'greatest heart rate', value })),
  ...oneOf('resting', typed.resting, '1/min', problems, (value) => ({ what: 'resting heart rate', value })),
  ...typed.cycle.flatMap((stage, place) => cycleStage(`cycle.${place}`, stage, typed.machine, problems)),
  ...typed.running.flatMap((stage, place) => runningStage(`running.${place}`, stage, problems)),
];

const isEmpty = ({ setting, heartRate, uptake }: TypedStage): boolean =>
  `${setting}${heartRate}${uptake}`.trim() === '';

const answers = (at: string, { heartRate, uptake }: TypedStage, problems: Problem[]) => {
  const optional = <Unit extends string>(text: string, unit: Unit, field: string): Entered<Unit> | null =>
    text.trim() === '' ? null : typedAmount(text, unit, `${at}.test.${field}.text`, problems);
  return {
    heartRate: optional(heartRate, '1/min', 'heartRate'),
    uptake: optional(uptake, 'mL/(kg min)', 'uptake'),
  };
};

const cycleStage = (at: string, stage: TypedStage, machine: string, problems: Problem[]): readonly PlacedTest[] => {
  if (isEmpty(stage)) return [];
  const watts = typedAmount(stage.setting, 'W', `${at}.test.watts.text`, problems);
  const beside = answers(at, stage, problems);
  return watts === null
    ? []
    : [
        {
          at,
          test: { what: 'cycle stage', watts, ...beside, machine: machine === '' ? null : idOf<'machine'>(machine) },
        },
      ];
};

const runningStage = (at: string, stage: TypedStage, problems: Problem[]): readonly PlacedTest[] => {
  if (isEmpty(stage)) return [];
  const speed = typedAmount(stage.setting, 'km/h', `${at}.test.speed.text`, problems);
  const beside = answers(at, stage, problems);
  return speed === null ? [] : [{ at, test: { what: 'running stage', speed, ...beside } }];
};

const handUnitOf = (text: string): HandUnit => HAND_UNITS.find((unit) => unit === text) ?? 'kg';

const handAndLegTests = (typed: TypedTests, problems: Problem[]): readonly PlacedTest[] => {
  const unit = handUnitOf(typed.handUnit);
  const hand = (at: string, text: string, what: 'greatest grip' | 'critical force', side: Side) =>
    oneOf(at, text, unit, problems, (value) => ({ what, side, value }));
  const raises = (at: string, text: string, side: Side) =>
    oneOf(at, text, 'repetitions', problems, (value) => ({ what: 'heel raises', side, value }));
  return [
    ...hand('gripLeft', typed.gripLeft, 'greatest grip', 'left'),
    ...hand('gripRight', typed.gripRight, 'greatest grip', 'right'),
    ...hand('criticalLeft', typed.criticalLeft, 'critical force', 'left'),
    ...hand('criticalRight', typed.criticalRight, 'critical force', 'right'),
    ...oneOf('jump', typed.jump, typed.jumpUnit === 'in' ? 'in' : 'cm', problems, (value) => ({
      what: 'jump height',
      value,
    })),
    ...raises('raisesLeft', typed.raisesLeft, 'left'),
    ...raises('raisesRight', typed.raisesRight, 'right'),
  ];
};

const NOTHING_TYPED: Problem = {
  field: 'tests',
  what: 'No test is typed.',
  why: 'Each number may be left open, but not all of them.',
  whatToDo: 'Type at least one.',
};

/** Every test that was typed, each with the place where it stands, or null with every problem said. */
export const testsOf = (typed: TypedTests, person: PersonId, problems: Problem[]): readonly Placed[] | null => {
  const day = typedDay(typed.day, 'day', problems);
  const tests = [...enduranceTests(typed, problems), ...handAndLegTests(typed, problems)];
  if (tests.length === 0 && problems.length === 0) problems.push(NOTHING_TYPED);
  return day === null || problems.length > 0
    ? null
    : tests.map(({ at, test }) => ({ at, body: { kind: 'tested', person, day, test } }));
};

/** The tests that are taken in one sitting, and stand in one form. */
const OF_ENDURANCE: readonly Test['what'][] = [
  'greatest oxygen uptake',
  'greatest heart rate',
  'resting heart rate',
  'cycle stage',
  'running stage',
];
export const isOfEndurance = (what: Test['what']): boolean => OF_ENDURANCE.includes(what);

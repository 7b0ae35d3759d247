import { formula, type FormulaRecord } from '../formula.ts';
import { bodyMass, load, ratio } from '../inputs.ts';
import type { Curve } from '../plot.ts';
import { COMMON_PRACTICE, LEE_2004, OUR_OWN_DESIGN } from '../sources.ts';
import {
  barLoad,
  fraction,
  kilograms,
  machineLoad,
  type BarLoad,
  type Fraction,
  type Kilograms,
  type MachineLoad,
} from '#units/quantity.ts';

/** The crossing: from a load weighed in 1 g to the pull of a machine on a weightless person, and back. */

const programmeFraction = ratio('programme fraction', 'p', [0, 1.5], [0.3, 1]);
const effortStep = ratio('effort step', 'e', [0, 1.2], [0.8, 1]);
const shareStep = ratio('step of body weight added back', 'a', [0, 1.2], [0.6, 1]);
const share = ratio('share of body weight', 's', [0, 1]);
const workShare = ratio('work-matched share', 's_work', [0, 1]);
const maximum = load('maximum', 'R', [0.1, 1000], [10, 400]);
const machine = load('machine load', 'L');
const bar = load('bar', 'bar');

const NO_ONE_SHARE =
  'Work, moments and the load on each joint ask for different shares; no single one restores the lift.';

type Written = Pick<FormulaRecord, 'title' | 'equation' | 'inputs'> & Partial<FormulaRecord>;

const record = (id: string, symbol: string, unit: string, written: Written): FormulaRecord => ({
  id: `crossing/${id}`,
  revision: 1,
  output: { name: id.replaceAll('-', ' '), symbol, unit },
  source: OUR_OWN_DESIGN,
  restsOn: [LEE_2004],
  doesNotKnow: NO_ONE_SHARE,
  ...written,
});

/** The steps of both ramps, as they are drawn. */
const RAMP: readonly (readonly [effort: number, share: number])[] = [
  [0.8, 0.6],
  [0.85, 0.7],
  [0.9, 0.8],
  [0.95, 0.9],
  [1, 1],
];

interface DrawnPerson {
  readonly maximum: number;
  readonly mass: number;
}

/** Two invented people, drawn at a share of 0.717 and a programme fraction of 0.78. */
const DRAWN_PEOPLE: readonly [DrawnPerson, DrawnPerson] = [
  { maximum: 105, mass: 71 },
  { maximum: 80, mass: 88 },
];
const DRAWN_SHARE = fraction(0.717);
const DRAWN_FRACTION = fraction(0.78);

const rampStep = ([effort, step]: (typeof RAMP)[number], { maximum: of, mass }: DrawnPerson) => {
  const part = barPart(fraction(effort), DRAWN_FRACTION, barLoad(of));
  const added = bodyWeightAdded(fraction(step), DRAWN_SHARE, kilograms(mass));
  return { bar: part, added, target: machineTarget(part, added) };
};

/** Bar of a 1-g set [kg]. */
export const barOfFraction = formula(
  record('bar-of-fraction', 'bar', 'kg', {
    title: 'Bar of a 1-g set [kg]',
    equation: 'p · R',
    inputs: [programmeFraction, maximum],
    source: COMMON_PRACTICE,
    restsOn: [],
    doesNotKnow: 'How many repetitions this person reaches at this fraction.',
  }),
  (part: Fraction, of: BarLoad): BarLoad => barLoad(part * of),
);

/** Fraction of the maximum that a bar load is. */
export const fractionOfBar = formula(
  record('fraction-of-bar', 'p', '1', {
    title: 'Fraction of the maximum that a bar load is',
    equation: 'bar / R',
    inputs: [bar, maximum],
    source: COMMON_PRACTICE,
    restsOn: [],
    doesNotKnow: 'How many repetitions this person reaches at this fraction.',
  }),
  (done: BarLoad, of: BarLoad): Fraction => fraction(done / of),
);

/** What the programme asks for at the bar [kg]. */
export const barPart = formula(
  record('bar-part', 'bar', 'kg', {
    title: 'What the programme asks for at the bar [kg]',
    equation: 'e · p · R',
    inputs: [effortStep, programmeFraction, maximum],
    doesNotKnow: 'Whether strength is still what it was when the maximum was read.',
  }),
  (step: Fraction, part: Fraction, of: BarLoad): BarLoad => barLoad(step * part * of),
);

/** Body weight added back [kg]. */
export const bodyWeightAdded = formula(
  record('body-weight-added', 'added', 'kg', {
    title: 'Body weight added back [kg]',
    equation: 'a · s · W',
    inputs: [shareStep, share, bodyMass()],
  }),
  (step: Fraction, of: Fraction, mass: Kilograms): Kilograms => kilograms(step * of * mass),
);

/** Pull that the machine should give [kg]. */
export const machineTarget = formula(
  record('machine-target', 'target', 'kg', {
    title: 'Pull that the machine should give [kg]',
    equation: 'bar + added',
    inputs: [bar, load('body weight added', 'added')],
    plot: {
      says: 'Five steps of both ramps, one a week at the soonest: the bar and the body weight added back climb together to the whole target.',
      x: { name: 'step of both ramps', unit: '' },
      y: { name: 'load', unit: 'kg' },
      curves: (): readonly Curve[] => {
        const steps = RAMP.map((each) => rampStep(each, DRAWN_PEOPLE[0]));
        return (['bar', 'added', 'target'] as const).map((part) => ({
          label: { bar: 'at the bar', added: 'body weight added', target: 'target of the machine' }[part],
          points: steps.map((step, place) => [place + 1, step[part]]),
        }));
      },
    },
  }),
  (part: BarLoad, added: Kilograms): MachineLoad => machineLoad(part + added),
);

/** What limits and rounding took off the target [kg]. */
export const cappedOff = formula(
  record('capped-off', 'capped off', 'kg', {
    title: 'What limits and rounding took off the target [kg]',
    equation: 'target − load',
    inputs: [load('target', 'target'), load('load', 'load')],
    doesNotKnow: 'Where else the missing work is made up. Below zero, rounding went up.',
  }),
  (target: MachineLoad, chosen: MachineLoad): Kilograms => kilograms(target - chosen),
);

/** What a machine load is worth at the bar in 1 g [kg]. */
export const barEquivalent = formula(
  record('bar-equivalent', 'bar-equivalent', 'kg', {
    title: 'What a machine load is worth at the bar in 1 g [kg]',
    equation: 'L − s_work · W',
    inputs: [machine, workShare, bodyMass()],
  }),
  (pull: MachineLoad, of: Fraction, mass: Kilograms): BarLoad => barLoad(pull - of * mass),
);

/** Fraction of the maximum that a machine load is worth. */
export const trueFraction = formula(
  record('true-fraction', 'true fraction', '1', {
    title: 'Fraction of the maximum that a machine load is worth',
    equation: '(L − s_work · W) / R',
    inputs: [machine, workShare, bodyMass(), maximum],
    plot: {
      says: 'While body weight is only partly added back, the same steps are worth less to a heavy or weaker person: both prescribe 78 %, and neither lifts it before the fifth step.',
      x: { name: 'step of both ramps', unit: '' },
      y: { name: 'true fraction of the maximum', unit: '1' },
      curves: (): readonly Curve[] =>
        DRAWN_PEOPLE.map((person) => ({
          label: `maximum ${person.maximum} kg at ${person.mass} kg body mass`,
          points: RAMP.map((each, place) => {
            const { target } = rampStep(each, person);
            return [
              place + 1,
              trueFraction(target, DRAWN_SHARE, kilograms(person.mass), barLoad(person.maximum)),
            ] as const;
          }),
        })),
    },
  }),
  (pull: MachineLoad, of: Fraction, mass: Kilograms, reference: BarLoad): Fraction =>
    fraction((pull - of * mass) / reference),
);

/** Programme fraction that a machine load stands for, walked back through both ramps. */
export const programmeFractionOf = formula(
  record('programme-fraction', 'p', '1', {
    title: 'Programme fraction that a machine load stands for, walked back through both ramps',
    equation: '(L − a · s · W) / (e · R)',
    inputs: [machine, shareStep, share, bodyMass(), ratio('effort step', 'e', [0.01, 1.2], [0.8, 1]), maximum],
  }),
  (pull: MachineLoad, step: Fraction, of: Fraction, mass: Kilograms, effort: Fraction, reference: BarLoad): Fraction =>
    fraction((pull - step * of * mass) / (effort * reference)),
);

/** Of body mass: a pull must stand this far above the share before it says anything of strength. */
const EVIDENCE_MARGIN = 0.05;

/** Machine load above which a set is evidence of strength [kg]. */
export const evidenceFloor = formula(
  record('evidence-floor', 'L_min', 'kg', {
    title: 'Machine load above which a set is evidence of strength [kg]',
    equation: '(s_work + 0.05) W',
    inputs: [workShare, bodyMass()],
    doesNotKnow: 'Near the floor a small error of the share is a large one of the bar-equivalent.',
  }),
  (of: Fraction, mass: Kilograms): MachineLoad => machineLoad((of + EVIDENCE_MARGIN) * mass),
);

/** Whether a machine load stands far enough above the share of body weight to say anything of strength. */
export const carriesEvidence = (pull: MachineLoad, of: Fraction, mass: Kilograms): boolean =>
  pull > evidenceFloor(of, mass);

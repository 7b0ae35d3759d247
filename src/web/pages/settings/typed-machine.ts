import type { Problem } from '#contract/problem.ts';
import type { HouseWindow } from '#contract/windows/house-window.ts';
import { MACHINE_KINDS, type Machine, type MachineKind } from '#domain/catalogue.ts';
import { idOf } from '#domain/identity.ts';
import { massUnitOf } from '../record/amount-fields.tsx';
import { chosenFrom, typedAmount, typedNumber, typedWords } from '../record/typed-values.ts';
import type { Labels } from './at-its-field.ts';

export interface TypedLimit {
  readonly key: string;
  readonly exercise: string;
  readonly attachment: string;
  readonly most: string;
}

/** A machine as text, the way it stands in the fields. */
export interface TypedMachine {
  readonly name: string;
  readonly site: string;
  readonly kind: string;
  readonly groundUnitOf: string;
  readonly unit: string;
  readonly increment: string;
  readonly least: string;
  readonly ceiling: string;
  readonly mostWatts: string;
  readonly mostSpeed: string;
  readonly limits: readonly TypedLimit[];
  readonly setUp: string;
  readonly stow: string;
  readonly changeExercise: string;
  readonly changeLoad: string;
}

export type TextOfMachine = Exclude<keyof TypedMachine, 'limits'>;

export const typedMachineOf = (machine: Machine | null): TypedMachine => ({
  name: machine?.name ?? '',
  site: machine?.site ?? '',
  kind: machine?.kind ?? 'free bar',
  groundUnitOf: machine?.groundUnitOf ?? '',
  unit: machine?.unit ?? 'kg',
  increment: machine?.increment ?? '',
  least: machine?.least ?? '',
  ceiling: machine?.ceiling ?? '',
  mostWatts: textOf(machine?.mostWatts),
  mostSpeed: textOf(machine?.mostSpeed),
  limits: (machine?.limits ?? []).map(({ exercise, attachment, most }) => ({
    key: `${exercise} ${attachment ?? ''}`,
    exercise,
    attachment: attachment ?? '',
    most,
  })),
  setUp: textOf(machine?.minutes.setUp),
  stow: textOf(machine?.minutes.stow),
  changeExercise: textOf(machine?.minutes.changeExercise),
  changeLoad: textOf(machine?.minutes.changeLoad),
});

const textOf = (value: number | null | undefined): string => (typeof value === 'number' ? String(value) : '');

/** A cycle and a rower are set in watts; a treadmill's load is what the harness pulls. */
export const isLoaded = (kind: string): boolean => kind !== 'cycle' && kind !== 'rower';
export const hasWatts = (kind: string): boolean => kind === 'cycle' || kind === 'rower';
export const hasSpeed = (kind: string): boolean => kind === 'treadmill';

/** Where nothing is loaded, least, ceiling and step only fill the entry. */
const NOTHING_LOADED = { unit: 'lb', increment: '1', least: '0', ceiling: '1', limits: [] } as const;

/** The machine that the fields come to, or null with every problem said. Unit, step and gravity stay as they were. */
export const machineOf = (
  typed: TypedMachine,
  before: Machine | null,
  house: HouseWindow,
  problems: Problem[],
): Machine | null => {
  const at = (field: string): string => `entry.machine.${field}`;
  const name = typedWords(typed.name, at('name'), problems);
  const site = chosenFrom(house.sites, typed.site, at('site'), problems);
  const kind = MACHINE_KINDS.find((each) => each === typed.kind);
  const loads = kind && (isLoaded(kind) ? loadsOf(typed, before, house, problems) : keptOr(before));
  const minutes = minutesOf(typed, problems);
  const mostWatts = numberOrNone(hasWatts(typed.kind) ? typed.mostWatts : '', at('mostWatts'), problems);
  const mostSpeed = numberOrNone(hasSpeed(typed.kind) ? typed.mostSpeed : '', at('mostSpeed'), problems);
  if (name === null || site === null || !kind || !loads || minutes === null || problems.length > 0) return null;
  return {
    id: before?.id ?? idOf(crypto.randomUUID()),
    name,
    site: site.id,
    kind,
    gravity: before?.gravity ?? (site.place === 'aboard' ? '0 g' : '1 g'),
    groundUnitOf: flownOf(typed, kind, site.place, house)?.id ?? null,
    ...loads,
    mostWatts,
    mostSpeed,
    minutes,
    outOfService: before?.outOfService ?? null,
  };
};

/** Machines aboard whose ground unit this one may be. */
export const flownMachines = (house: HouseWindow, kind: string): readonly Machine[] =>
  house.machines.filter((each) => each.gravity === '0 g' && each.kind === kind);

const flownOf = (typed: TypedMachine, kind: MachineKind, place: 'ground' | 'aboard', house: HouseWindow) =>
  place === 'ground' ? flownMachines(house, kind).find(({ id }) => id === typed.groundUnitOf) : undefined;

type Loads = Pick<Machine, 'unit' | 'increment' | 'least' | 'ceiling' | 'limits'>;

const keptOr = (before: Machine | null): Loads => {
  if (before === null) return NOTHING_LOADED;
  const { unit, increment, least, ceiling, limits } = before;
  return { unit, increment, least, ceiling, limits };
};

const loadsOf = (
  typed: TypedMachine,
  before: Machine | null,
  house: HouseWindow,
  problems: Problem[],
): Loads | null => {
  const amount = (text: string, field: string): string | null =>
    typedAmount(text, '', `entry.machine.${field}`, problems)?.text ?? null;
  const increment = before?.increment ?? amount(typed.increment, 'increment');
  const [least, ceiling] = [amount(typed.least, 'least'), amount(typed.ceiling, 'ceiling')];
  const limits = typed.limits.flatMap(({ exercise, attachment, most }, place) => {
    const chosen = chosenFrom(house.exercises, exercise, `entry.machine.limits.${place}.exercise`, problems);
    const load = amount(most, `limits.${place}.most`);
    const hung = attachment.trim() === '' ? null : attachment.trim();
    return chosen && load !== null ? [{ exercise: chosen.id, attachment: hung, most: load }] : [];
  });
  if (increment === null || least === null || ceiling === null || limits.length < typed.limits.length) return null;
  return { unit: before?.unit ?? massUnitOf(typed.unit), increment, least, ceiling, limits };
};

const minutesOf = (typed: TypedMachine, problems: Problem[]): Machine['minutes'] | null => {
  const of = (key: keyof Machine['minutes']): number | null =>
    typedNumber(typed[key], `entry.machine.minutes.${key}`, problems);
  const [setUp, stow, changeExercise] = [of('setUp'), of('stow'), of('changeExercise')];
  const changeLoad = of('changeLoad');
  if (setUp === null || stow === null || changeExercise === null || changeLoad === null) return null;
  return { setUp, stow, changeExercise, changeLoad };
};

const numberOrNone = (text: string, field: string, problems: Problem[]): number | null =>
  text.trim() === '' ? null : typedNumber(text, field, problems);

/** The fields of the form, as refusals call them, with so many rows of limits. */
export const machineLabels = (limits: number): Labels => ({
  'entry.machine.name': 'Name',
  'entry.machine.site': 'Site',
  'entry.machine.kind': 'Kind',
  'entry.machine.groundUnitOf': 'Ground unit of',
  'entry.machine.increment': 'One step',
  'entry.machine.least': 'Least',
  'entry.machine.ceiling': 'Ceiling',
  'entry.machine.mostWatts': 'Most watts',
  'entry.machine.mostSpeed': 'Fastest',
  'entry.machine.minutes.setUp': 'Set-up',
  'entry.machine.minutes.stow': 'Stow',
  'entry.machine.minutes.changeExercise': 'Change of exercise',
  'entry.machine.minutes.changeLoad': 'Change of load',
  ...Object.fromEntries(
    Array.from({ length: limits }, (_, place) => `entry.machine.limits.${place}`).flatMap((at) => [
      [`${at}.exercise`, 'Limited exercise'] as const,
      [`${at}.attachment`, 'Attachment'] as const,
      [`${at}.most`, 'At most'] as const,
    ]),
  ),
});

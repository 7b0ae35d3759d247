import type { Day } from '#units/day.ts';
import type { Card, CardItem, CardLift } from '#domain/card.ts';
import type { ItemId } from '#domain/identity.ts';
import type { Known } from '#domain/known.ts';
import type { Road } from '#domain/road.ts';
import type { FormulaText, Origin, Working } from '#domain/working.ts';
import { frozenCapacity } from './frozen-capacity.ts';
import { PIECE_RECKONINGS, spellOut } from './piece-reckonings.ts';
import { ROW_WIDTH, setReckoning } from './rows.ts';
import { massInFlight, planContext, replacementPolicy, type PlanContext } from './plan-context.ts';

/** The working behind an item of a day: of an issued card as it was issued, else as it stands now. */
export const workingsOf = (known: Known, road: Road, day: Day, item: ItemId): readonly Working[] => {
  const found = road.cards.filter((each) => each.day === day).at(-1);
  if (!found) return [];
  if (found.state === 'issued') return found.record.document.workings.filter((working) => working.item === item);
  const planned = found.card.items.find((each) => each.item === item);
  return planned ? workingsOfItem(known, road, found.card, planned) : [];
};

/** Where the reckonings of planned items stand. */
export type Reckonings = Pick<Road, 'rows' | 'pieces'>;

export const workingsOfItem = (
  known: Known,
  { rows, pieces }: Reckonings,
  card: Card,
  item: CardItem,
): readonly Working[] => {
  if (item.kind === 'lift') return workingsOfLift(known, rows, card, item);
  const filled = item.row === null ? [] : (pieces[item.row] ?? []);
  return filled.flatMap((row) => spellOut(row, item.item));
};

const workingsOfLift = (known: Known, rows: Float64Array, card: Card, item: CardLift): readonly Working[] => {
  const machine = known.house.machines.get(item.machine);
  if (item.row === null || !machine) return [];
  const offset = item.row * ROW_WIDTH;
  const { reckoning } = setReckoning(machine);
  const context = planContext(known);
  return [
    {
      reckoning: reckoning.name,
      item: item.item,
      given: reckoning.givens.map((name, place) => ({
        name,
        value: rows[offset + place] as number,
        from: originOf(context, card, item, name),
      })),
      cells: reckoning.spell(rows, offset),
    },
  ];
};

const originOf = (context: PlanContext, card: Card, item: CardLift, name: string): Origin => {
  const { known } = context;
  switch (name) {
    case 'effort step':
      return item.ramp
        ? { kind: 'policy', says: `step ${item.ramp.effortStep + 1} of the effort ramp` }
        : { kind: 'policy', says: 'top of the effort ramp' };
    case 'share step':
      return item.ramp
        ? { kind: 'policy', says: `step ${item.ramp.shareStep + 1} of the ramp of added body weight` }
        : { kind: 'policy', says: 'top of the ramp of added body weight' };
    case 'programme fraction':
      return {
        kind: 'programme',
        programme: card.programme.id,
        item: item.item,
        says: `${card.programme.name}, version ${card.programme.number}`,
      };
    case 'maximum':
      return maximumOrigin(context, card, item);
    case 'share':
      return shareOrigin(context, item);
    case 'work share':
      return { kind: 'model', formula: 'body/work-share', says: 'planar segment model, de Leva 1996' };
    case 'body mass':
      return massOrigin(context, card);
    default:
      return {
        kind: 'rounding',
        says: `target to the nearest step, every limit down, the least of them: ${known.house.machines.get(item.machine)?.name ?? 'machine'}`,
      };
  }
};

const maximumOrigin = (context: PlanContext, card: Card, item: CardLift): Origin => {
  const exercise = context.known.house.exercises.get(item.exercise);
  const machine = context.known.house.machines.get(item.machine);
  const frozen = exercise && machine ? frozenCapacity(context, exercise, machine, card.day) : null;
  if (frozen?.reading.kind !== 'estimate') return { kind: 'policy', says: 'no estimate' };
  const { estimate } = frozen.reading;
  const what = estimate.of === 1 ? 'one-repetition maximum' : `${estimate.of}-repetition maximum`;
  return {
    kind: 'estimate',
    exercise: item.exerciseName,
    facts: estimate.facts,
    says: `${what}, ${estimate.basis}, read at ${frozen.cause.kind}`,
  };
};

const shareOrigin = (context: PlanContext, item: CardLift): Origin => {
  const exercise = context.known.house.exercises.get(item.exercise);
  const policy = exercise ? replacementPolicy(context, exercise) : 'work-matched';
  const signed = context.decisions.findLast(
    ({ decision }) => decision.kind === 'replace body weight' && decision.exercise === item.exercise,
  );
  const says = typeof policy === 'string' ? `${policy} replacement` : 'own share';
  return signed ? { kind: 'decision', fact: signed.id, says } : { kind: 'model', formula: 'body/work-share', says };
};

const massOrigin = (context: PlanContext, card: Card): Origin => {
  const mass = massInFlight(context, card.day);
  return mass ? { kind: 'fact', fact: mass.fact, says: mass.says } : { kind: 'policy', says: 'no body mass' };
};

const SET_RECKONINGS = [setReckoning({ gravity: '0 g' }).reckoning, setReckoning({ gravity: '1 g' }).reckoning];

/** Texts of the formulas that a set of workings uses, as they stand today. */
export const formulasOf = (workings: readonly Working[]): readonly FormulaText[] => {
  const used = new Set(workings.flatMap((working) => working.cells.map((cell) => cell.formula)));
  const formulas = [...SET_RECKONINGS, ...PIECE_RECKONINGS].flatMap((reckoning) => reckoning.formulas);
  return [...new Map(formulas.map((formula) => [formula.record.id, formula] as const)).values()]
    .filter(({ record }) => used.has(record.id))
    .map(({ record }) => ({
      id: record.id,
      revision: record.revision,
      title: record.title,
      equation: record.equation,
      source: record.source.text,
      status: record.source.status,
      doesNotKnow: record.doesNotKnow,
    }));
};

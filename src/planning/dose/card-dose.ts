import { kilogramsOf } from '#units/entered.ts';
import type { Card, CardItem, CardLift } from '#domain/card.ts';
import type { Fact } from '#domain/fact.ts';
import type { IssuedCard } from '#domain/issued-card.ts';
import type { Known } from '#domain/known.ts';
import type { Road, RoadCard } from '#domain/road.ts';
import { ROW_WIDTH, setReckoning } from '../rows.ts';
import { zoneReader } from './bout-zone.ts';
import { itemDose, partOf, type DoseReading, type ItemDose } from './item-dose.ts';

/** What a card of the road adds to its week: as planned, and what was recorded of it; null while nothing was. */
export interface CardDose {
  readonly day: Road['today'];
  /** Of an easier week, or a light day: it holds less on purpose. */
  readonly isEasier: boolean;
  readonly planned: readonly ItemDose[];
  readonly done: readonly ItemDose[] | null;
}

export const cardDoses = (known: Known, road: Road, cards: readonly RoadCard[]): readonly CardDose[] => {
  const zoneOf = zoneReader(known, road.today);
  return cards.map((each): CardDose => {
    const reading = { zoneOf, fractionOf: fractionReader(known, road, each) };
    if (each.state !== 'issued')
      return {
        day: each.day,
        isEasier: each.card.deload,
        planned: doseOf(known, each.card.items, reading),
        done: null,
      };
    const { document, trained } = each.record;
    const { items, deload } = document.card;
    const done = trained && doneOf(known, document, trained, reading);
    return { day: each.day, isEasier: deload, planned: doseOf(known, items, reading), done };
  });
};

const doseOf = (known: Known, items: Card['items'], reading: DoseReading): readonly ItemDose[] =>
  items.flatMap((item) => doseOfOne(known, item, reading) ?? []);

const doseOfOne = (known: Known, item: CardItem, reading: DoseReading): ItemDose | null => {
  const exercise = known.house.exercises.get(item.exercise);
  return exercise ? itemDose(item, exercise, reading) : null;
};

const doneOf = (
  known: Known,
  document: IssuedCard,
  trained: Fact<'trained'>,
  reading: DoseReading,
): readonly ItemDose[] =>
  document.card.items.flatMap((item) => {
    const dose = doseOfOne(known, item, reading);
    if (!dose) return [];
    return [item.kind === 'lift' ? liftDone(dose, item, document, trained) : partOf(dose, pieceDone(item, trained))];
  });

const liftDone = (dose: ItemDose, item: CardLift, document: IssuedCard, trained: Fact<'trained'>): ItemDose => {
  const work = new Set(
    document.sets.filter((set) => set.item === item.item && item.sets[set.place]?.kind === 'work').map(({ id }) => id),
  );
  const must = item.sets.filter(({ kind, optional }) => kind === 'work' && !optional).length;
  const done = trained.sets.filter(({ set, repetitions }) => work.has(set) && repetitions > 0);
  const kilograms = done.reduce((sum, { load, repetitions }) => sum + kilogramsOf(load) * repetitions, 0);
  return {
    ...partOf(dose, must === 0 ? 0 : done.length / must),
    volume: dose.volume && { ...dose.volume, kilograms },
  };
};

const pieceDone = (item: Exclude<CardItem, CardLift>, { pieces }: Fact<'trained'>): number => {
  const of = item.kind === 'bouts' ? item.bouts.length : item.sets.length;
  const done = pieces.find((piece) => piece.item === item.item)?.done ?? 0;
  return of === 0 ? 0 : Math.min(1, done / of);
};

const PROGRAMME_FRACTION = setReckoning({ gravity: '0 g' }).reckoning.givens.indexOf('programme fraction');

/** Issued and issuable loads count as they are; what is only expected counts as its programme means it, the ramps behind. */
const fractionReader =
  (known: Known, road: Road, each: RoadCard): DoseReading['fractionOf'] =>
  (item) => {
    if (each.state === 'issued') {
      const working = each.record.document.workings.find((one) => one.item === item.item);
      return working?.cells.find(({ name }) => name === 'true fraction')?.value ?? null;
    }
    const machine = known.house.machines.get(item.machine);
    if (!machine || item.row === null) return null;
    const isMeant = each.state === 'expected' && machine.gravity === '0 g';
    const place = isMeant ? PROGRAMME_FRACTION : setReckoning(machine).trueFraction;
    return road.rows[item.row * ROW_WIDTH + place] ?? null;
  };

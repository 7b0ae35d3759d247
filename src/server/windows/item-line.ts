import { workIncrements, type CardItem, type CardLift, type CardSet } from '#domain/card.ts';
import type { Known } from '#domain/known.ts';
import { only, type SetGroup, type Span, type TypedLoad } from '#domain/prescription.ts';
import type { LiftItem, ProgrammeItem, ProgrammeSet } from '#domain/programme.ts';
import { targetOfLift } from '#domain/programme-line/lift-line.ts';
import { groupsOf } from '#domain/programme-line/set-groups.ts';
import { writeShorthand } from '#domain/shorthand/write-shorthand.ts';
import { lineOfBouts, lineOfCardDrill, lineOfDrill } from '#domain/piece-line.ts';

/** An item of a card as the line that would write it: what somebody who edits it begins from. */
export const itemLine = (known: Known, item: CardItem): string | null => {
  if (item.asWritten !== null) return item.asWritten;
  const programmed = programmedItem(known, item);
  if (item.kind === 'lift') return liftLine(item, programmed?.kind === 'lift' ? programmed : null);
  if (item.kind === 'bouts') return programmed?.kind === 'bouts' ? lineOfBouts(programmed) : null;
  const perSide = known.house.exercises.get(item.exercise)?.perSide ?? false;
  return programmed?.kind === 'drill' ? lineOfDrill(programmed, perSide) : lineOfCardDrill(item);
};

const programmedItem = ({ house }: Known, { item }: CardItem): ProgrammeItem | null =>
  [...house.programmes.values()]
    .flatMap(({ phases }) => phases.flatMap(({ sessions }) => sessions.flatMap((session) => session.items)))
    .find(({ id }) => id === item) ?? null;

const liftLine = (item: CardLift, programmed: LiftItem | null): string => {
  const side = item.sets.find((set) => set.kind === 'work')?.side ?? null;
  const work = item.sets.filter((set) => set.kind === 'work' && set.side === side);
  return writeShorthand({
    kind: 'sets',
    superset: programmed?.superset ?? item.superset?.letter ?? null,
    groups: groupsOf(setsOf(work, programmed), targetOf(item, programmed), side !== null),
    tempo: item.tempo,
    rest: programmed?.sets[0]?.rest ?? work[0]?.rest ?? null,
  });
};

/** Lighter sets by what the programme takes off, which the machine rounds; without one, by what the card shows. */
const setsOf = (work: readonly CardSet[], programmed: LiftItem | null): readonly ProgrammeSet[] => {
  const first = work[0]?.load.increments ?? 0;
  return work.map(({ repetitions, most, orMore, optional, rest, load }, place) => {
    const shown = first > 0 ? Math.round((load.increments / first) * HUNDRED) / HUNDRED : 1;
    const loadBy = programmed?.sets[place]?.loadBy ?? shown;
    return {
      repetitions,
      ...(most === undefined ? {} : { most }),
      ...(orMore ? { orMore } : {}),
      ...(optional ? { optional } : {}),
      rest,
      ...(loadBy === 1 ? {} : { loadBy }),
    };
  });
};

const HUNDRED = 100;

type GroupTarget = Pick<SetGroup, 'load' | 'intensity'>;

const targetOf = (item: CardLift, programmed: LiftItem | null): GroupTarget => {
  if (item.basis === 'effort') {
    if (programmed?.basis.kind === 'effort') return targetOfLift(programmed);
    const load = item.sets.find((set) => set.load.kind === 'start at')?.load;
    const [least, most] = load?.kind === 'start at' ? load.rpe : item.shouldFeel;
    return { load: null, intensity: { kind: 'RPE', rating: { least, most } } };
  }
  const of = programmed && fractionOf(programmed);
  return item.basis === 'fraction' && of !== null
    ? { load: null, intensity: { kind: 'of maximum', of } }
    : { load: loadOf(item), intensity: null };
};

const fractionOf = ({ basis }: LiftItem): Span | null => {
  if (basis.kind === 'fraction') return only(basis.of);
  return basis.kind === 'from last' && basis.start !== 'effort' ? only(basis.start) : null;
};

const loadOf = (item: CardLift): TypedLoad => ({
  text: String(Number(((workIncrements(item) ?? 0) * Number(item.increment)).toFixed(6))),
  unit: item.unit,
});

import type { SheetCell, SheetColumn, SheetWindow } from '#contract/windows/sheet-window.ts';
import { ratingOf, type Effort } from '#domain/effort.ts';
import type { Fact, PieceResult } from '#domain/fact.ts';
import type { MassUnit } from '#units/mass.ts';
import { showIncrements } from '../../parts/loads.ts';
import { itemsOf } from './grid-places.ts';
import type { PieceDraft, PlannedPiece, PlannedSet, ResultsDraft } from './results-draft.ts';

/** The work sets of an issued session; a planned one has none that results could point to. */
export const plannedSets = (sheet: SheetWindow, column: SheetColumn): readonly PlannedSet[] =>
  itemsOf(sheet, column).flatMap(({ name, cell }) =>
    cell.sets.flatMap((set, place): readonly PlannedSet[] =>
      set.id === null
        ? []
        : [
            {
              id: set.id,
              name,
              item: cell.item,
              place,
              side: set.side,
              repetitions: set.repetitions,
              asks: set.asks,
              isOpen: set.isOpen,
              load: showIncrements(set.load.increments, cell.increment),
              unit: cell.unit as MassUnit,
            },
          ],
    ),
  );

/** Bouts and drills of an issued session, and what each asks to be written down. */
export const plannedPieces = (sheet: SheetWindow, column: SheetColumn): readonly PlannedPiece[] =>
  column.card === null
    ? []
    : itemsOf(sheet, column).flatMap(({ name, cell }): readonly PlannedPiece[] =>
        cell.piece === null || cell.kind === 'lift'
          ? []
          : [
              {
                item: cell.item,
                name,
                kind: cell.kind,
                planned: cell.planned,
                of: cell.piece.of,
                asks: askedOf(cell.kind, cell.piece),
                unit: cell.unit === 'kg' ? 'kg' : 'lb',
              },
            ],
      );

/** Where nothing was to be set, whatever the machine showed may be written down. */
const askedOf = (
  kind: 'bouts' | 'drill',
  { asksWatts, asksSpeed, asksHarness }: NonNullable<SheetCell['piece']>,
): readonly (keyof PieceDraft)[] => {
  if (kind === 'drill') return ['done', 'minutes', 'effort'];
  const byFeel = !asksWatts && !asksSpeed;
  return [
    'done',
    'minutes',
    ...(asksWatts || (byFeel && !asksHarness) ? (['watts'] as const) : []),
    ...(asksSpeed || byFeel ? (['speed'] as const) : []),
    ...(asksHarness ? (['harness'] as const) : []),
    'heartRate',
    'effort',
  ];
};

/** Results with their efforts in one way of typing: as they were typed where all agree, else as RPE. */
const effortText = (effort: Effort | null, as: Effort['kind']): string => {
  if (effort === null) return '';
  return String(as === 'RPE' ? ratingOf(effort) : effort.value);
};

/** What stands in the record already, ready to be corrected; an empty form where nothing does. */
export const startOfDraft = (standing: Fact<'trained'> | null, item: string | null): ResultsDraft => {
  const results = standing?.sets ?? [];
  const inReserve = results.length > 0 && results.every(({ effort }) => effort?.kind === 'repetitions in reserve');
  const effortAs = inReserve ? 'repetitions in reserve' : 'RPE';
  return {
    sets: Object.fromEntries(
      results.map(({ set, repetitions, load, effort }) => [
        set,
        { repetitions: String(repetitions), load: load.text, effort: effortText(effort, effortAs) },
      ]),
    ),
    pieces: Object.fromEntries((standing?.pieces ?? []).map((piece) => [piece.item, draftOfPiece(piece)])),
    effortAs,
    hurts: [],
    note: '',
    noteOn: item ?? '',
    sessionRpe: numberText(standing?.sessionRpe),
    minutes: numberText(standing?.minutes),
  };
};

const draftOfPiece = ({ done, minutes, watts, speed, harness, heartRate, effort }: PieceResult): PieceDraft => ({
  done: String(done),
  minutes: numberText(minutes),
  watts: numberText(watts),
  speed: numberText(speed),
  harness: harness?.text ?? '',
  heartRate: numberText(heartRate),
  effort: effortText(effort, 'RPE'),
});

const numberText = (value: number | null | undefined): string =>
  value === null || value === undefined ? '' : String(value);

export const NO_PIECE: PieceDraft = {
  done: '',
  minutes: '',
  watts: '',
  speed: '',
  harness: '',
  heartRate: '',
  effort: '',
};

/** Everything done as it was planned; effort, heart rate, what was set and what the card left open stay to be typed. */
export const doneAsPlanned = (
  draft: ResultsDraft,
  sets: readonly PlannedSet[],
  pieces: readonly PlannedPiece[] = [],
): ResultsDraft => ({
  ...draft,
  sets: {
    ...draft.sets,
    ...Object.fromEntries(
      sets.map(({ id, repetitions, isOpen, load }) => [
        id,
        {
          repetitions: isOpen ? (draft.sets[id]?.repetitions ?? '') : String(repetitions),
          load,
          effort: draft.sets[id]?.effort ?? '',
        },
      ]),
    ),
  },
  pieces: {
    ...draft.pieces,
    ...Object.fromEntries(
      pieces.map(({ item, of }) => [item, { ...(draft.pieces[item] ?? NO_PIECE), done: String(of) }]),
    ),
  },
});

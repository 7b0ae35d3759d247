import type { SheetColumn, SheetWindow } from '#contract/windows/sheet-window.ts';
import type { MassUnit } from '#units/mass.ts';
import { showIncrements } from '../../parts/loads.ts';
import { itemsOf } from './grid-places.ts';
import type { PlannedSet, ResultsDraft, SetDraft } from './results-draft.ts';

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
              load: showIncrements(set.load.increments, cell.increment),
              unit: cell.unit as MassUnit,
            },
          ],
    ),
  );

const numberAtStart = (text: string): string => /^[\d.]+/.exec(text)?.[0] ?? '';

/** What stands in the record already, ready to be corrected. */
const recorded = (sheet: SheetWindow, column: SheetColumn): Readonly<Record<string, SetDraft>> =>
  Object.fromEntries(
    itemsOf(sheet, column).flatMap(({ cell }) =>
      cell.sets.flatMap(({ id, result }) =>
        id === null || result === null
          ? []
          : [
              [
                id,
                {
                  repetitions: String(result.repetitions),
                  load: numberAtStart(result.load),
                  effort: result.rating === null ? '' : String(result.rating),
                },
              ] as const,
            ],
      ),
    ),
  );

export const startOfDraft = (sheet: SheetWindow, column: SheetColumn, item: string | null): ResultsDraft => ({
  sets: recorded(sheet, column),
  effortAs: 'RPE',
  hurts: [],
  note: '',
  noteOn: item ?? '',
  sessionRpe: '',
  minutes: '',
});

/** Every set done as it was planned; effort stays to be typed. */
export const doneAsPlanned = (draft: ResultsDraft, sets: readonly PlannedSet[]): ResultsDraft => ({
  ...draft,
  sets: {
    ...draft.sets,
    ...Object.fromEntries(
      sets.map(({ id, repetitions, load }) => [
        id,
        { repetitions: String(repetitions), load, effort: draft.sets[id]?.effort ?? '' },
      ]),
    ),
  },
});

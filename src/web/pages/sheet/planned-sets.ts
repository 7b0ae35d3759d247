import type { SheetColumn, SheetWindow } from '#contract/windows/sheet-window.ts';
import { ratingOf, type Effort } from '#domain/effort.ts';
import type { Fact } from '#domain/fact.ts';
import type { MassUnit } from '#units/mass.ts';
import { showIncrements } from '../../parts/loads.ts';
import { itemsOf } from './grid-places.ts';
import type { PlannedSet, ResultsDraft } from './results-draft.ts';

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
    effortAs,
    hurts: [],
    note: '',
    noteOn: item ?? '',
    sessionRpe: numberText(standing?.sessionRpe),
    minutes: numberText(standing?.minutes),
  };
};

const numberText = (value: number | null | undefined): string =>
  value === null || value === undefined ? '' : String(value);

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

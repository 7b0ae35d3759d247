import type { Problem } from '#contract/problem.ts';
import type { Exercise } from '#domain/catalogue.ts';
import { programmeProblems } from '#domain/programme-check.ts';
import type { Place } from '#web/parts/block/selection.ts';
import { minutesOf, phasesOf, type Draft, type DraftPhase } from './draft.ts';
import { BLOCK_ROW, columnsOf, FIRST_ITEM_ROW, TITLE_ROW } from './week.ts';
import { readCell } from './write-cells.ts';

/** A problem with the cell where it stands; null where it is about a phase, or the programme as a whole. */
export interface PlacedProblem {
  readonly phase: number | null;
  readonly place: Place | null;
  readonly problem: Problem;
}

/** Everything that stands against taking a draft up as far as the browser can tell, each at its cell. */
export const problemsOfDraft = (draft: Draft, exercises: readonly Exercise[]): readonly PlacedProblem[] => [
  ...(draft.name.trim() === '' ? [{ phase: null, place: null, problem: noName() }] : []),
  ...draft.phases.flatMap((phase, at) => typedProblems(draft, phase, at, exercises)),
  ...programmeProblems({ phases: phasesOf(draft) }, new Map(exercises.map((each) => [each.id, each]))).map((problem) =>
    placedProblem(draft, problem),
  ),
];

const typedProblems = (
  draft: Draft,
  phase: DraftPhase,
  at: number,
  exercises: readonly Exercise[],
): readonly PlacedProblem[] =>
  columnsOf(phase).flatMap(({ session }, column) => {
    if (!session) return [];
    const here = (row: number, problem: Problem): PlacedProblem => ({ phase: at, place: { row, column }, problem });
    return [
      ...(session.title.trim() === '' ? [here(TITLE_ROW, noTitle())] : []),
      ...(minutesOf(session.block) >= 1 && minutesOf(session.block) <= DAY
        ? []
        : [here(BLOCK_ROW, noMinutes(session.block))]),
      ...session.slots.flatMap((slot, place) => {
        if (slot.kind !== 'unread') return [];
        const reading = readCell(draft, phase, session, slot, slot.text, exercises);
        const says = reading.kind === 'problems' ? reading.problems.map((each) => each.says).join(' ') : '';
        return [here(FIRST_ITEM_ROW + place, unread(slot.text, says))];
      }),
    ];
  });

const DAY = 1440;

/** Names of fields count items as they are taken up: blank and unread places are none. */
export const placedProblem = (draft: Draft, problem: Problem): PlacedProblem => {
  const [, phaseAt, sessionAt, itemAt, field] =
    /^phases\.(\d+)(?:\.sessions\.(\d+))?(?:\.items\.(\d+))?(?:\.(\w+))?/.exec(problem.field ?? '') ?? [];
  if (phaseAt === undefined) return { phase: null, place: null, problem };
  const phase = draft.phases[Number(phaseAt)];
  const session = sessionAt === undefined ? undefined : phase?.sessions[Number(sessionAt)];
  if (!phase || !session) return { phase: Number(phaseAt), place: null, problem };
  const column = columnsOf(phase).findIndex((day) => day.session === session);
  const row =
    itemAt === undefined
      ? field === 'blockMinutes'
        ? BLOCK_ROW
        : TITLE_ROW
      : rowOfItem(session.slots, Number(itemAt));
  return { phase: Number(phaseAt), place: { row, column }, problem };
};

const rowOfItem = (slots: DraftPhase['sessions'][number]['slots'], number: number): number => {
  const rows = slots.flatMap(({ kind }, place) => (kind === 'item' ? [place] : []));
  return FIRST_ITEM_ROW + (rows[number] ?? 0);
};

const problemOf = (what: string, why: string, whatToDo: string): Problem => ({ what, why, whatToDo, field: null });

const noName = (): Problem =>
  problemOf('The programme has no name.', 'Cards and lists show it by its name.', 'Type one at the top.');
const noTitle = (): Problem =>
  problemOf('The session has no title.', 'It stands at the head of its card.', 'Type one in the first row of its day.');
const noMinutes = (block: string): Problem =>
  problemOf(
    `“${block}” is no length of a block.`,
    'What fits into a session hangs on its minutes, set-up and stowing included.',
    `Type minutes from 1 to ${DAY} in the second row of its day.`,
  );
const unread = (text: string, says: string): Problem =>
  problemOf(
    `“${text}” cannot be read.`,
    sentence(says),
    'Write it as in Back squat 4 × 6 @ 80 %, rest 2:30, or clear the cell.',
  );

const sentence = (says: string): string => says.charAt(0).toUpperCase() + says.slice(1);

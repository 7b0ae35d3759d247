import { useState } from 'react';
import type { Problem } from '#contract/problem.ts';
import type { SheetColumn, SheetWindow } from '#contract/windows/sheet-window.ts';
import type { Fact } from '#domain/fact.ts';
import { useRecording, type Entry } from '../../windows.ts';
import { plannedPieces, plannedSets, startOfDraft } from './planned-sets.ts';
import { readResults, type PlannedPiece, type PlannedSet, type ResultsDraft } from './results-draft.ts';

export interface ResultsAt {
  readonly sheet: SheetWindow;
  readonly column: SheetColumn;
  readonly item: string | null;
  readonly standing: Fact<'trained'> | null;
  readonly onDone: () => void;
}

export interface Results {
  readonly draft: ResultsDraft;
  readonly setDraft: (draft: ResultsDraft) => void;
  readonly sets: readonly PlannedSet[];
  readonly pieces: readonly PlannedPiece[];
  readonly problems: readonly Problem[];
  readonly reason: string;
  readonly setReason: (reason: string) => void;
  readonly sure: boolean;
  readonly setSure: (sure: boolean) => void;
  readonly isSending: boolean;
  readonly confirm: () => void;
}

/** A problem of the third result is one of its item: the field where it was typed is named after that. */
const atItem =
  (items: readonly string[]) =>
  (problem: Problem): Problem => {
    const [, place, field] = /^entries\.0\.pieces\.(\d+)\.(\w+)/.exec(problem.field ?? '') ?? [];
    const item = place === undefined ? undefined : items[Number(place)];
    return item === undefined ? problem : { ...problem, field: `piece ${item} ${field === 'item' ? 'done' : field}` };
  };

/** What is typed of one card, what is wrong with it here or there, and its way into the log. */
export const useResults = ({ sheet, column, item, standing, onDone }: ResultsAt): Results => {
  const [draft, setDraft] = useState(() => startOfDraft(standing, item));
  const [reason, setReason] = useState('');
  const [sure, setSure] = useState(false);
  const [wrong, setWrong] = useState<readonly Problem[]>([]);
  const [sent, setSent] = useState<readonly string[]>([]);
  const { record, isSending, problems } = useRecording();
  const [sets, pieces] = [plannedSets(sheet, column), plannedPieces(sheet, column)];
  const { card } = column;
  const confirm = (): void => {
    if (!card) return;
    const reading = readResults({ person: sheet.person.id, day: column.day, card, sets, pieces }, draft);
    setWrong(reading.kind === 'problems' ? reading.problems : []);
    if (reading.kind === 'problems') return;
    const { trained, beside } = reading;
    setSent(trained?.kind === 'trained' ? trained.pieces.map((piece) => piece.item) : []);
    const result: readonly Entry[] = trained
      ? [standing ? { body: trained, sure, supersedes: standing.id, reason: reason.trim() } : { body: trained, sure }]
      : [];
    record([...result, ...beside.map((body) => ({ body, sure }))], onDone);
  };
  return {
    draft,
    setDraft,
    sets,
    pieces,
    problems: wrong.length > 0 ? wrong : problems.map(atItem(sent)),
    reason,
    setReason,
    sure,
    setSure,
    isSending,
    confirm,
  };
};

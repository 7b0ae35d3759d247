import { useMutation, useQuery, useQueryClient, type UseQueryResult } from '@tanstack/react-query';
import type { Problem } from '#contract/problem.ts';
import { ROUTES } from '#contract/routes.ts';
import type { CardWindow, WeekTextWindow, WorkingWindow } from '#contract/windows/card-window.ts';
import type { DeskWindow } from '#contract/windows/desk-window.ts';
import type { HouseWindow, StartWindow } from '#contract/windows/house-window.ts';
import type { RecordWindow } from '#contract/windows/record-window.ts';
import type { SheetWindow } from '#contract/windows/sheet-window.ts';
import type { FactBody } from '#domain/fact.ts';
import type { FactId } from '#domain/identity.ts';
import { getWindow, post, problemsOf } from './api.ts';
import { useSigner } from './signer.tsx';

/** A window of the program; its address is its key. */
export const useWindow = <Window>(path: string, enabled = true): UseQueryResult<Window> =>
  useQuery({ queryKey: [path], queryFn: () => getWindow<Window>(path), enabled });

export const useStart = (): UseQueryResult<StartWindow> => useWindow(ROUTES.start);
export const useHouse = (): UseQueryResult<HouseWindow> => useWindow(ROUTES.house);
export const useDesk = (): UseQueryResult<DeskWindow> => useWindow(ROUTES.desk);
export const useSheet = (person: string): UseQueryResult<SheetWindow> => useWindow(ROUTES.sheet(person));
export const useRecordOf = (person: string, enabled = true): UseQueryResult<RecordWindow> =>
  useWindow(ROUTES.record(person), enabled);
export const useCard = (card: string): UseQueryResult<CardWindow> => useWindow(ROUTES.card(card));
export const usePlannedCard = (person: string, day: number): UseQueryResult<CardWindow> =>
  useWindow(ROUTES.plannedCard(person, day));
export const useWeekText = (person: string, from: number): UseQueryResult<WeekTextWindow> =>
  useWindow(ROUTES.weekText(person, from));
export const useWorking = (
  person: string,
  day: number,
  item: string,
  enabled: boolean,
): UseQueryResult<WorkingWindow> => useWindow(ROUTES.working(person, day, item), enabled);

export interface Write<Answer> {
  /** Calls `then` where it was taken; where it was refused, `problems` say why. */
  readonly send: (path: string, request: object, then?: (answer: Answer) => void) => void;
  readonly isSending: boolean;
  readonly problems: readonly Problem[];
  readonly forget: () => void;
}

/** Writes, and asks every window on the screen anew: one fact can change them all. */
export const useWrite = <Answer = unknown>(): Write<Answer> => {
  const queries = useQueryClient();
  const { mutate, isPending, error, reset } = useMutation({
    mutationFn: ({ path, request }: { readonly path: string; readonly request: object }) => post<Answer>(path, request),
    onSettled: () => queries.invalidateQueries(),
  });
  return {
    send: (path, request, then) => mutate({ path, request }, then ? { onSuccess: then } : {}),
    isSending: isPending,
    problems: problemsOf(error),
    forget: reset,
  };
};

export interface Entry {
  readonly body: FactBody;
  readonly supersedes?: FactId;
  readonly reason?: string;
  /** It is right as typed: said where the program has asked. */
  readonly sure?: boolean;
}

export interface Recording {
  readonly record: (entries: readonly Entry[], then?: () => void) => void;
  readonly isSending: boolean;
  readonly problems: readonly Problem[];
  readonly forget: () => void;
}

const NOBODY_SIGNS: Problem = {
  what: 'Nobody is signing.',
  why: 'Everything that is recorded names who recorded it.',
  whatToDo: 'Choose who is signing at the top of the page.',
  field: null,
};

/** Records facts in the name of whoever is signing: all of them or none. */
export const useRecording = (): Recording => {
  const { signer } = useSigner();
  const write = useWrite();
  return {
    record: (entries, then) => {
      if (!signer) return;
      const request = {
        signer: signer.id,
        entries: entries.map(({ body, supersedes, reason, sure }) => ({
          body,
          supersedes: supersedes ?? null,
          reason: reason ?? null,
          sure: sure ?? false,
        })),
      };
      write.send(ROUTES.facts, request, then);
    },
    isSending: write.isSending,
    problems: signer ? write.problems : [NOBODY_SIGNS],
    forget: write.forget,
  };
};

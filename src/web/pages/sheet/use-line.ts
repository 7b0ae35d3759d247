import { useState } from 'react';
import { keepPreviousData, useQuery } from '@tanstack/react-query';
import type { Problem } from '#contract/problem.ts';
import type { CellAsked } from '#contract/requests/requests.ts';
import { ROUTES } from '#contract/routes.ts';
import type { WrittenWindow } from '#contract/windows/written-window.ts';
import { post } from '../../api.ts';
import { useSigner } from '../../signer.tsx';
import { useWrite } from '../../windows.ts';

export const USUAL_REASON = 'written on the sheet';

export interface LineBeingWritten {
  readonly line: string;
  readonly setLine: (text: string) => void;
  readonly reason: string;
  readonly setReason: (text: string) => void;
  /** From that day on, not on that day alone. */
  readonly lasts: boolean;
  readonly setLasts: (lasts: boolean) => void;
  /** What it comes to; undefined while nothing is known. */
  readonly outcome: WrittenWindow | undefined;
  readonly problems: readonly Problem[];
  readonly canSign: boolean;
  readonly sign: () => void;
}

export interface LinePlace {
  readonly person: string;
  readonly track: string;
  readonly day: number;
}

/** What was written, and what stood there before; null where it lasts and is taken back in the record. */
export type OnWritten = (before: readonly CellAsked[] | null, after: readonly CellAsked[]) => void;

/** A line of shorthand for one track on one day, looked at with every stroke and signed once. */
export const useLine = ({ person, track, day }: LinePlace, start: string, onWritten: OnWritten): LineBeingWritten => {
  const [line, setLine] = useState(start);
  const [reason, setReason] = useState('');
  const [lasts, setLasts] = useState(false);
  const { signer } = useSigner();
  const { send, isSending, problems } = useWrite<{ readonly before?: readonly CellAsked[] }>();
  const looked = useQuery({
    queryKey: [ROUTES.written(person), track, day, line],
    queryFn: () => post<WrittenWindow>(ROUTES.written(person), { track, day, line }),
    placeholderData: keepPreviousData,
    enabled: line.trim() !== '',
  });
  const outcome = looked.data;
  // What still stands there from the stroke before is not what would be signed.
  const stands =
    !looked.isPlaceholderData && outcome !== undefined && outcome.outcome !== null && outcome.problems.length === 0;
  const canSign = signer !== null && !isSending && stands;
  const sign = (): void => {
    if (!signer || !canSign) return;
    const change = { kind: 'as written', line: line.trim() } as const;
    const signed = { signer: signer.id, reason: reason.trim() || USUAL_REASON };
    const cells: readonly CellAsked[] = [{ track, day, change }];
    if (lasts)
      send(ROUTES.adjust(person), { ...signed, change, track, from: day, until: null }, () => onWritten(null, cells));
    else
      send(ROUTES.writeCells(person), { ...signed, cells, basis: null }, ({ before }) =>
        onWritten(before ?? null, cells),
      );
  };
  return { line, setLine, reason, setReason, lasts, setLasts, outcome, problems, canSign, sign };
};

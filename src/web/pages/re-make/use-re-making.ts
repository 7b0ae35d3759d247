import { useState } from 'react';
import { keepPreviousData, useQuery } from '@tanstack/react-query';
import type { Problem } from '#contract/problem.ts';
import type { ReMadeAnswer, ReMakeRequest } from '#contract/requests/re-making.ts';
import { ROUTES } from '#contract/routes.ts';
import type { Gear, ReMadeWindow, ReMakeWindow } from '#contract/windows/re-make-window.ts';
import { post, problemsOf } from '../../api.ts';
import { useSigner } from '../../signer.tsx';
import { useWrite } from '../../windows.ts';
import { typedNumber } from '../record/typed-values.ts';
import { hurtsOf, unreadHurts, type TypedHurt } from './typed-hurt.ts';

export const USUAL_REASON = 'made anew for what is there';

/** What is being said of a session, and what it would come to. */
export interface ReMaking {
  readonly session: string;
  readonly setSession: (id: string) => void;
  readonly here: ReadonlySet<Gear>;
  readonly toggle: (gear: Gear) => void;
  readonly minutes: string;
  readonly setMinutes: (text: string) => void;
  readonly hurts: readonly TypedHurt[];
  readonly setHurts: (hurts: readonly TypedHurt[]) => void;
  readonly reason: string;
  readonly setReason: (text: string) => void;
  readonly made: ReMadeWindow | undefined;
  readonly problems: readonly Problem[];
  readonly canSign: boolean;
  readonly sign: () => void;
  readonly sent: ReMadeAnswer | null;
}

/** Looked at with every stroke, signed and issued once. */
export const useReMaking = (start: ReMakeWindow): ReMaking => {
  const [first] = start.sessions;
  const [session, setSession] = useState<string>(first?.id ?? '');
  const [here, setHere] = useState<ReadonlySet<Gear>>(
    new Set(start.gear.filter(({ isHere }) => isHere).map(({ kind }) => kind)),
  );
  const [minutes, setMinutes] = useState(String(first?.blockMinutes ?? ''));
  const [hurts, setHurts] = useState<readonly TypedHurt[]>([]);
  const [reason, setReason] = useState('');
  const [sent, setSent] = useState<ReMadeAnswer | null>(null);
  const { signer } = useSigner();
  const { send, isSending, problems } = useWrite<ReMadeAnswer>();
  const path = start.person.id;
  const unread: Problem[] = [...unreadHurts(hurts)];
  const time = typedNumber(minutes, 'minutes', unread);
  const request: ReMakeRequest = {
    day: start.day,
    session,
    here: [...here],
    minutes: time ?? 0,
    hurts: [...hurtsOf(hurts)],
  };
  const looked = useQuery({
    queryKey: [ROUTES.reMade(path), request],
    queryFn: () => post<ReMadeWindow>(ROUTES.reMade(path), request),
    placeholderData: keepPreviousData,
    enabled: session !== '' && time !== null,
  });
  const made = looked.data;
  const stands = made !== undefined && made.problems.length === 0 && made.gaps.length === 0 && made.card !== null;
  // What still stands there from the stroke before was made of something else than what would be signed.
  const isSeen = unread.length === 0 && !looked.isPlaceholderData;
  const canSign = signer !== null && !isSending && stands && isSeen;
  const sign = (): void => {
    if (!signer || !canSign) return;
    const signed = { ...request, signer: signer.id, reason: reason.trim() || USUAL_REASON, basis: start.upTo };
    send(ROUTES.reMakeSigned(path), signed, setSent);
  };
  return {
    session,
    setSession,
    here,
    toggle: (gear) =>
      setHere(here.has(gear) ? new Set([...here].filter((each) => each !== gear)) : new Set([...here, gear])),
    minutes,
    setMinutes,
    hurts,
    setHurts,
    reason,
    setReason,
    made,
    problems: [...unread, ...problems, ...problemsOf(looked.error), ...(time === null ? [] : (made?.problems ?? []))],
    canSign,
    sign,
    sent,
  };
};

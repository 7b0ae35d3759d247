import { useState } from 'react';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import type { TakeUpProgrammeRequest } from '#contract/requests/programme-requests.ts';
import { ROUTES } from '#contract/routes.ts';
import type { ComparisonWindow } from '#contract/windows/comparison-window.ts';
import type { PersonId } from '#domain/identity.ts';
import type { Problem } from '#contract/problem.ts';
import { Actions, Button, Problems, shortDate, SignAs, useSigner } from '#web/parts/parts.ts';
import { post, problemsOf } from '#web/api.ts';
import type { DraftRequest } from './draft-request.ts';
import styles from './editor.module.css';

export interface TakeUpProps {
  readonly window: ComparisonWindow;
  readonly draft: DraftRequest;
  readonly onTaken: (taken: { readonly version: string; readonly number: number; readonly following: number }) => void;
}

/** One signature takes the draft up, and puts on it whoever stays ticked. */
export const TakeUp = ({ window, draft, onTaken }: TakeUpProps) => {
  const [left, setLeft] = useState<ReadonlySet<PersonId>>(new Set());
  const { signer } = useSigner();
  const { send, isSending, problems } = useTakeUp(onTaken);
  const people = [...window.people, ...window.unchanged];
  const following = people.filter(({ id }) => !left.has(id));
  const takeUp = (): void => {
    if (!signer || isSending) return;
    const request: TakeUpProgrammeRequest = {
      ...draft,
      signer: signer.id,
      basis: window.basis,
      follow: following.map(({ id, from }) => ({ person: id, from })),
    };
    send(request);
  };
  return (
    <form
      className="on-screen"
      onSubmit={(event) => {
        event.preventDefault();
        takeUp();
      }}
    >
      {people.length > 0 ? (
        <fieldset className={styles['followers']}>
          <legend>Who follows it</legend>
          {people.map(({ id, name, from, fromLabel }) => (
            <label key={id}>
              <input
                type="checkbox"
                checked={!left.has(id)}
                onChange={(event) => setLeft(event.target.checked ? without(left, id) : new Set([...left, id]))}
              />{' '}
              {name}{' '}
              <span className="soft">
                from {fromLabel}, {shortDate(from)}
              </span>
            </label>
          ))}
        </fieldset>
      ) : null}
      <Problems problems={problems.map((problem) => named(problem, following))} />
      <Actions>
        <Button kind="main" type="submit" isDisabled={!signer || isSending}>
          {takeUpWords(window.number, following.length)}
        </Button>
        <SignAs />
      </Actions>
      <p className="soft small">
        Cards that are issued stand as they were signed. No load goes up by this: a raise is signed with its card.
      </p>
    </form>
  );
};

type Taken = Parameters<TakeUpProps['onTaken']>[0];

/** The page is left at once: nobody waits for the comparison of what is taken up already. */
const useTakeUp = (onTaken: TakeUpProps['onTaken']) => {
  const queries = useQueryClient();
  const { mutate, isPending, error } = useMutation({
    mutationFn: (request: TakeUpProgrammeRequest) => post<Taken>(ROUTES.takeUpProgramme, request),
    onSuccess: (taken) => {
      onTaken(taken);
      queries.removeQueries({ queryKey: [ROUTES.compareProgramme] });
    },
    onSettled: () => void queries.invalidateQueries(),
  });
  return { send: mutate, isSending: isPending, problems: problemsOf(error) };
};

const without = (ids: ReadonlySet<PersonId>, id: PersonId): ReadonlySet<PersonId> =>
  new Set([...ids].filter((each) => each !== id));

const takeUpWords = (number: number, following: number): string => {
  const version = `Take up version ${number}`;
  if (following === 0) return `${version}, nobody follows it yet`;
  return `${version}, ${following === 1 ? 'one person follows' : `${following} people follow`} it`;
};

/** A refusal about somebody names them. */
const named = (problem: Problem, following: readonly { readonly name: string }[]): Problem => {
  const [, place] = /^follow\.(\d+)/.exec(problem.field ?? '') ?? [];
  const name = place === undefined ? undefined : following[Number(place)]?.name;
  return name === undefined || problem.what.includes(name) ? problem : { ...problem, what: `${name}: ${problem.what}` };
};

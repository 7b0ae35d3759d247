import { useState } from 'react';
import { useQuery } from '@tanstack/react-query';
import type { CompareProgrammeRequest } from '#contract/requests/programme-requests.ts';
import { ROUTES } from '#contract/routes.ts';
import type { ComparisonWindow } from '#contract/windows/comparison-window.ts';
import type { PersonId } from '#domain/identity.ts';
import { dayFromIso, isoOfDay, type Day } from '#units/day.ts';
import { post, problemsOf } from '#web/api.ts';
import { Button, Field, Fields, Problems } from '#web/parts/parts.ts';
import { Comparison } from './comparison.tsx';
import type { DraftRequest } from './draft-request.ts';
import { TakeUp, type TakeUpProps } from './take-up.tsx';
import styles from './editor.module.css';

export interface LookingAheadProps {
  readonly draft: DraftRequest;
  /** Whatever the browser itself found: it is said beside the cells. */
  readonly isInOrder: boolean;
  readonly today: Day;
  /** Who may be put on a programme that nobody follows yet; empty where the programme has followers of its own. */
  readonly others: readonly { readonly id: PersonId; readonly name: string }[];
  readonly onTaken: TakeUpProps['onTaken'];
}

/** What the draft changes for people, asked for and looked at before it is taken up. */
export const LookingAhead = ({ draft, isInOrder, today, others, onTaken }: LookingAheadProps) => {
  const [from, setFrom] = useState(isoOfDay(today));
  const [chosen, setChosen] = useState<readonly PersonId[]>([]);
  const [asked, setAsked] = useState<CompareProgrammeRequest | null>(null);
  const day = dayFromIso(from);
  const people = others.length > 0 ? [...chosen] : null;
  const request = day === null ? null : { ...draft, from: day, people };
  const isStale = asked !== null && JSON.stringify(asked) !== JSON.stringify(request);
  const looked = useQuery({
    queryKey: [ROUTES.compareProgramme, asked],
    queryFn: () => post<ComparisonWindow>(ROUTES.compareProgramme, asked),
    enabled: asked !== null,
    retry: false,
  });
  return (
    <section className={styles['ahead']} aria-label="What it changes for people">
      <h2>What it changes for people</h2>
      <div className="on-screen">
        <Fields>
          <Field label="Followed from, at the earliest" type="date" value={from} onChange={setFrom} />
          {others.length > 0 ? <Chosen others={others} chosen={chosen} onChange={setChosen} /> : null}
        </Fields>
        <Button
          kind={asked && !isStale ? 'plain' : 'main'}
          onPress={() => setAsked(request)}
          isDisabled={!request || !isInOrder}
        >
          Compare the next 28 days
        </Button>{' '}
        <output className="soft">{sayWhy(isInOrder, isStale, looked.isFetching)}</output>
      </div>
      {asked && !isStale && looked.isError ? <Problems problems={problemsOf(looked.error)} /> : null}
      {asked && !isStale && looked.data ? (
        <>
          <Comparison window={looked.data} />
          <TakeUp window={looked.data} draft={draft} onTaken={onTaken} />
        </>
      ) : null}
    </section>
  );
};

const sayWhy = (isInOrder: boolean, isStale: boolean, isAsking: boolean): string => {
  if (!isInOrder) return 'First put in order what is marked above.';
  if (isAsking) return 'Planning …';
  return isStale ? 'The draft has changed since: compare again before it is taken up.' : '';
};

const Chosen = ({
  others,
  chosen,
  onChange,
}: Pick<LookingAheadProps, 'others'> & {
  readonly chosen: readonly PersonId[];
  readonly onChange: (chosen: readonly PersonId[]) => void;
}) => (
  <fieldset className={styles['followers']}>
    <legend>Who would follow it</legend>
    {others.map(({ id, name }) => (
      <label key={id}>
        <input
          type="checkbox"
          checked={chosen.includes(id)}
          onChange={(event) => onChange(event.target.checked ? [...chosen, id] : chosen.filter((each) => each !== id))}
        />{' '}
        {name}
      </label>
    ))}
  </fieldset>
);

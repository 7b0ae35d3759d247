import { keepPreviousData, useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { ROUTES } from '#contract/routes.ts';
import type { BringInAnswers, BringInWindow, MatchingByHand, TableReading } from '#contract/bring-in.ts';
import { post, problemsOf } from '../../api.ts';
import { Actions, Await, Button, Problems, SignAs, useSigner } from '../../parts/parts.ts';
import { ColumnMatching } from './column-matching.tsx';
import { IssueTable } from './issue-table.tsx';
import { PreviewList } from './preview-list.tsx';
import { QuestionList } from './question-list.tsx';

interface BringInPlanProps {
  readonly reading: Extract<TableReading, { readonly kind: 'read' }>;
  readonly ticket: string;
  readonly onTaken: (recorded: number) => void;
  readonly onLeave: () => void;
}

const PLANS = 'bring in';
const BY_NAME: MatchingByHand = { sheet: null, headerRow: null, columns: {} };

/** Columns, questions, problems, preview: planned anew after every answer, recorded once. */
export function BringInPlan({ reading, ticket, onTaken, onLeave }: BringInPlanProps) {
  const [matching, setMatching] = useState(BY_NAME);
  const [answers, setAnswers] = useState<BringInAnswers>({});
  const plan = useQuery({
    queryKey: [PLANS, ticket, matching, answers],
    queryFn: () => post<BringInWindow>(ROUTES.bringInPlan, { ticket, matching, answers }),
    placeholderData: keepPreviousData,
  });
  const answer = (id: string, given: string | null): void =>
    setAnswers((before) =>
      Object.fromEntries([
        ...Object.entries(before).filter(([each]) => each !== id),
        ...(given === null ? [] : [[id, given] as const]),
      ]),
    );
  return (
    <div>
      <h3>
        {reading.fileName} <span className="soft">{[reading.format, reading.how].filter(Boolean).join(', ')}</span>
      </h3>
      {reading.issues.length > 0 && <IssueTable caption="While reading the file" issues={reading.issues} />}
      <Await query={plan}>
        {(window) => (
          <>
            <ColumnMatching reading={reading} matching={window.matching} byHand={matching} onMatch={setMatching} />
            <QuestionList questions={window.questions} onAnswer={answer} />
            {window.problems.length > 0 && <IssueTable caption="Problems" issues={window.problems} />}
            <PreviewList preview={window.preview} />
            <TakeIn
              window={window}
              request={{ ticket, matching, answers }}
              isPlanning={plan.isFetching}
              onTaken={onTaken}
              onLeave={onLeave}
            />
          </>
        )}
      </Await>
    </div>
  );
}

interface TakeInProps {
  readonly window: BringInWindow;
  readonly request: { readonly ticket: string; readonly matching: MatchingByHand; readonly answers: BringInAnswers };
  readonly isPlanning: boolean;
  readonly onTaken: (recorded: number) => void;
  readonly onLeave: () => void;
}

function TakeIn({ window, request, isPlanning, onTaken, onLeave }: TakeInProps) {
  const { signer } = useSigner();
  const queries = useQueryClient();
  const write = useMutation({
    mutationFn: (by: string) => post<{ readonly recorded: number }>(ROUTES.bringInTake, { ...request, signer: by }),
    onSuccess: ({ recorded }) => {
      onTaken(recorded);
      // Everything else on the screen may have changed; the file is no longer there to be planned.
      return queries.invalidateQueries({ predicate: ({ queryKey }) => queryKey[0] !== PLANS });
    },
  });
  const take = (): void => {
    if (signer !== null && !write.isPending) write.mutate(signer.id);
  };
  return (
    <>
      <Problems problems={problemsOf(write.error)} />
      <p>
        <output>{isPlanning ? 'Reading the answers …' : whatStandsAgainst(window)}</output>
      </p>
      <Actions>
        <Button kind="main" isDisabled={!window.ready || isPlanning || signer === null} onPress={take}>
          Take in {window.preview.totals.facts} facts
        </Button>
        <SignAs />
        <Button onPress={onLeave}>Leave it</Button>
      </Actions>
    </>
  );
}

const whatStandsAgainst = ({ ready, questions, problems, preview }: BringInWindow): string => {
  if (ready) return 'Everything is answered. It is taken in as a whole, or not at all.';
  const open = questions.filter(({ answer }) => answer === null).length;
  const refused = problems.filter(({ kind }) => kind === 'refused').length;
  const reasons = [
    ...(open > 0 ? [`${open} ${open === 1 ? 'question is' : 'questions are'} open`] : []),
    ...(refused > 0 ? [`${refused} ${refused === 1 ? 'problem keeps' : 'problems keep'} the file out`] : []),
    ...(preview.totals.facts === 0 ? ['nothing in it can be recorded'] : []),
  ];
  return `It cannot be taken in yet: ${reasons.join('; ') || 'something is missing'}.`;
};

import type { Hono } from 'hono';
import { ROUTES } from '#contract/routes.ts';
import {
  compareProgrammeRequest,
  takeUpProgrammeRequest,
  type CompareProgrammeRequest,
} from '#contract/requests/programme-requests.ts';
import { draftProblems, type ProgrammeDraft } from '#actions/programme-draft.ts';
import { takeUpProgramme } from '#actions/take-up-programme.ts';
import { refuse, reply } from '../replies.ts';
import type { Serving } from '../serving.ts';
import { comparisonWindow } from '../windows/comparison-window.ts';
import { withBody, withHouse } from '../with-house.ts';

export const programmeRoutes = (app: Hono, serving: Serving): void => {
  app.post(
    ROUTES.compareProgramme,
    withHouse(serving, (context, house) =>
      withBody(context, compareProgrammeRequest, (body) => {
        const snapshot = house.snapshot();
        const draft = draftOf(body);
        const problems = draftProblems(snapshot.house, draft);
        return problems.length > 0
          ? refuse(context, 422, ...problems)
          : context.json(comparisonWindow(snapshot, { draft, from: body.from, people: body.people }));
      }),
    ),
  );
  app.post(
    ROUTES.takeUpProgramme,
    withHouse(serving, (context, { workplace }) =>
      withBody(context, takeUpProgrammeRequest, async ({ signer, basis, follow, ...draft }) =>
        reply(
          context,
          await takeUpProgramme(workplace, { signer, basis, follow, draft: draftOf(draft) }),
          ({ result }) => result,
        ),
      ),
    ),
  );
};

const draftOf = ({
  programme,
  name,
  follows,
  phases,
}: Pick<CompareProgrammeRequest, 'programme' | 'name' | 'follows' | 'phases'>): ProgrammeDraft => ({
  programme,
  name,
  follows,
  phases,
});

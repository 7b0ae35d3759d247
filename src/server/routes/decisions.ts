import type { Hono } from 'hono';
import { ROUTES } from '#contract/routes.ts';
import { adjustRequest, answerProposalRequest, followRequest, policyRequest } from '#contract/requests/requests.ts';
import { day } from '#units/day.ts';
import { idOf } from '#domain/identity.ts';
import { adjustTrack } from '#actions/adjust-track.ts';
import { answerProposal } from '#actions/answer-proposal.ts';
import { followProgramme } from '#actions/follow-programme.ts';
import { setPolicy } from '#actions/set-policy.ts';
import { reply } from '../replies.ts';
import type { Serving } from '../serving.ts';
import { withBody, withHouse, withPerson } from '../with-house.ts';

const PERSON = ':person';

export const decisionRoutes = (app: Hono, serving: Serving): void => {
  app.post(
    ROUTES.adjust(PERSON),
    withPerson(serving, (context, { house, known: { person } }) =>
      withBody(context, adjustRequest, async ({ signer, change, track, from, until, reason }) =>
        reply(
          context,
          await adjustTrack(house.workplace, {
            person,
            signer: idOf(signer),
            change,
            track: idOf(track),
            from: day(from),
            until: until === null ? null : day(until),
            reason,
          }),
          ({ result }) => result,
        ),
      ),
    ),
  );
  app.post(
    ROUTES.policy(PERSON),
    withPerson(serving, (context, { house, known: { person } }) =>
      withBody(context, policyRequest, async ({ signer, exercise, policy, reason }) =>
        reply(
          context,
          await setPolicy(house.workplace, { person, signer: idOf(signer), exercise: idOf(exercise), policy, reason }),
          ({ result }) => result,
        ),
      ),
    ),
  );
  followingRoutes(app, serving);
};

const followingRoutes = (app: Hono, serving: Serving): void => {
  app.post(
    ROUTES.follow(PERSON),
    withPerson(serving, (context, { house, known: { person } }) =>
      withBody(context, followRequest, async ({ signer, programme, from }) =>
        reply(
          context,
          await followProgramme(house.workplace, {
            person,
            signer: idOf(signer),
            programme: idOf(programme),
            from: day(from),
          }),
          ({ result }) => result,
        ),
      ),
    ),
  );
  app.post(
    ROUTES.proposal(':proposal'),
    withHouse(serving, (context, { workplace }) =>
      withBody(context, answerProposalRequest, async ({ signer, person, answer, reason, setsBy, basis }) =>
        reply(
          context,
          await answerProposal(workplace, {
            person: idOf(person),
            proposal: idOf(context.req.param('proposal') ?? '?'),
            signer: idOf(signer),
            answer,
            reason,
            setsBy,
            basis,
          }),
          ({ facts }) => ({ facts: facts.map(({ id }) => id) }),
        ),
      ),
    ),
  );
};

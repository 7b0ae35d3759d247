import { addDays, type Day } from '#units/day.ts';
import { liftsOf, nameOfRaise, raisesOf, type Card } from '#domain/card.ts';
import { digestOf } from '#domain/digest.ts';
import type { Estimate } from '#domain/estimate.ts';
import type { Signer } from '#domain/fact.ts';
import { idOf, type FactId, type Instant } from '#domain/identity.ts';
import type { IssuedCard } from '#domain/issued-card.ts';
import type { Known } from '#domain/known.ts';
import { daysOfPhase } from '#domain/programme.ts';
import type { Raise } from '#domain/raise.ts';
import type { CardRecord, Road } from '#domain/road.ts';
import type { Working } from '#domain/working.ts';
import { frozenCapacity } from './frozen-capacity.ts';
import { planContext } from './plan-context.ts';
import { planAgain } from './plan-again.ts';
import { stands } from './card-records.ts';
import { formulasOf, workingsOfItem, type Reckonings } from './workings.ts';

export interface IssuePlan {
  readonly cards: readonly {
    readonly day: Day;
    readonly card: Card;
    readonly reckonings: Reckonings;
    readonly replaces: CardRecord | null;
  }[];
  readonly raises: readonly Raise[];
  readonly refusals: readonly string[];
}

/** What issuing these days would sign, or why it cannot. A day that was issued already is issued again. */
export const planIssue = (known: Known, road: Road, days: readonly Day[]): IssuePlan => {
  const plans = [...new Set(days)].toSorted((a, b) => a - b).map((day) => planOneDay(known, road, day));
  const cards = plans.flatMap((plan) => (plan.kind === 'card' ? [plan.planned] : []));
  return {
    cards,
    raises: mergeRaises(cards.flatMap(({ card }) => raisesOf(card))),
    refusals: plans.flatMap((plan) => (plan.kind === 'refused' ? plan.says : [])),
  };
};

type OneDay =
  | { readonly kind: 'card'; readonly planned: IssuePlan['cards'][number] }
  | { readonly kind: 'refused'; readonly says: readonly string[] };

const planOneDay = (known: Known, road: Road, day: Day): OneDay => {
  const refused = (...says: readonly string[]): OneDay => ({ kind: 'refused', says });
  if (day < road.today) return refused('A day that is past cannot be issued.');
  const found = road.cards.find((each) => each.day === day && (each.state !== 'issued' || stands(each.record)));
  if (!found) return refused('The programme has no session on that day.');
  if (found.state === 'expected')
    return refused(
      `${found.card.missionDay}: beyond the ${known.house.policies.horizonDays} days that stand on what is known; it is only expected.`,
    );
  if (found.state === 'issued') return planIssuedAgain(known, road, found.record);
  if (found.gaps.length > 0) return refused(...found.gaps.map((gap) => `${found.card.missionDay}: ${gap}`));
  return { kind: 'card', planned: { day, card: found.card, reckonings: road, replaces: recalledOn(road, day) } };
};

const planIssuedAgain = (known: Known, road: Road, record: CardRecord): OneDay => {
  const { card } = record.document;
  if (record.outcome !== 'none')
    return {
      kind: 'refused',
      says: [`${card.missionDay}: results are recorded for this card; it cannot be issued again.`],
    };
  const again = planAgain(known, road, card.day);
  if (!again)
    return { kind: 'refused', says: [`${card.missionDay}: the programme has no session on that day any more.`] };
  if (again.gaps.length > 0) return { kind: 'refused', says: again.gaps.map((gap) => `${card.missionDay}: ${gap}`) };
  return { kind: 'card', planned: { day: card.day, card: again.card, reckonings: again, replaces: record } };
};

/** A recalled card is replaced by the next one issued for its day. */
const recalledOn = (road: Road, day: Day): CardRecord | null =>
  road.cards
    .flatMap((each) => (each.state === 'issued' && each.day === day ? [each.record] : []))
    .find((record) => record.delivery === 'recalled') ?? null;

/** One line for each track and load: cards of a week often carry the same raise. */
const mergeRaises = (raises: readonly Raise[]): readonly Raise[] => [
  ...new Map(raises.map((raise) => [nameOfRaise(raise), raise] as const)).values(),
];

export interface Signing {
  readonly signer: Signer;
  readonly signsFor: string | null;
  readonly issuedAt: Instant;
  readonly newId: () => string;
  /** Name and version of the program. */
  readonly program: string;
  /** Typed reasons for raises above the policy's step, by track. */
  readonly reasons: Readonly<Record<string, string>>;
}

export type Issuing =
  | { readonly kind: 'issued'; readonly documents: readonly IssuedCard[] }
  | { readonly kind: 'refused'; readonly refusals: readonly string[] };

/** The documents that a signature issues: all of the days or none. */
export const issueDocuments = (known: Known, road: Road, days: readonly Day[], signing: Signing): Issuing => {
  const plan = planIssue(known, road, days);
  const unreasoned = plan.raises.filter((raise) => raise.needsReason && !signing.reasons[raise.track]?.trim());
  const refusals = [
    ...plan.refusals,
    ...unreasoned.map(
      (raise) => `${raise.exerciseName}: more at the bar than one signature covers without a typed reason.`,
    ),
  ];
  if (refusals.length > 0 || plan.cards.length === 0)
    return { kind: 'refused', refusals: refusals.length > 0 ? refusals : ['No day was chosen.'] };
  return { kind: 'issued', documents: plan.cards.map((planned) => documentOf(known, road, planned, signing)) };
};

const documentOf = (
  known: Known,
  road: Road,
  { card, reckonings, replaces }: IssuePlan['cards'][number],
  signing: Signing,
): IssuedCard => {
  const workings = card.items.flatMap((item) => workingsOfItem(known, reckonings, card, item));
  const content = {
    document: 'ballast issued card' as const,
    version: 1 as const,
    id: idOf<'card'>(signing.newId()),
    replaces: replaces?.document.id ?? null,
    issuedAt: signing.issuedAt,
    issuedBy: { id: signing.signer.id, name: signing.signer.name, signsFor: signing.signsFor },
    validUntil: validUntil(known, card),
    person: { id: known.person, name: known.name },
    mission: { name: known.mission?.name ?? '', launch: known.mission?.launch ?? card.day },
    card,
    sets: liftsOf(card).flatMap((item) =>
      item.sets.map((_, place) => ({ id: idOf<'set'>(signing.newId()), item: item.item, place })),
    ),
    raises: raisesOf(card),
    workings,
    formulas: formulasOf(workings),
    basis: {
      upTo: road.upTo,
      facts: factsBehind(workings),
      programme: card.programme.id,
      estimates: estimatesOf(known, card),
      machines: [...known.house.machines.values()].filter((machine) =>
        card.items.some((item) => 'machine' in item && item.machine === machine.id),
      ),
      program: signing.program,
    },
  };
  return { ...content, digest: digestOf(content) };
};

/** Its own day and a week, or the last day of its phase, whichever is earlier. */
const validUntil = (known: Known, card: Card): Day => {
  const week = addDays(card.day, known.house.policies.cardValidDays);
  const phase = known.house.programmes.get(card.programme.id)?.phases.find((each) => each.name === card.phase);
  const last = phase && known.mission ? daysOfPhase(phase, known.mission)?.last : null;
  return last === null || last === undefined ? week : (Math.max(card.day, Math.min(week, last)) as Day);
};

const factsBehind = (workings: readonly Working[]): readonly FactId[] => [
  ...new Set(
    workings.flatMap((working) =>
      working.given.flatMap(({ from }) =>
        from.kind === 'estimate' ? from.facts : from.kind === 'fact' || from.kind === 'decision' ? [from.fact] : [],
      ),
    ),
  ),
];

const estimatesOf = (known: Known, card: Card): readonly Estimate[] => {
  const context = planContext(known);
  return liftsOf(card).flatMap((item) => {
    const exercise = known.house.exercises.get(item.exercise);
    const machine = known.house.machines.get(item.machine);
    const frozen =
      exercise && machine && item.row !== null ? frozenCapacity(context, exercise, machine, card.day) : null;
    return frozen?.reading.kind === 'estimate' ? [frozen.reading.estimate] : [];
  });
};

import type { Day } from '#units/day.ts';
import { liftsOf, raisesOf, workIncrements, type Card, type CardBouts, type CardDrill } from '#domain/card.ts';
import { calibrationFactor } from '#assessing/bar-equivalent.ts';
import { bodyMassOn, ofKind } from '#domain/known.ts';
import { showHarness } from '#domain/show-piece.ts';
import type { Proposal, RoadCard } from '#domain/road.ts';
import type { Raise } from '#domain/raise.ts';
import type { IssuedAgainst } from './derive.ts';
import { frozenCapacity } from './frozen-capacity.ts';
import { liftingMachineOn } from './machine-on.ts';
import { massInFlight, type PlanContext } from './plan-context.ts';
import { tracksOf, type Progress } from './progress.ts';
import { profileProposals } from './profile-proposals.ts';
import { proposalId } from './proposal-id.ts';
import { settingsOf } from './take-pieces.ts';

/** Later body masses that differ by more than this from the one in use are shown and propose; common practice. */
const MASS_BAND = 0.02;

/** A calibration that changes what is delivered by less than this is no news. */
const SMALLEST_CHANGE = 0.001;

/** What the tool suggests today, each with what triggered it. Nothing of it happens without a signature. */
export const proposalsOf = (
  context: PlanContext,
  progress: Progress,
  cards: readonly RoadCard[],
  issuedAhead: readonly IssuedAgainst[],
  today: Day,
): readonly Proposal[] =>
  [
    ...raiseProposals(context, cards),
    ...reBaseProposals(context, progress, today),
    ...overTheRule(context, progress),
    ...massProposals(context, today),
    ...calibrationProposals(context, progress, today),
    ...issueAgain(context, issuedAhead),
    ...profileProposals(context, progress, today),
  ].map((proposal) => (context.declined.has(proposal.id) ? { ...proposal, state: 'declined' as const } : proposal));

/** Raises that stand on planned cards because results earned them: one proposal a lift, all its tracks in one signature. */
const raiseProposals = (context: PlanContext, cards: readonly RoadCard[]): readonly Proposal[] => {
  const raises = cards.flatMap((each) =>
    each.state === 'planned'
      ? raisesOf(each.card).flatMap((raise) => (raise.proposal ? [{ raise, day: each.day }] : []))
      : [],
  );
  const ids = [...new Set(raises.map(({ raise }) => raise.proposal))];
  return ids.map((id): Proposal => {
    const group = raises.filter(({ raise }) => raise.proposal === id);
    const unique = [...new Map(group.map(({ raise }) => [raise.track, raise] as const)).values()];
    const [first, day] = [unique[0] as Raise, (group[0] as { readonly day: Day }).day];
    return {
      id: first.proposal as Proposal['id'],
      person: context.known.person,
      rule: first.cause === 'ramp step' ? 'ramp step' : 'step rule',
      state: 'open',
      day,
      says: raiseSentence(first),
      because: first.because,
      raises: unique,
      change: { kind: 'raise', person: context.known.person, from: day, raises: unique },
    };
  });
};

const raiseSentence = (raise: Raise): string => {
  const show = (increments: number): string => String(Number((increments * Number(raise.increment)).toFixed(6)));
  const bar =
    raise.atTheBar === null
      ? ''
      : `, ${raise.atTheBar >= 0 ? '+' : '−'}${Math.abs(raise.atTheBar * 100).toFixed(1)} % at the bar`;
  const from = raise.from === null ? '' : `${show(raise.from)} to `;
  const why =
    raise.cause === 'ramp step' ? 'two clean sessions since the last ramp step' : 'all repetitions inside the rule';
  return `${raise.exerciseName} ${from}${show(raise.to)} ${raise.unit}${bar}: ${why}.`;
};

/** The estimate has left its band around the one that loads are made from: read it anew, by signature. */
const reBaseProposals = (context: PlanContext, progress: Progress, today: Day): readonly Proposal[] => {
  const machine = liftingMachineOn(context.known, today);
  if (!machine) return [];
  // On the way up loads are low on purpose, and a reserve far from failure says little: nothing is read anew there.
  const settled = [...progress.lifts].filter(([id]) =>
    tracksOf(progress, id).some((track) => track.atTop && track.machine === machine.id),
  );
  return settled.flatMap(([id]): readonly Proposal[] => {
    const exercise = context.known.house.exercises.get(id);
    const frozen = exercise && frozenCapacity(context, exercise, machine, today);
    if (!exercise || frozen?.reading.kind !== 'estimate' || today <= frozen.cause.day) return [];
    const now = context.capacity.on(exercise, machine, today);
    if (now.kind !== 'estimate') return [];
    const change = now.estimate.median / frozen.reading.estimate.median - 1;
    if (Math.abs(change) <= context.known.house.policies.estimateBand) return [];
    const because = now.estimate.facts.slice(-1);
    return [
      {
        id: proposalId('re-base', context.known.person, id, because),
        person: context.known.person,
        rule: 're-base',
        state: 'open',
        day: today,
        says: `${exercise.name}: the estimate has moved ${change > 0 ? 'up' : 'down'} ${Math.abs(change * 100).toFixed(0)} % from the one its loads were made from; read it anew?`,
        because,
        raises: [],
        change: { kind: 're-base', person: context.known.person, exercise: id, from: today },
      },
    ];
  });
};

const overTheRule = (context: PlanContext, progress: Progress): readonly Proposal[] =>
  [...progress.tracks.values()].flatMap(({ over, track, exercise }): readonly Proposal[] => {
    if (!over) return [];
    const name = context.known.house.exercises.get(exercise)?.name ?? exercise;
    return [
      {
        id: proposalId('over the rule', context.known.person, track, [over.fact]),
        person: context.known.person,
        rule: 'over the rule',
        state: 'open',
        day: over.day,
        says: `${name}: ${over.done} was taken where the signed rule allowed ${over.allowed}; the next card stands at ${over.allowed}. Look at it.`,
        because: [over.fact],
        raises: [],
        change: null,
      },
    ];
  });

const massProposals = (context: PlanContext, today: Day): readonly Proposal[] => {
  const { known } = context;
  const used = massInFlight(context, today);
  const newest = bodyMassOn(known, today);
  if (
    !used ||
    !newest ||
    newest.fact.what !== 'body mass' ||
    (known.mission && newest.fact.day <= known.mission.launch)
  )
    return [];
  const change = newest.kilograms / used.kilograms - 1;
  const isFixed = ofKind(known, 'decided').some(
    ({ decision, sequence }) => decision.kind === 'fix body mass' && sequence > newest.fact.sequence,
  );
  if (Math.abs(change) <= MASS_BAND || isFixed) return [];
  const text = `${newest.fact.value.text} ${newest.fact.value.unit}`;
  return [
    {
      id: proposalId('body mass', known.person, 'body mass', [newest.fact.id]),
      person: known.person,
      rule: 'body mass',
      state: 'open',
      day: today,
      says: `Body mass is now ${text}, ${Math.abs(change * 100).toFixed(1)} % ${change < 0 ? 'under' : 'over'} the one that loads are made from; take it?`,
      because: [newest.fact.id],
      raises: [],
      change: {
        kind: 'fix body mass',
        person: known.person,
        mass: newest.fact.value,
        from: today,
        reason: `measured ${text}`,
      },
    },
  ];
};

/** A new calibration changes no load: it says which loads were made before it. */
const calibrationProposals = (context: PlanContext, progress: Progress, today: Day): readonly Proposal[] => {
  const { known } = context;
  const machine = liftingMachineOn(known, today);
  const newest =
    machine && known.house.calibrations.filter((fact) => fact.machine === machine.id && fact.day <= today).at(-1);
  if (!machine || !newest) return [];
  const lifts = [...progress.lifts.keys()].flatMap((id) => {
    const exercise = known.house.exercises.get(id);
    const frozen = exercise && frozenCapacity(context, exercise, machine, today);
    const before = frozen ? calibrationFactor(known, machine.id, frozen.cause.day) : 1;
    const change = Number(newest.factor) / before - 1;
    return exercise &&
      frozen?.reading.kind === 'estimate' &&
      frozen.cause.day < newest.day &&
      Math.abs(change) > SMALLEST_CHANGE
      ? [{ name: exercise.name.toLowerCase(), change }]
      : [];
  });
  const [first] = lifts;
  if (!first) return [];
  return [
    {
      id: proposalId('calibration', known.person, machine.id, [newest.id]),
      person: known.person,
      rule: 'calibration',
      state: 'open',
      day: newest.day,
      says: `${machine.name}: since its last calibration it delivers ${Math.abs(first.change * 100).toFixed(1)} % ${first.change > 0 ? 'more' : 'less'} than when the loads of ${lifts.map((lift) => lift.name).join(', ')} were made. The loads stay; look at them.`,
      because: [newest.id],
      raises: [],
      change: null,
    },
  ];
};

/** Issued cards stand; where they would be made differently now, the Desk offers to issue again. */
const issueAgain = (context: PlanContext, issuedAhead: readonly IssuedAgainst[]): readonly Proposal[] => {
  const changed = issuedAhead.flatMap(({ record, now }) => {
    const differences = now ? loadDifferences(record.document.card, now.card) : [];
    return differences.length > 0 && record.outcome === 'none' ? [{ record, differences }] : [];
  });
  const [first] = changed;
  if (!first) return [];
  const days = changed.map(({ record }) => record.document.card.missionDay).join(', ');
  return [
    {
      id: proposalId('issue again', context.known.person, changed.flatMap((each) => each.differences).join('; '), []),
      person: context.known.person,
      rule: 'issue again',
      state: 'open',
      day: first.record.document.card.day,
      says: `Issued cards (${days}) would be made differently now: ${[...new Set(changed.flatMap((each) => each.differences))].join('; ')}. Issue them again?`,
      because: [],
      raises: [],
      change: null,
    },
  ];
};

const loadDifferences = (issued: Card, now: Card): readonly string[] => [
  ...liftDifferences(issued, now),
  ...pieceDifferences(issued, now),
];

/** What is set in bouts and drills. A line for one day, and what was not there before, are no difference. */
const pieceDifferences = (issued: Card, now: Card): readonly string[] =>
  issued.items.flatMap((item) => {
    if (item.kind === 'lift') return [];
    const other = now.items.find((each) => each.item === item.item);
    if (!other) return [`${item.exerciseName} would be left out`];
    if (other.kind === 'lift') return [];
    const [was, is] = [showSettings(item), showSettings(other)];
    return was === is ? [] : [`${item.exerciseName} ${was} → ${is}`];
  });

const showSettings = (item: CardBouts | CardDrill): string => {
  const { watts, speed, left, right } = settingsOf(item);
  const set = [
    ...(item.kind === 'bouts' && item.harness ? [`harness ${showHarness(item.harness)}`] : []),
    ...(watts === null ? [] : [`${watts} W`]),
    ...(speed === null ? [] : [`${speed} km/h`]),
    ...(left === null ? [] : [`left ${left} N`]),
    ...(right === null ? [] : [`right ${right} N`]),
  ];
  return set.length > 0 ? set.join(', ') : 'by effort';
};

const liftDifferences = (issued: Card, now: Card): readonly string[] =>
  liftsOf(issued).flatMap((item) => {
    const other = liftsOf(now).find((each) => each.item === item.item);
    const [was, is] = [workIncrements(item), other ? workIncrements(other) : null];
    if (is === null) return [`${item.exerciseName} would be left out`];
    const show = (increments: number | null): string =>
      String(Number(((increments ?? 0) * Number(item.increment)).toFixed(6)));
    return was === is ? [] : [`${item.exerciseName} ${show(was)} → ${show(is)} ${item.unit}`];
  });

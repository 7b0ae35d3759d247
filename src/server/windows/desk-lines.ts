import { liftsOf } from '#domain/card.ts';
import { isoOfDay } from '#units/day.ts';
import { cardCode } from '#domain/card-code.ts';
import { ofKind, type Known } from '#domain/known.ts';
import { showMissionDay } from '#domain/mission-day.ts';
import type { CardRecord, Proposal, Road } from '#domain/road.ts';
import { DESK_ASKS, type DeskLine } from '#contract/windows/desk-window.ts';
import { roadLines } from './desk-road-lines.ts';
import { showDone, workSetsWithResults } from './item-result.ts';
import { isOurs } from './person-head.ts';
import { showWorkSets } from './set-runs.ts';
import { cardOf } from './sheet-cell.ts';
import { restrictionsOf } from './sheet-strips.ts';

const ORDER: readonly DeskLine['kind'][] = [
  'recalled',
  'hands to be looked at',
  'restriction unconfirmed',
  'unread note',
  'proposal',
  ...DESK_ASKS,
];

/** Worst first: what a physician took back stands above everything until its receipt is recorded. */
export const inOrderOfNeed = (lines: readonly DeskLine[]): readonly DeskLine[] =>
  lines.toSorted((a, b) => ORDER.indexOf(a.kind) - ORDER.indexOf(b.kind));

export const deskLines = (known: Known, road: Road): readonly DeskLine[] => {
  if (!isOurs(known)) return [];
  const records = road.cards.flatMap((card) => (card.state === 'issued' ? [card.record] : []));
  return [
    ...records.flatMap((record) => recalledLine(known, road, record)),
    ...unconfirmedLines(known),
    ...unreadNotes(known, records),
    ...road.proposals.flatMap((proposal) => proposalLine(known, records, proposal)),
    ...roadLines(known, road),
  ];
};

const who = ({ person, name }: Known) => ({ person, name });

const recalledLine = (known: Known, road: Road, { document, recall }: CardRecord): readonly DeskLine[] => {
  if (!recall || recall.receiptRecorded) return [];
  const { card } = document;
  const code = cardCode(document.digest);
  return [
    {
      kind: 'recalled',
      ...who(known),
      card: document.id,
      day: card.day,
      says: `Card ${code} is recalled. ${recall.says}. Tell ${known.name}, then record that it was received.`,
      readUp: `${card.missionDay}, card ${code}: do not train from it. ${insteadOf(road, document)}`,
    },
  ];
};

/** The day's new card in one breath, or none: nobody trains from half a card. */
const insteadOf = (road: Road, { card }: CardRecord['document']): string => {
  const other = road.cards.find(
    (each) =>
      each.day === card.day &&
      (each.state === 'planned' ||
        (each.state === 'issued' && (each.record.delivery === 'issued' || each.record.delivery === 'received'))),
  );
  if (!other) return 'Wait for a new card.';
  const sets = liftsOf(cardOf(other)).map((item) => `${item.exerciseName} ${showWorkSets(item, 'with unit')}`);
  const lead = other.state === 'issued' ? `Use card ${cardCode(other.record.document.digest)}` : 'A new card follows';
  return sets.length === 0 ? `${lead}.` : `${lead}: ${sets.join('; ')}.`;
};

const unconfirmedLines = (known: Known): readonly DeskLine[] =>
  restrictionsOf(known).flatMap(({ fact, says, liftedOn }) =>
    fact.restriction.confirmed || liftedOn !== null
      ? []
      : [
          {
            kind: 'restriction unconfirmed' as const,
            ...who(known),
            fact: fact.id,
            says: `${says}, told by ${fact.restriction.toldBy} on ${isoOfDay(fact.restriction.toldOn)}. It binds; have the physician confirm it.`,
          },
        ],
  );

const unreadNotes = (known: Known, records: readonly CardRecord[]): readonly DeskLine[] => {
  const read = new Set(ofKind(known, 'read').map(({ note }) => note));
  return ofKind(known, 'noted')
    .filter(({ id }) => !read.has(id))
    .map((note) => {
      const card = records.find(({ document }) => document.id === note.card)?.document.card;
      const on = known.mission ? showMissionDay(known.mission, note.day) : isoOfDay(note.day);
      const about = card?.items.find((item) => item.item === note.item)?.exerciseName;
      return {
        kind: 'unread note',
        ...who(known),
        note: note.id,
        card: note.card,
        says: `A note of ${on}${about ? ` on ${about.toLowerCase()}` : ''} waits: read it. Until then the lift is not raised.`,
        text: note.text,
      };
    });
};

const proposalLine = (known: Known, records: readonly CardRecord[], proposal: Proposal): readonly DeskLine[] =>
  proposal.state === 'open'
    ? [
        {
          kind: 'proposal',
          ...who(known),
          proposal: proposal.id,
          says: proposal.says,
          raises: proposal.raises,
          canSign: proposal.change !== null,
          setsBy: setsByOf(proposal),
          behind: lastSessions(records, proposal),
        },
      ]
    : [];

const setsByOf = ({ change }: Proposal): number | null =>
  change?.kind === 'adjust' && change.change.kind === 'sets by' ? change.change.by : null;

const SESSIONS_BEHIND = 3;

/** The last three sessions of what the proposal raises. */
const lastSessions = (records: readonly CardRecord[], { raises }: Proposal): readonly string[] => {
  const exercises = new Set<string>(raises.map(({ exercise }) => exercise));
  return records
    .flatMap(({ document, results }) =>
      liftsOf(document.card)
        .filter((item) => exercises.has(item.exercise))
        .flatMap((item) => {
          const done = showDone(item, workSetsWithResults(item, document, results));
          return done === null
            ? []
            : [`${document.card.missionDay}: ${item.exerciseName} ${showWorkSets(item)}, done ${done}`];
        }),
    )
    .slice(-SESSIONS_BEHIND);
};

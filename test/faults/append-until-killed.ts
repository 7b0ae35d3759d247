import { ISSUED_CARD } from '#contract/facts/any-issued-card.setup.ts';
import type { Draft, Fact, FactBody } from '#domain/fact.ts';
import { idOf, instant, type Instant } from '#domain/identity.ts';
import { endOfLog } from '#domain/log.ts';
import { openLogStore } from '#storage/open-log-store.ts';
import { isoDay } from '#units/day.ts';
import { entered } from '#units/entered.ts';
import { writeSync } from 'node:fs';

/**
 * Writes batches like those of an import and of an issuing, one after the other, and says of each when it is confirmed.
 * It never ends by itself. Each batch has a moment of its own and says in its first fact how many it has.
 */
const [path = '', first = '0'] = process.argv.slice(2);

let tick = Number(first);
const clock = (): Instant => instant(new Date(Date.UTC(2027, 2, 1) + (tick += 1)).toISOString());
const say = (line: string): void => void writeSync(1, `${line}\n`);

const PERSON = idOf<'person'>('marit-lund');

const noted = (text: string): FactBody => ({
  kind: 'noted',
  person: PERSON,
  day: isoDay('2027-03-01'),
  card: null,
  item: null,
  text,
});

const lifted = (place: number): FactBody => ({
  kind: 'lifted',
  person: PERSON,
  day: isoDay('2027-01-20'),
  exercise: idOf<'exercise'>('back-squat'),
  machine: idOf<'machine'>('bar'),
  load: entered(String(60 + (place % 80)), 'kg'),
  repetitions: 1 + (place % 10),
  effort: null,
  side: null,
});

const issued: FactBody = {
  kind: 'decided',
  decision: { kind: 'issue', person: PERSON, card: ISSUED_CARD, raises: ISSUED_CARD.raises },
  answers: null,
  basis: ISSUED_CARD.basis.upTo,
};

const ofLength = (length: number, body: (place: number) => FactBody): readonly FactBody[] => [
  noted(`a batch of ${length}`),
  ...Array.from({ length: length - 1 }, (_, place) => body(place)),
];

/** Import, week of cards, one note. */
const BATCHES = [ofLength(200, lifted), ofLength(7, () => issued), ofLength(1, () => issued)];

const draftsOn = (log: readonly Fact[], bodies: readonly FactBody[]): readonly Draft[] =>
  bodies.map((body, place) => ({
    id: idOf<'fact'>(`f-${endOfLog(log) + place + 1}`),
    body,
    recordedBy: idOf<'signer'>('ingrid'),
    supersedes: null,
    reason: null,
  }));

say('opening');
const opening = await openLogStore({ file: { path }, clock, about: 'own' });
if (opening.kind !== 'opened') throw new Error(opening.problem.what);
say('opened');
for (let turn = 0; ; turn += 1) {
  const bodies = BATCHES[turn % BATCHES.length] ?? [];
  const result = await opening.store.transact((log) => ({
    kind: 'drafts',
    drafts: draftsOn(log, bodies),
    result: null,
  }));
  if (result.kind !== 'committed') throw new Error(JSON.stringify(result));
  const last = result.facts.at(-1);
  say(`confirmed ${last?.sequence} ${last?.digest}`);
}

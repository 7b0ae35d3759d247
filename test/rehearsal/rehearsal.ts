import { addDays, isoDay, type Day } from '#units/day.ts';
import { entered } from '#units/entered.ts';
import { liftsOf, type CardBouts, type CardDrill, type CardLift } from '#domain/card.ts';
import type { Effort } from '#domain/effort.ts';
import type { Draft, Fact, FactBody, Sequence, PieceResult, SetResult, Signer } from '#domain/fact.ts';
import { idOf, instant, type FactId, type PersonId, type ProgrammeVersionId } from '#domain/identity.ts';
import type { IssuedCard } from '#domain/issued-card.ts';
import { knownAt, type Known } from '#domain/known.ts';
import { endOfLog, enterInLog, factsOfKind } from '#domain/log.ts';
import type { Road } from '#domain/road.ts';
import { derive } from '#planning/derive.ts';
import { issueDocuments } from '#planning/issue.ts';
import { recallsUnder } from '#planning/recall.ts';
import { SET_PROGRAMME } from '#shipped/set-programme.ts';
import { shippedFacts } from '#shipped/shipped-house.ts';

export const PERSON: PersonId = idOf('person-1');
export const LAUNCH = isoDay('2027-03-01');
const MISSION = idOf<'mission'>('mission-1');
export const SIGNER: Signer = {
  id: idOf('signer-1'),
  name: 'M. Arkwright',
  role: 'specialist',
  signsFor: null,
  from: null,
  until: null,
};
const RECORDED_AT = instant('2027-02-01T08:00:00.000Z');

export const onFlightDay = (flightDay: number): Day => addDays(LAUNCH, flightDay - 1);

export interface BodySketch {
  readonly sex: 'female' | 'male';
  readonly mass: string;
  readonly squat?: string;
  readonly deadlift?: string;
  readonly heaviestBar?: string;
}

/** How a card was done: every set as planned, unless said otherwise. */
export interface Doing {
  readonly rpe?: number | null;
  readonly hurts?: readonly {
    readonly site: 'shoulder' | 'low back' | 'knee';
    readonly score: number;
    readonly when?: 'during' | 'next morning';
  }[];
  readonly set?: (result: SetResult, item: CardLift) => SetResult;
}

const entryOf = (body: FactBody, id: string, place: number, supersedes: FactId | null = null): Fact => {
  const draft: Draft = {
    id: idOf(id),
    body,
    recordedBy: SIGNER.id,
    supersedes,
    reason: supersedes ? 'corrected' : null,
  };
  return enterInLog(draft, place as Sequence, RECORDED_AT);
};

/** How every rehearsal begins, entered once for all of them. */
const SHIPPED: readonly Fact[] = shippedFacts().map((body, place) => entryOf(body, `id-${place + 1}`, place + 1));

/** A log in memory that lives through issuing and training with the real rules. */
export class Rehearsal {
  #log: readonly Fact[] = [];
  #ids = 0;

  constructor(begin: BodySketch | { readonly log: readonly Fact[]; readonly ids: number }) {
    if ('log' in begin) {
      this.#log = begin.log;
      this.#ids = begin.ids;
    } else this.#introduce(begin);
  }

  #introduce(body: BodySketch): void {
    this.#log = SHIPPED;
    this.#ids = SHIPPED.length;
    this.add({ kind: 'signs', signer: SIGNER });
    this.add({
      kind: 'introduced',
      person: PERSON,
      name: 'Person One',
      sex: body.sex,
      birthDate: null,
      trainingAge: null,
    });
    this.add({
      kind: 'dated',
      mission: MISSION,
      name: 'A mission',
      site: idOf('aboard'),
      launch: LAUNCH,
      landing: { earliest: addDays(LAUNCH, 180), latest: addDays(LAUNCH, 180) },
    });
    this.add({ kind: 'assigned', person: PERSON, mission: MISSION, role: 'prime', team: 'ours', spaceWalks: false });
    this.add({
      kind: 'measured',
      person: PERSON,
      day: addDays(LAUNCH, -7),
      what: 'body mass',
      value: entered(body.mass, 'kg'),
    });
    if (body.squat) this.test('back-squat', body.squat);
    if (body.deadlift) this.test('deadlift', body.deadlift);
    if (body.heaviestBar)
      this.add({ kind: 'carried', person: PERSON, day: addDays(LAUNCH, -20), load: entered(body.heaviestBar, 'kg') });
    this.add({
      kind: 'decided',
      answers: null,
      basis: this.end,
      decision: { kind: 'follow', person: PERSON, programme: SET_PROGRAMME.id, from: { from: 'launch', days: 0 } },
    });
  }

  /** From a day counted from launch, another programme. */
  follow(programme: ProgrammeVersionId, days: number): void {
    this.add({
      kind: 'decided',
      answers: null,
      basis: this.end,
      decision: { kind: 'follow', person: PERSON, programme, from: { from: 'launch', days } },
    });
  }

  /** The same life up to here, to be gone on with in another way. */
  fork(): Rehearsal {
    return new Rehearsal({ log: this.#log, ids: this.#ids });
  }

  get log(): readonly Fact[] {
    return this.#log;
  }

  /** Every card that was issued, in order. */
  get issued(): readonly IssuedCard[] {
    return factsOfKind(this.#log, 'decided').flatMap(({ decision }) =>
      decision.kind === 'issue' ? [decision.card] : [],
    );
  }

  get end(): Sequence {
    return endOfLog(this.#log);
  }

  newId(): string {
    this.#ids += 1;
    return `id-${this.#ids}`;
  }

  add(body: FactBody, supersedes: FactId | null = null): Fact {
    const fact = entryOf(body, this.newId(), this.end + 1, supersedes);
    this.#log = [...this.#log, fact];
    return fact;
  }

  /** A single, to its end, long before launch. */
  test(exercise: string, kilograms: string, day: Day = addDays(LAUNCH, -90)): Fact {
    return this.add({
      kind: 'lifted',
      person: PERSON,
      day,
      exercise: idOf(exercise),
      machine: idOf('ground-free-bar'),
      load: entered(kilograms, 'kg'),
      repetitions: 1,
      effort: { kind: 'repetitions in reserve', value: 0 },
      side: null,
    });
  }

  known(): Known {
    const known = knownAt(this.#log, PERSON, this.end);
    if (!known) throw new Error('Nobody was introduced.');
    return known;
  }

  road(today: Day, days = 14): Road {
    return derive(this.known(), today, addDays(today, days - 1));
  }

  issue(
    today: Day,
    days: readonly Day[],
    reasons: Readonly<Record<string, string>> = {},
    road: Road = this.road(today, 28),
  ): readonly IssuedCard[] {
    const issuing = issueDocuments(this.known(), road, days, {
      signer: SIGNER,
      signsFor: null,
      issuedAt: RECORDED_AT,
      newId: () => this.newId(),
      program: 'rehearsal',
      reasons,
    });
    if (issuing.kind === 'refused') throw new Error(issuing.refusals.join(' '));
    const basis = this.end;
    for (const card of issuing.documents)
      this.add({
        kind: 'decided',
        answers: null,
        basis,
        decision: { kind: 'issue', person: PERSON, card, raises: card.raises },
      });
    return issuing.documents;
  }

  train(document: IssuedCard, { rpe = 6, hurts = [], set = (result) => result }: Doing = {}): void {
    const effort: Effort | null = rpe === null ? null : { kind: 'RPE', value: rpe };
    const sets = document.sets.flatMap((issued) => {
      const item = liftsOf(document.card).find((each) => each.item === issued.item) as CardLift;
      const planned = item.sets[issued.place] as CardLift['sets'][number];
      if (planned.kind === 'warm-up') return [];
      const load = entered(String(planned.load.increments * Number(item.increment)), item.unit);
      return [set({ set: issued.id, repetitions: planned.repetitions, load, effort, side: planned.side }, item)];
    });
    this.add({
      kind: 'trained',
      person: PERSON,
      day: document.card.day,
      card: document.id,
      sets,
      pieces: document.card.items.flatMap((item) => (item.kind === 'lift' ? [] : [pieceDone(item, effort)])),
      sessionRpe: rpe,
      minutes: 80,
    });
    for (const { site, score, when = 'during' } of hurts)
      this.add({
        kind: 'hurt',
        person: PERSON,
        day: document.card.day,
        card: document.id,
        item: null,
        site,
        side: null,
        score,
        when,
      });
  }

  /** Issues and trains every session of these flight days, as it stood on its own morning. */
  live(from: number, to: number, doing: Doing = {}): readonly IssuedCard[] {
    const lived: IssuedCard[] = [];
    for (let flightDay = from; flightDay <= to; flightDay += 1) {
      const today = onFlightDay(flightDay);
      const road = this.road(today, 1);
      const items = road.cards.flatMap((card) =>
        card.state === 'planned' && card.day === today ? card.card.items : [],
      );
      if (items.length === 0) continue;
      const reasons = Object.fromEntries(items.map((item) => [item.track, 'rehearsed'] as const));
      // What is planned for a day does not hang on how far ahead the road is laid.
      const [document] = this.issue(today, [today], reasons, road);
      if (!document) continue;
      this.train(document, doing);
      lived.push(document);
    }
    return lived;
  }

  /** A restriction with the recalls it asks for, as one transaction writes them. */
  restrict(body: Extract<FactBody, { readonly kind: 'restricted' }>): readonly FactBody[] {
    const fact = this.add(body);
    const recalls = recallsUnder(this.known(), fact.id, body.restriction.toldOn);
    return recalls.map((decision) => {
      const recall: FactBody = { kind: 'decided', answers: null, basis: this.end, decision };
      this.add(recall);
      return recall;
    });
  }
}

/** Done whole, as planned. */
const pieceDone = (item: CardBouts | CardDrill, effort: Effort | null): PieceResult => ({
  item: item.item,
  done: item.kind === 'bouts' ? item.bouts.length : item.sets.length,
  minutes: null,
  watts: null,
  speed: null,
  harness: null,
  heartRate: null,
  effort,
});

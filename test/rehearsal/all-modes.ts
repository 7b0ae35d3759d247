import { addDays, isoDay, type Day } from '#units/day.ts';
import { entered } from '#units/entered.ts';
import { isCardLift, type Card, type CardBouts, type CardDrill } from '#domain/card.ts';
import type { Exercise, Machine, Site } from '#domain/catalogue.ts';
import type { FactBody, PieceResult } from '#domain/fact.ts';
import { idOf } from '#domain/identity.ts';
import type { IssuedCard } from '#domain/issued-card.ts';
import type { Policies } from '#domain/policies.ts';
import {
  takeUp,
  type BoutsItem,
  type Deload,
  type DrillItem,
  type ProgrammeBout,
  type ProgrammeItem,
  type ProgrammeVersion,
} from '#domain/programme.ts';
import type { BoutIntensity } from '#domain/prescription.ts';
import type { RestrictionLimit, RestrictionScope } from '#domain/restriction.ts';
import type { Test } from '#domain/tested.ts';
import type { Working } from '#domain/working.ts';
import { workingsOf } from '#planning/workings.ts';
import { LAUNCH, onFlightDay, PERSON, Rehearsal, SIGNER } from './rehearsal.ts';

/* An invented house with machines for endurance and gear for hands, and one person who trains in it. */

export const ABOARD: Site = { id: idOf('aboard'), name: 'Aboard', place: 'aboard' };
export const HALL: Site = { id: idOf('hall'), name: 'Hall', place: 'ground' };

const MACHINE = {
  groundUnitOf: null,
  unit: 'kg',
  increment: '1',
  least: '0',
  ceiling: '1',
  limits: [],
  mostWatts: null,
  mostSpeed: null,
  minutes: { setUp: 2, stow: 1, changeExercise: 1, changeLoad: 0.5 },
  outOfService: null,
} as const satisfies Partial<Machine>;

const machine = (kind: Machine['kind'], gravity: Machine['gravity'], more: Partial<Machine> = {}): Machine => ({
  ...MACHINE,
  id: idOf(`${kind} ${gravity}`),
  name: `${kind}, ${gravity === '0 g' ? 'aboard' : 'hall'}`,
  site: gravity === '0 g' ? ABOARD.id : HALL.id,
  kind,
  gravity,
  ...more,
});

export const HARNESS_BELT = machine('treadmill', '0 g', { least: '20', ceiling: '120', mostSpeed: 20 });
export const CYCLE_ABOARD = machine('cycle', '0 g', { mostWatts: 350 });
export const CYCLE = machine('cycle', '1 g', { mostWatts: 600 });
export const BELT = machine('treadmill', '1 g', { mostSpeed: 20 });
export const ROWER = machine('rower', '1 g', { mostWatts: 500 });
export const BAR = machine('free bar', '1 g', { increment: '2.5', least: '20', ceiling: '300' });
export const PULLER = machine('resistive machine', '0 g', { least: '5', ceiling: '272' });

export const MACHINES: readonly Machine[] = [HARNESS_BELT, CYCLE_ABOARD, CYCLE, BELT, ROWER, BAR, PULLER];

const exercise = (name: string, pattern: Exercise['pattern'], more: Partial<Exercise>): Exercise => ({
  id: idOf(name),
  name,
  alsoKnownAs: [],
  pattern,
  bodyPart: 'lower body',
  perSide: false,
  shareModel: 'none',
  carriedAt: 'none',
  loads: ['knee', 'ankle'],
  capacity: { kind: 'none' },
  roundTo: { kg: '1', lb: '1' },
  secondsPerRepetition: 2,
  cues: [],
  faults: [],
  cautions: [],
  settingFields: [],
  machineKinds: [],
  substitutes: [],
  source: '',
  ...more,
});

export const RUN = exercise('Run', 'running', { machineKinds: ['treadmill'] });
export const WALK = exercise('Walk', 'walking', { machineKinds: ['treadmill'] });
export const RIDE = exercise('Ride', 'cycling', { machineKinds: ['cycle'], loads: ['knee'] });
export const ROW = exercise('Row', 'rowing', { machineKinds: ['rower'], loads: ['low back'] });
export const GRIP = exercise('Grip', 'grip', {
  machineKinds: ['hand gear'],
  perSide: true,
  loads: ['hand', 'wrist'],
  bodyPart: 'upper body',
});
export const HOLD = exercise('Hold', 'trunk', { machineKinds: ['no gear'], loads: ['low back'] });
export const SQUAT = exercise('Squat', 'squat', {
  machineKinds: ['free bar', 'resistive machine'],
  carriedAt: 'shoulders',
  shareModel: 'back squat, parallel',
  capacity: { kind: 'one-repetition maximum' },
  loads: ['knee', 'shoulder'],
  roundTo: { kg: '2.5', lb: '5' },
});

export const EXERCISES: readonly Exercise[] = [RUN, WALK, RIDE, ROW, GRIP, HOLD, SQUAT];

const beside = (name: string, of: Exercise) => ({
  id: idOf<'item'>(name),
  track: idOf<'track'>(name),
  exercise: of.id,
  machineKind: of.machineKinds[0] ?? 'no gear',
  condition: 'everyone' as const,
  priority: 1,
  shouldFeel: [6, 8] as const,
  source: '',
});

export const bouts = (of: Exercise, parts: readonly ProgrammeBout[], more: Partial<BoutsItem> = {}): BoutsItem => ({
  ...beside(of.name.toLowerCase(), of),
  kind: 'bouts',
  warmUpSeconds: 300,
  bouts: parts,
  coolDownSeconds: 300,
  ...more,
});

export const drill = (of: Exercise, more: Partial<DrillItem> = {}): DrillItem => ({
  ...beside(of.name.toLowerCase(), of),
  kind: 'drill',
  sets: [{ work: { kind: 'hold', seconds: 30 }, rest: 60 }],
  target: null,
  ...more,
});

type ByShare = Extract<BoutIntensity, { readonly of: unknown }>['kind'];

export const percent = (kind: ByShare, least: number, most = least): BoutIntensity => ({
  kind,
  of: { least: least / 100, most: most / 100 },
});

export const times = (count: number, seconds: number, intensity: BoutIntensity | null, easy = 0): ProgrammeBout[] =>
  Array.from({ length: count }, () => ({ seconds, intensity, easy }));

/** One session a day, every day, for ever, before launch and in flight; and after landing. */
export const daily = (
  items: readonly ProgrammeItem[],
  blockMinutes = 240,
  deload: Deload | null = null,
): ProgrammeVersion => {
  const phase = (name: 'general preparation' | 'main flight' | 'first return stage', place: 'a' | 'b' | 'c') => ({
    name,
    deload,
    source: '',
    sessions: [1, 2, 3, 4, 5, 6, 7].map((weekday) => ({
      id: idOf<'session'>(`${place}${weekday}`),
      title: `Session ${weekday}`,
      weekday,
      blockMinutes,
      // Every session has items of its own: an issued card is known by them.
      items: items.map((item) => ({ ...item, id: idOf<'item'>(`${item.id} ${place}${weekday}`) })),
    })),
  });
  return takeUp({
    programme: idOf('all modes'),
    name: 'All modes',
    number: 1,
    follows: null,
    phases: [
      {
        ...phase('general preparation', 'a'),
        span: { first: { from: 'launch', days: -400 }, last: { from: 'launch', days: -1 } },
      },
      { ...phase('main flight', 'b'), span: { first: { from: 'launch', days: 0 }, last: null } },
      { ...phase('first return stage', 'c'), span: { first: { from: 'landing', days: 0 }, last: null } },
    ],
  });
};

export interface ModesSketch {
  readonly items: readonly ProgrammeItem[];
  readonly mass?: string;
  readonly birthDate?: Day | null;
  readonly blockMinutes?: number;
  readonly deload?: Deload | null;
  readonly policies?: Partial<Policies>;
  readonly spaceWalks?: boolean;
  readonly machines?: readonly Machine[];
  readonly landing?: number;
}

/** What was typed of bouts and drills; every bout and set as planned, unless said otherwise. */
export interface DoingPieces {
  readonly rpe?: number | null;
  readonly hurts?: readonly Pick<Extract<FactBody, { readonly kind: 'hurt' }>, 'site' | 'score'>[];
  readonly piece?: (result: PieceResult, item: CardBouts | CardDrill) => PieceResult;
}

/** A rehearsal of endurance and hands. */
export class Modes extends Rehearsal {
  constructor(sketch: ModesSketch | { readonly of: Modes }) {
    super({ log: 'of' in sketch ? sketch.of.log : [], ids: 'of' in sketch ? sketch.of.log.length * 100 : 0 });
    if ('items' in sketch) this.#begin(sketch);
  }

  #begin({ items, mass = '80', birthDate = null, policies = {}, ...more }: ModesSketch): void {
    for (const site of [ABOARD, HALL]) this.add({ kind: 'catalogued', entry: { kind: 'site', site } });
    for (const each of more.machines ?? MACHINES)
      this.add({ kind: 'catalogued', entry: { kind: 'machine', machine: each } });
    for (const each of EXERCISES) this.add({ kind: 'catalogued', entry: { kind: 'exercise', exercise: each } });
    const version = daily(items, more.blockMinutes, more.deload);
    this.add({ kind: 'catalogued', entry: { kind: 'programme', version } });
    this.add({ kind: 'policies set', policies });
    this.add({ kind: 'signs', signer: SIGNER });
    this.add({ kind: 'introduced', person: PERSON, name: 'Person One', sex: 'male', birthDate, trainingAge: null });
    const landing = addDays(LAUNCH, more.landing ?? 180);
    this.add({
      kind: 'dated',
      mission: idOf('mission'),
      name: 'A mission',
      site: ABOARD.id,
      launch: LAUNCH,
      landing: { earliest: landing, latest: landing },
    });
    this.add({
      kind: 'assigned',
      person: PERSON,
      mission: idOf('mission'),
      role: 'prime',
      team: 'ours',
      spaceWalks: more.spaceWalks ?? false,
    });
    this.add({
      kind: 'measured',
      person: PERSON,
      day: addDays(LAUNCH, -300),
      what: 'body mass',
      value: entered(mass, 'kg'),
    });
    this.follow(version.id, -400);
  }

  again(): Modes {
    return new Modes({ of: this });
  }

  tested(test: Test, day: Day = addDays(LAUNCH, -200)): void {
    this.add({ kind: 'tested', person: PERSON, day, test });
  }

  /** What most tests of endurance say, in their usual units. */
  endures({ uptake, rest, greatest }: { uptake?: string; rest?: string; greatest?: string }, day?: Day): void {
    if (uptake)
      this.tested({ what: 'greatest oxygen uptake', value: entered(uptake, 'mL/(kg min)'), how: 'measured' }, day);
    if (rest) this.tested({ what: 'resting heart rate', value: entered(rest, '1/min') }, day);
    if (greatest) this.tested({ what: 'greatest heart rate', value: entered(greatest, '1/min') }, day);
  }

  limited(limit: RestrictionLimit, scope: RestrictionScope, from: Day): readonly FactBody[] {
    return this.restrict({
      kind: 'restricted',
      person: PERSON,
      medicalReason: null,
      restriction: { scope, limit, toldBy: 'the physician', toldOn: from, confirmed: true, from, reviewOn: null },
    });
  }

  /** The planned or issued card of a day. */
  card(on: Day): Card {
    const found = this.road(on, 1).cards.findLast((card) => card.day === on);
    if (!found) throw new Error(`There is no card on ${on}.`);
    return found.state === 'issued' ? found.record.document.card : found.card;
  }

  bouts(on: Day, name = 'run'): CardBouts {
    const item = this.card(on).items.find((each) => each.track === name);
    if (item?.kind !== 'bouts') throw new Error(`${name} is not on the card: ${JSON.stringify(this.card(on).leftOut)}`);
    return item;
  }

  drill(on: Day, name = 'grip'): CardDrill {
    const item = this.card(on).items.find((each) => each.track === name);
    if (item?.kind !== 'drill') throw new Error(`${name} is not on the card: ${JSON.stringify(this.card(on).leftOut)}`);
    return item;
  }

  leftOut(on: Day, name = 'run'): string {
    return this.card(on).leftOut.find(({ item }) => item.startsWith(`${name} `))?.says ?? '';
  }

  workings(on: Day, name = 'run'): readonly Working[] {
    const item = this.card(on).items.find((each) => each.track === name);
    return item ? workingsOf(this.known(), this.road(on, 1), on, item.item) : [];
  }

  trainPieces(document: IssuedCard, { rpe = 7, hurts = [], piece = (result) => result }: DoingPieces = {}): void {
    const pieces = document.card.items.flatMap((item) =>
      isCardLift(item)
        ? []
        : [
            piece(
              {
                item: item.item,
                done: item.kind === 'bouts' ? item.bouts.length : item.sets.length,
                minutes: null,
                watts: null,
                speed: null,
                harness: null,
                heartRate: null,
                effort: rpe === null ? null : { kind: 'RPE', value: rpe },
              },
              item,
            ),
          ],
    );
    const { day, items } = document.card;
    this.add({
      kind: 'trained',
      person: PERSON,
      day,
      card: document.id,
      sets: [],
      pieces,
      sessionRpe: rpe,
      minutes: 60,
    });
    for (const { site, score } of hurts)
      this.add({
        kind: 'hurt',
        person: PERSON,
        day,
        card: document.id,
        item: items[0]?.item ?? null,
        site,
        side: null,
        score,
        when: 'during',
      });
  }

  /** Issues and trains the sessions of these flight days, each on its own morning. */
  livePieces(from: number, to: number, doing: DoingPieces = {}): readonly IssuedCard[] {
    return Array.from({ length: to - from + 1 }, (_, place) => onFlightDay(from + place)).flatMap((on) => {
      const reasons = Object.fromEntries(
        this.road(on, 1).cards.flatMap((card) =>
          card.state === 'planned'
            ? card.card.items.flatMap((item) =>
                item.kind === 'lift' ? [] : item.raises.map(({ track }) => [track, 'rehearsed'] as const),
              )
            : [],
        ),
      );
      const documents = this.issue(on, [on], reasons);
      for (const document of documents) this.trainPieces(document, doing);
      return documents;
    });
  }

  adjust(
    track: string,
    change: Extract<Extract<FactBody, { readonly kind: 'decided' }>['decision'], { readonly kind: 'adjust' }>['change'],
    from: Day,
    until: Day | null = null,
  ): void {
    this.add({
      kind: 'decided',
      answers: null,
      basis: this.end,
      decision: { kind: 'adjust', person: PERSON, track: idOf(track), change, from, until, reason: 'rehearsed' },
    });
  }
}

/** A cell of a working by its name; the working by the beginning of its name. */
export const cell = (workings: readonly Working[], reckoning: string, name: string): number => {
  const found = workings.find((working) => working.reckoning.startsWith(reckoning));
  const value = found?.cells.find((each) => each.name === name)?.value;
  if (value === undefined)
    throw new Error(`${reckoning} has no ${name}: ${workings.map((each) => each.reckoning).join('; ')}`);
  return value;
};

export const BEFORE = addDays(LAUNCH, -100);
export const A_BIRTHDAY = isoDay('1980-01-01');

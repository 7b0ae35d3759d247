import { isoOfDay, type Day } from '#units/day.ts';
import { showEntered } from '#units/entered.ts';
import { cardCode } from '#domain/card-code.ts';
import type { Decision } from '#domain/decision.ts';
import { showEffort } from '#domain/effort.ts';
import type { Fact } from '#domain/fact.ts';
import type { House } from '#domain/known.ts';
import { showRestriction } from '#domain/restriction.ts';
import { showTest } from '#domain/show-test.ts';
import { shownLoad } from '#interchange/plain-text/shown-load.ts';

const counted = (count: number, what: string): string => `${count} ${what}${count === 1 ? '' : 's'}`;

/** What a fact says, in one sentence without names of fields. */
export const recordSays = (fact: Fact, house: House): string => {
  const { exercise, machine } = namesIn(house);
  switch (fact.kind) {
    case 'introduced':
      return `${fact.name}, ${fact.sex}${fact.birthDate === null ? '' : `, born ${isoOfDay(fact.birthDate)}`}${fact.trainingAge ? `, trained for ${showEntered(fact.trainingAge)}` : ''}`;
    case 'measured':
      return `${fact.what} ${showEntered(fact.value)}`;
    case 'dated':
      return `${fact.name}: launch ${isoOfDay(fact.launch)}${fact.landing ? `, landing ${isoOfDay(fact.landing.earliest)}${fact.landing.latest === fact.landing.earliest ? '' : ` to ${isoOfDay(fact.landing.latest)}`}` : ''}`;
    case 'assigned':
      return `${house.missions.get(fact.mission)?.name ?? 'a mission'}, ${fact.role}${fact.team === 'ours' ? '' : ', another team'}${fact.spaceWalks ? ', prepares for space walks' : ''}`;
    case 'stays':
      return `trains at ${house.sites.get(fact.site)?.name ?? fact.site} from ${isoOfDay(fact.from)}${fact.until === null ? ' on' : ` to ${isoOfDay(fact.until)}`}`;
    case 'available':
    case 'set aside':
    case 'space walk':
    case 'road holds':
      return timeSays(fact);
    case 'tested':
      return showTest(fact.test);
    case 'lifted':
      return `${exercise(fact.exercise)} ${showEntered(fact.load)} × ${fact.repetitions}${fact.side ? ` ${fact.side}` : ''}${fact.effort ? `, ${showEffort(fact.effort)}` : ''}, ${machine(fact.machine)}`;
    case 'judged':
    case 'looked at':
      return watchedSays(fact);
    case 'carried':
      return `heaviest bar carried on the shoulders ${showEntered(fact.load)}`;
    case 'trained':
      return `${counted(fact.sets.length, 'set')}${fact.pieces.length === 0 ? '' : `, ${counted(fact.pieces.length, 'other item')}`}${fact.sessionRpe === null ? '' : `, session RPE ${fact.sessionRpe}`}${fact.minutes === null ? '' : `, ${fact.minutes} min`}`;
    case 'hurt':
      return `discomfort ${fact.score} of 10, ${fact.side ? `${fact.side} ` : ''}${fact.site}, ${fact.when}`;
    case 'noted':
      return `“${fact.text}”`;
    case 'read':
      return 'a note was read';
    case 'called off':
      return `called off, ${fact.cause}${fact.text === '' ? '' : `: ${fact.text}`}`;
    case 'missed':
      return 'missed';
    case 'received':
      return `${fact.what === 'recall' ? 'recall' : 'card'} received, ${fact.how}`;
    case 'restricted':
      return `${showRestriction(fact.restriction, (id) => exercise(id).toLowerCase())}, from ${isoOfDay(fact.restriction.from)}, told by ${fact.restriction.toldBy} on ${isoOfDay(fact.restriction.toldOn)}${fact.restriction.confirmed ? '' : ', not confirmed yet'}`;
    case 'restriction lifted':
      return `restriction lifted, told by ${fact.toldBy}`;
    case 'breathing set':
      return `breathing: ${fact.rule}, told by ${fact.toldBy}`;
    case 'signs':
    case 'catalogued':
    case 'calibrated':
    case 'set up':
    case 'policies set':
      return houseSays(fact, house);
    case 'decided':
      return decisionSays(fact.decision, house, exercise);
    case 'retracted':
      return 'taken back';
  }
};

type OfHouse = Extract<Fact, { readonly kind: 'signs' | 'catalogued' | 'calibrated' | 'set up' | 'policies set' }>;

interface Names {
  readonly exercise: (id: string) => string;
  readonly machine: (id: string) => string;
}

const namesIn = ({ exercises, machines }: House): Names => ({
  exercise: (id) => [...exercises.values()].find((each) => each.id === id)?.name ?? 'an exercise',
  machine: (id) => [...machines.values()].find((each) => each.id === id)?.name ?? id,
});

/** What is said of signers, the catalogue, machines and policies. */
const houseSays = (fact: OfHouse, house: House): string => {
  const { exercise, machine } = namesIn(house);
  switch (fact.kind) {
    case 'signs':
      return `${fact.signer.name} signs as ${fact.signer.role}`;
    case 'catalogued':
      return `catalogue: ${fact.entry.kind}`;
    case 'calibrated':
      return `${machine(fact.machine)} delivers ${fact.factor} of what is set`;
    case 'set up':
      return `${exercise(fact.exercise)} on ${machine(fact.machine)}: ${fact.settings.map(({ field, value, side }) => `${field}${side ? ` ${side}` : ''} ${value}`).join(', ')}`;
    case 'policies set':
      return `policies: ${Object.keys(fact.policies).join(', ')}`;
  }
};

type Watched = Extract<Fact, { readonly kind: 'judged' | 'looked at' }>;

/** What somebody saw, and what follows from it. */
const watchedSays = (fact: Watched): string => {
  if (fact.kind === 'judged')
    return `${fact.gate} ${fact.passed ? 'passed' : 'not passed'}, seen ${fact.watched} by ${fact.observedBy}`;
  const follows = fact.passed ? 'grip and pressing go on' : 'grip and pressing stay out';
  return `${fact.what} looked at by ${fact.observedBy}: ${follows}`;
};

type OfTime = Extract<Fact, { readonly kind: 'available' | 'set aside' | 'space walk' | 'road holds' }>;

/** What a person's calendar says. */
const timeSays = (fact: OfTime): string => {
  const text = 'text' in fact && fact.text !== '' ? `: ${fact.text}` : '';
  switch (fact.kind) {
    case 'available':
      return `has ${fact.minutes.join(', ')} minutes on the seven days of a week ${fromTo(fact)}`;
    case 'set aside':
      return `${fact.what} ${fromTo(fact)}: ${fact.minutes} minutes a day left${text}`;
    case 'space walk':
      return `space walk${text}`;
    case 'road holds':
      return `the road holds ${fromTo(fact)}${text}`;
  }
};

const fromTo = ({ from, until }: { readonly from: Day; readonly until: Day | null }): string =>
  `from ${isoOfDay(from)}${until === null ? ' on' : ` to ${isoOfDay(until)}`}`;

const decisionSays = (decision: Decision, house: House, exercise: (id: string) => string): string => {
  switch (decision.kind) {
    case 'follow':
      return `follows ${house.programmes.get(decision.programme)?.name ?? 'a programme'}`;
    case 'adjust':
      return `${decision.track}: ${changeSays(decision.change)} from ${isoOfDay(decision.from)}${decision.until === null ? '' : ` to ${isoOfDay(decision.until)}`}: ${decision.reason}`;
    case 'end adjustment':
      return 'an adjustment ends';
    case 'replace body weight':
      return `${exercise(decision.exercise)}: body weight added back ${typeof decision.policy === 'string' ? decision.policy : `by a share of ${decision.policy.share}`}: ${decision.reason}`;
    case 'fix body mass':
      return `body mass in flight fixed at ${showEntered(decision.mass)}: ${decision.reason}`;
    case 'limit shoulders':
      return `shoulders carry at most ${showEntered(decision.load)}: ${decision.reason}`;
    case 're-base':
      return `${exercise(decision.exercise)}: capacity read anew from ${isoOfDay(decision.from)}`;
    case 'raise':
      return `raised: ${decision.raises.map(({ exerciseName, to, unit, increment }) => `${exerciseName} to ${shownLoad(to, increment)} ${unit}`).join(', ')}`;
    case 'decline':
      return `declined a proposal${decision.reason === '' ? '' : `: ${decision.reason}`}`;
    case 're-make':
      return `a session made anew for what is there: ${decision.minutes} minutes, ${decision.here.join(', ')}: ${decision.reason}`;
    case 'issue':
      return `issued card ${cardCode(decision.card.digest)} for ${decision.card.card.missionDay}`;
    case 'recall':
      return `recalled a card: ${decision.says}`;
  }
};

const changeSays = (change: Extract<Decision, { readonly kind: 'adjust' }>['change']): string => {
  switch (change.kind) {
    case 'fraction by':
      return `fraction changed by ${change.by}`;
    case 'sets by':
      return `${Math.abs(change.by)} ${Math.abs(change.by) === 1 ? 'set' : 'sets'} ${change.by > 0 ? 'more' : 'fewer'}`;
    case 'keep':
      return 'kept whatever the time';
    case 'leave out':
      return 'left out';
    case 'hold':
      return 'held';
    case 'back off':
      return `backed off by ${Math.round(change.by * 100)} %`;
    case 'as written':
      return `written: ${change.line}`;
    case 'load':
      return `load set to ${showEntered(change.load)}`;
  }
};

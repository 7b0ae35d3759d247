import type { CardBout, CardBouts, CardDrill, CardItem } from '#domain/card.ts';
import type { InventedPerson } from './invented-person.ts';
import type { TrainingDay } from './perform-item.ts';
import { normal, type Random } from './random.ts';
import {
  MOST_OF_RESERVE,
  costOfPart,
  costOfSpeed,
  costOfWatts,
  feltWork,
  partOfReserve,
  partThatFeels,
  speedOfCost,
  trueRate,
  trueUptake,
  wattsOfCost,
  type Gait,
} from './stamina-truth.ts';

/** What a person did of bouts or of a drill, with what nobody else felt. */
export interface PerformedPiece {
  readonly item: CardBouts | CardDrill;
  /** Bouts or sets done whole. */
  readonly done: number;
  readonly watts: number | null;
  readonly speed: number | null;
  readonly heartRate: number | null;
  /** As it felt, 2 to 10; null where nobody rates it. */
  readonly felt: number | null;
}

export const piecesOf = (items: readonly CardItem[]): readonly (CardBouts | CardDrill)[] =>
  items.flatMap((item) => (item.kind === 'lift' ? [] : [item]));

export const performPiece = (
  person: InventedPerson,
  item: CardBouts | CardDrill,
  day: TrainingDay,
  random: Random,
): PerformedPiece => (item.kind === 'bouts' ? ride(person, item, day, random) : drill(person, item, random));

type Means = 'cycle' | Gait | 'neither';

const meansOf = ({ bouts, exercise, harness }: CardBouts): Means => {
  if (exercise === 'cycling' || bouts.some(({ watts }) => watts !== null)) return 'cycle';
  if (exercise === 'treadmill-walk') return 'walking';
  return exercise === 'treadmill-run' || harness !== null ? 'running' : 'neither';
};

/** One bout as it was worked: what was set, and what part of the reserve it took. */
interface WorkedBout {
  readonly part: number;
  readonly setting: number | null;
  readonly isAllOut: boolean;
  readonly seconds: number;
}

const ride = (person: InventedPerson, item: CardBouts, day: TrainingDay, random: Random): PerformedPiece => {
  const greatest = trueUptake(person, day.sinceLaunch) * Math.exp(day.form);
  const means = meansOf(item);
  const worked = item.bouts.map((bout) => workBout(person, item, bout, { greatest, means }));
  const done = boutsDone(worked);
  const whole = worked.slice(0, Math.max(1, done));
  const seconds = whole.reduce((sum, bout) => sum + bout.seconds, 0);
  const part = whole.reduce((sum, bout) => sum + bout.part * bout.seconds, 0) / seconds;
  const settings = whole.flatMap(({ setting }) => setting ?? []);
  const most = settings.length > 0 ? Math.max(...settings) : null;
  const isAllOut = whole.some((bout) => bout.isAllOut);
  return {
    item,
    done,
    watts: means === 'cycle' ? most : null,
    speed: means === 'walking' || means === 'running' ? most : null,
    heartRate: trueRate(person, Math.min(part, 1), Math.max(isAllOut ? 4 : 0, longest(whole) / 60), random),
    felt: isAllOut ? 9 + Number(random() > 0.4) : feltWork(hardest(whole), random),
  };
};

const longest = (bouts: readonly WorkedBout[]): number => Math.max(...bouts.map(({ seconds }) => seconds));
const hardest = (bouts: readonly WorkedBout[]): number => Math.max(...bouts.map(({ part }) => part));

/** All-out, power is far over what uptake pays for. */
const ALL_OUT_PART = 1;
const ALL_OUT_POWER = 1.7;

const workBout = (
  person: InventedPerson,
  { harness }: CardBouts,
  bout: CardBout,
  { greatest, means }: { readonly greatest: number; readonly means: Means },
): WorkedBout => {
  const pull = harness?.ofBodyWeight ?? null;
  const { seconds, rpe } = bout;
  if (rpe[0] >= 9) {
    const watts = inFives(ALL_OUT_POWER * wattsOfCost(person, greatest));
    return { part: ALL_OUT_PART, setting: means === 'cycle' ? watts : null, isAllOut: true, seconds };
  }
  const given = means === 'cycle' ? bout.watts : bout.speed;
  const cost = (setting: number): number =>
    means === 'cycle' ? costOfWatts(person, setting) : costOfSpeed(person, gaitOf(means), setting, pull);
  if (given !== null) return { part: partOfReserve(cost(given), greatest), setting: given, isAllOut: false, seconds };
  const part = partThatFeels((rpe[0] + rpe[1]) / 2);
  if (means === 'neither') return { part, setting: null, isAllOut: false, seconds };
  const worth = costOfPart(part, greatest);
  const setting =
    means === 'cycle'
      ? inFives(wattsOfCost(person, worth))
      : inTenths(Math.min(fastest(means), speedOfCost(person, gaitOf(means), worth, pull)));
  return { part: partOfReserve(cost(setting), greatest), setting, isAllOut: false, seconds };
};

const gaitOf = (means: Means): Gait => (means === 'walking' ? 'walking' : 'running');

/** Nobody walks faster [km/h]. */
const FASTEST_WALK = 6.4;
const fastest = (means: Means): number => (means === 'walking' ? FASTEST_WALK : Infinity);

const inFives = (watts: number): number => 5 * Math.round(watts / 5);
const inTenths = (speed: number): number => Math.round(10 * speed) / 10;

/** Work over what the body takes is broken off in the second bout of it. */
const boutsDone = (worked: readonly WorkedBout[]): number => {
  const over = worked.flatMap(({ part, isAllOut, seconds }, place) =>
    !isAllOut && part > MOST_OF_RESERVE && seconds >= 60 ? [place] : [],
  );
  return over[1] ?? worked.length;
};

/** Hands tire: over what they can pulse on and on, the last sets are not whole. */
const drill = (person: InventedPerson, item: CardDrill, random: Random): PerformedPiece => {
  const force = Math.max(0, ...item.sets.map((set) => set.force ?? 0));
  const isHands = item.exercise === 'grip-pulses' || item.exercise === 'crush-hold' || item.exercise === 'finger-hold';
  const weaker = Math.min(person.grip.left, person.grip.right);
  const bears = item.exercise === 'grip-pulses' ? person.grip.lasting * weaker * 1.08 : weaker;
  const over = force / bears - 1 + 0.02 * normal(random);
  const lost = isHands && over > 0 ? Math.min(item.sets.length - 1, Math.ceil(over * 10)) : 0;
  const strain = force > 0 ? 8 + 12 * over : (item.shouldFeel[0] + item.shouldFeel[1]) / 2;
  return {
    item,
    done: item.sets.length - lost,
    watts: null,
    speed: null,
    heartRate: null,
    felt: isHands ? Math.min(10, Math.max(3, Math.round(strain + 0.4 * normal(random)))) : null,
  };
};

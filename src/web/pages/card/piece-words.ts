import { showRange } from '#domain/asked-sets.ts';
import type { CardBout, CardBouts, CardDrill, CardDrillSet } from '#domain/card.ts';
import type { DrillWork } from '#domain/programme.ts';
import { showSeconds } from '#domain/show-piece.ts';

/** A number that is set or held, with what it is of. */
export interface Target {
  readonly value: string;
  readonly unit: string;
  readonly label: string;
}

const span = ([low, high]: readonly [number, number], to: string): string =>
  low === high ? `${low}` : `${low}${to}${high}`;

/** What to set and to hold in a bout; where nothing is known of the person, effort leads and says so. */
export const boutTargets = ({ heartRate, watts, speed, rpe }: CardBout): readonly Target[] => {
  const known: readonly Target[] = [
    ...(heartRate === null ? [] : [{ value: span(heartRate, '–'), unit: '/min', label: 'heart rate' }]),
    ...(watts === null ? [] : [{ value: String(watts), unit: 'W', label: 'start there' }]),
    ...(speed === null ? [] : [{ value: String(speed), unit: 'km/h', label: 'start there' }]),
  ];
  return known.length > 0 ? known : [{ value: span(rpe, '–'), unit: 'RPE', label: 'effort leads' }];
};

export const shouldFeel = (band: readonly [number, number]): string => `Should feel ${span(band, ' to ')}.`;

export const warmAndCool = ({ warmUpSeconds, coolDownSeconds }: CardBouts): string =>
  [
    ...(warmUpSeconds > 0 ? [`Warm up ${showSeconds(warmUpSeconds)}, easy.`] : []),
    ...(coolDownSeconds > 0 ? [`Cool down ${showSeconds(coolDownSeconds)}; do not stop at once.`] : []),
  ].join(' ');

export const drillRest = ({ sets, means }: CardDrill): string => {
  const rests = [...new Set(sets.map(({ rest }) => rest))].filter((rest) => rest > 0);
  const gear = means === 'no gear' || means === 'body weight' ? '' : `With ${means}. `;
  return `${gear}${rests.length === 0 ? '' : `Rest ${rests.map(showSeconds).join(' or ')}.`}`;
};

/** "12", "40 s"; pulses are drawn, so that their count is enough. */
export const setCount = ({ work }: CardDrillSet): string => {
  switch (work.kind) {
    case 'repetitions':
      return `× ${showRange(work.count, work.most)}`;
    case 'hold':
      return `${showRange(work.seconds, work.most)} s`;
    case 'pulses':
      return `× ${work.count}`;
  }
};

/** The pulses of a drill, where all its sets beat alike. */
export const pulsesOf = ({ sets }: CardDrill): Extract<DrillWork, { readonly kind: 'pulses' }> | null => {
  const [first] = sets;
  if (!first || first.work.kind !== 'pulses') return null;
  const { work } = first;
  return sets.every((set) => JSON.stringify(set.work) === JSON.stringify(work)) ? work : null;
};

/** What every set of a drill asks for, where they are alike. */
export const alikeWork = ({ sets }: CardDrill): string | null => {
  const [first, ...others] = sets;
  return first && others.every((set) => setCount(set) === setCount(first)) ? setCount(first) : null;
};

/** Neighbours that are alike, and how many. */
export interface Run<Part> {
  readonly part: Part;
  readonly count: number;
}

/** The easy time after the last bout is the cooling down: it makes no other bout of it. */
export const runsOf = (bouts: readonly CardBout[]): readonly Run<CardBout>[] => {
  const runs: { readonly part: CardBout; count: number }[] = [];
  for (const [place, part] of bouts.entries()) {
    const last = runs.at(-1);
    const isLast = place === bouts.length - 1;
    if (last && isAlike(last.part, part, isLast)) last.count += 1;
    else runs.push({ part, count: 1 });
  }
  return runs;
};

const isAlike = (one: CardBout, other: CardBout, whateverEasy: boolean): boolean =>
  JSON.stringify(one) === JSON.stringify(whateverEasy ? { ...other, easy: one.easy } : other);

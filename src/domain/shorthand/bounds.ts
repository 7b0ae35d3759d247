import type { Prescription, SetGroup, SetIntensity, Span } from '../prescription.ts';

/** What nobody means to write. Wide on purpose: they catch slips of the hand, not unusual training. */
const BOUNDS = {
  sets: [1, 20],
  repetitions: [1, 100],
  hold: [1, 600],
  pause: [0, 600],
  maximum: [0.05, 1.2],
  reserve: [0, 10],
  rating: [1, 10],
  offTheTop: [0.01, 0.6],
  rest: [5, 1800],
  tempo: [0, 20],
  bout: [5, 4 * 3600],
  fraction: [0.1, 1.2],
  watts: [10, 1000],
  load: [0, 2000],
} as const satisfies Readonly<Record<string, readonly [number, number]>>;

type Bound = keyof typeof BOUNDS;

/** Every number of a line that is out of bounds, as sentences. */
export const outOfBounds = (prescription: Prescription): readonly string[] =>
  prescription.kind === 'sets'
    ? [
        ...prescription.groups.flatMap(groupProblems),
        ...whole('tempo', 'A count of the tempo', prescription.tempo ?? []),
        ...within('rest', 'A rest in seconds', prescription.rest === null ? [] : [prescription.rest]),
        ...topProblems(prescription.groups),
      ]
    : [
        ...whole('sets', 'The number of bouts', ends(prescription.repeats)),
        ...within('bout', 'A bout in seconds', [prescription.seconds]),
        ...within('bout', 'The easy time in seconds', prescription.easy === null ? [] : [prescription.easy]),
        ...boutProblems(prescription.intensity),
      ];

const groupProblems = (group: SetGroup): readonly string[] => [
  ...whole('sets', 'The number of sets', ends(group.sets)),
  ...(group.each.kind === 'repetitions'
    ? whole('repetitions', 'The number of repetitions', ends(group.each.count))
    : within('hold', 'A hold in seconds', ends(group.each.seconds))),
  ...(group.load ? within('load', 'A load', [Number(group.load.text)]) : []),
  ...intensityProblems(group.intensity),
];

const intensityProblems = (intensity: SetIntensity | null): readonly string[] => {
  switch (intensity?.kind) {
    case undefined:
      return [];
    case 'of maximum':
      return within('maximum', 'A fraction of the maximum', ends(intensity.of));
    case 'in reserve':
      return within('reserve', 'Repetitions in reserve', ends(intensity.repetitions));
    case 'RPE':
      return within('rating', 'RPE', ends(intensity.rating));
    case 'off the top':
      return within('offTheTop', 'What comes off the top set', [intensity.by]);
  }
};

const boutProblems = (intensity: Extract<Prescription, { kind: 'bouts' }>['intensity']): readonly string[] => {
  if (intensity === null || intensity.kind === 'all-out') return [];
  if (intensity.kind === 'watts') return within('watts', 'Watts', ends(intensity.watts));
  return intensity.kind === 'RPE'
    ? within('rating', 'RPE', ends(intensity.rating))
    : within('fraction', 'A fraction of heart rate or uptake', ends(intensity.of));
};

/** What comes off the top needs a set before it that it comes off. */
const topProblems = (groups: readonly SetGroup[]): readonly string[] => {
  const work = groups.filter((group) => !group.warmUp);
  return work[0]?.intensity?.kind === 'off the top'
    ? ['The first set has nothing to come off: write the top set before it, such as top 6 then 2 × 8 −10 %.']
    : [];
};

const ends = ({ least, most }: Span): readonly number[] => (least === most ? [least] : [least, most]);

export const within = (bound: Bound, what: string, values: readonly number[]): readonly string[] => {
  const [low, high] = BOUNDS[bound];
  return values
    .filter((value) => !(value >= low && value <= high))
    .map((value) => `${what} lies between ${low} and ${high}; this is ${value}.`);
};

export const whole = (bound: Bound, what: string, values: readonly number[]): readonly string[] => {
  const outside = within(bound, what, values);
  const broken = values
    .filter((value) => !Number.isInteger(value))
    .map((value) => `${what} is a whole number; this is ${value}.`);
  return [...outside, ...broken];
};

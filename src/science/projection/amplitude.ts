import { formula, type FormulaInput } from '../formula.ts';
import { method } from '../method.ts';
import { ENGLISH_2020, MOORE_2014, OUR_OWN_DESIGN } from '../sources.ts';
import type { PublishedChange } from './quantities.table.ts';

/** How large a loss is, whatever its course: from a published change to a prior for one person. */

const course: FormulaInput = { name: 'course', symbol: 'g', unit: '1', possible: [0.01, 120], valid: [0.05, 120] };

/** Amplitude of the loss that a change amounts to [ln]. */
export const amplitudeOfChange = formula(
  {
    id: 'projection/amplitude-of-change',
    revision: 1,
    title: 'Amplitude of the loss that a change amounts to [ln]',
    equation: 'A = −ln(1 + change) / g',
    inputs: [
      {
        name: 'change from before flight',
        symbol: 'change',
        unit: '1',
        possible: [-0.99, 1],
        valid: [-0.5, 0.2],
      },
      course,
    ],
    output: { name: 'amplitude', symbol: 'A', unit: 'ln' },
    source: OUR_OWN_DESIGN,
    doesNotKnow: 'Whether the course is right on that day: an error of the course becomes one of the amplitude.',
  },
  (change: number, of: number): number => -Math.log1p(change) / of,
);

export interface Amplitude {
  /** As a natural logarithm: 0.15 is a loss of 14 % where the course is 1. */
  readonly mean: number;
  readonly sd: number;
}

export type StudiedAmplitude =
  | (Amplitude & { readonly kind: 'estimate'; readonly betweenStudies: number })
  | { readonly kind: 'none'; readonly reason: string };

const faultOfStudy = ({ people, day, change }: PublishedChange): string | null => {
  if (!(people >= 1 && people <= 100_000)) return `A study must have 1 to 100000 people; one has ${people}.`;
  if (!(day >= 0 && day <= 10_000)) return `A study must lie on a day from 0 to 10000; one lies on ${day}.`;
  return change >= -0.99 && change <= 1 ? null : `A change must lie in −0.99 to 1; one is ${change}.`;
};

const faultOfSpread = (withinSd: number): string | null =>
  withinSd >= 0 && withinSd <= 1 ? null : `The spread between people must lie in 0 to 1; it is ${withinSd}.`;

/** What published changes say of one person not yet measured. */
export const amplitudeOfStudies = method(
  {
    id: 'projection/amplitude-of-studies',
    revision: 1,
    title: 'Amplitude of one person from published changes',
    equations: [
      'A_i = −ln(1 + change_i) / g(t_i)',
      'A = sum_i n_i · A_i / sum_i n_i',
      'SD_between = √(sum_i n_i · (A_i − A)^2 / sum_i n_i)',
      'SD = √(SD_between^2 + SD_within^2)',
    ],
    inputs: [
      { name: 'people in a study', symbol: 'n_i', unit: 'people', possible: [1, 100000], valid: [1, 100000] },
      { name: 'change from before flight', symbol: 'change_i', unit: '1', possible: [-0.99, 1], valid: [-0.5, 0.2] },
      {
        name: 'spread between people of a study',
        symbol: 'SD_within',
        unit: 'ln',
        possible: [0, 1],
        valid: [0.02, 0.3],
      },
    ],
    outputs: [
      { name: 'amplitude', symbol: 'A', unit: 'ln' },
      { name: 'standard deviation of one person', symbol: 'SD', unit: 'ln' },
    ],
    refuses: [
      'No study was given.',
      'A study from a day on which nothing is lost yet says nothing of an amplitude.',
      'People, a day, a change or a spread that cannot be.',
    ],
    source: OUR_OWN_DESIGN,
    restsOn: [MOORE_2014, ENGLISH_2020],
    doesNotKnow:
      'The spread between people within a study was not printed: 0.10 is our own. Two studies say little of the spread between studies.',
  },
  (studies: readonly PublishedChange[], courseOn: (day: number) => number, withinSd: number): StudiedAmplitude => {
    if (studies.length === 0) return { kind: 'none', reason: 'No study was given.' };
    const wrong = studies.map(faultOfStudy).find((fault) => fault !== null) ?? faultOfSpread(withinSd);
    if (wrong) return { kind: 'none', reason: wrong };
    if (studies.some(({ day }) => courseOn(day) < course.possible[0]))
      return {
        kind: 'none',
        reason: 'A study from a day on which nothing is lost yet says nothing of an amplitude.',
      };
    const sized = studies.map(({ people, day, change }) => ({
      people,
      amplitude: amplitudeOfChange(change, courseOn(day)),
    }));
    const people = sized.reduce((sum, each) => sum + each.people, 0);
    const weighted = (of: (amplitude: number) => number): number =>
      sized.reduce((sum, each) => sum + each.people * of(each.amplitude), 0) / people;
    const mean = weighted((amplitude) => amplitude);
    const betweenStudies = Math.sqrt(weighted((amplitude) => (amplitude - mean) ** 2));
    return { kind: 'estimate', mean, betweenStudies, sd: Math.hypot(betweenStudies, withinSd) };
  },
);

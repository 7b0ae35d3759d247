import type { SourcedTable } from '../sourced-table.ts';
import { DODDS_2014, MATHIOWETZ_1985, WANG_2018 } from './sources.ts';

/** Grip of groups of people, bare-handed. */

/** Mean and standard deviation [lb]. */
type Pounds = readonly [mean: number, sd: number];

interface Sides {
  readonly right: Pounds;
  readonly left: Pounds;
}

export interface GripNorm {
  readonly from: number;
  /** Last year of the group; null where it is open. */
  readonly to: number | null;
  readonly men: Sides;
  readonly women: Sides;
}

export const gripNorms: SourcedTable<GripNorm> = {
  record: {
    id: 'hand/grip-norms',
    revision: 1,
    title: 'Grip strength by age, sex and side [lb], mean and standard deviation',
    source: MATHIOWETZ_1985,
    doesNotKnow:
      'Trained people, and anybody tested another way: seated, upper arm at the side, elbow at 90°, forearm neutral, hydraulic dynamometer in its second position, mean of three. 638 people of one region, some forty years ago; about 25 in a group, so a standard deviation is itself known to some 15 %.',
  },
  columns: [
    { name: 'Age', unit: 'years' },
    { name: 'Men, right', unit: 'lb' },
    { name: 'SD', unit: 'lb' },
    { name: 'Men, left', unit: 'lb' },
    { name: 'SD', unit: 'lb' },
    { name: 'Women, right', unit: 'lb' },
    { name: 'SD', unit: 'lb' },
    { name: 'Women, left', unit: 'lb' },
    { name: 'SD', unit: 'lb' },
  ],
  rows: [
    {
      from: 20,
      to: 24,
      men: { right: [121.0, 20.6], left: [104.5, 21.8] },
      women: { right: [70.4, 14.5], left: [61.0, 13.1] },
    },
    {
      from: 25,
      to: 29,
      men: { right: [120.8, 23.0], left: [110.5, 16.2] },
      women: { right: [74.5, 13.9], left: [63.5, 12.2] },
    },
    {
      from: 30,
      to: 34,
      men: { right: [121.8, 22.4], left: [110.4, 21.7] },
      women: { right: [78.7, 19.2], left: [68.0, 17.7] },
    },
    {
      from: 35,
      to: 39,
      men: { right: [119.7, 24.0], left: [112.9, 21.7] },
      women: { right: [74.1, 10.8], left: [66.3, 11.7] },
    },
    {
      from: 40,
      to: 44,
      men: { right: [116.8, 20.7], left: [112.8, 18.7] },
      women: { right: [70.4, 13.5], left: [62.3, 13.8] },
    },
    {
      from: 45,
      to: 49,
      men: { right: [109.9, 23.0], left: [100.8, 22.8] },
      women: { right: [62.2, 15.1], left: [56.0, 12.7] },
    },
    {
      from: 50,
      to: 54,
      men: { right: [113.6, 18.1], left: [101.9, 17.0] },
      women: { right: [65.8, 11.6], left: [57.3, 10.7] },
    },
    {
      from: 55,
      to: 59,
      men: { right: [101.1, 26.7], left: [83.2, 23.4] },
      women: { right: [57.3, 12.5], left: [47.3, 11.9] },
    },
    {
      from: 60,
      to: 64,
      men: { right: [89.7, 20.4], left: [76.8, 20.3] },
      women: { right: [55.1, 10.1], left: [45.7, 10.1] },
    },
    {
      from: 65,
      to: 69,
      men: { right: [91.1, 20.6], left: [76.8, 19.8] },
      women: { right: [49.6, 9.7], left: [41.0, 8.2] },
    },
    {
      from: 70,
      to: 74,
      men: { right: [75.3, 21.5], left: [64.8, 18.1] },
      women: { right: [49.6, 11.7], left: [41.5, 10.2] },
    },
    {
      from: 75,
      to: null,
      men: { right: [65.7, 21.0], left: [55.0, 17.0] },
      women: { right: [42.6, 11.0], left: [37.6, 8.9] },
    },
  ],
  cells: ({ from, to, men, women }) => [
    to === null ? `${from} and over` : `${from} to ${to}`,
    ...men.right,
    ...men.left,
    ...women.right,
    ...women.left,
  ],
};

interface Landmark {
  readonly who: string;
  readonly kilograms: number;
  readonly what: string;
  readonly status: 'seen' | 'from memory';
}

export const gripLandmarks: SourcedTable<Landmark> = {
  record: {
    id: 'hand/grip-landmarks',
    revision: 1,
    title: 'Other published landmarks of grip strength',
    source: DODDS_2014,
    restsOn: [WANG_2018],
    doesNotKnow: 'How one test reads in another: these take the best trial, the norms above the mean of three.',
  },
  columns: [
    { name: 'Who', unit: '' },
    { name: 'Grip', unit: 'kg' },
    { name: 'What', unit: '' },
    { name: 'How far checked', unit: '' },
  ],
  rows: [
    { who: 'men, 29 to 39 years', kilograms: 51, what: 'peak of the median over life', status: 'seen' },
    { who: 'women, 26 to 42 years', kilograms: 31, what: 'peak of the median over life', status: 'seen' },
    { who: 'men', kilograms: 27, what: 'weak: 2.5 SD below the mean of the young', status: 'from memory' },
    { who: 'women', kilograms: 16, what: 'weak: 2.5 SD below the mean of the young', status: 'from memory' },
    { who: 'men, 25 to 29 years', kilograms: 49.7, what: 'mean of the dominant hand, highest group', status: 'seen' },
    { who: 'women, 75 to 79 years', kilograms: 18.7, what: 'mean of the other hand, lowest group', status: 'seen' },
  ],
  cells: ({ who, kilograms, what, status }) => [who, kilograms, what, status],
};

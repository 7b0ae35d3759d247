import type { SourcedTable } from '../sourced-table.ts';
import type { Source } from '../formula.ts';
import { APPENDINO_2014, BISHU_1995, ROESCH_1986, STRAUSS_2005, TANAKA_2014 } from './sources.ts';

/** Published losses in gloves, and published complaints of suited training. */

interface GloveLoss {
  readonly what: string;
  readonly found: string;
  readonly people: number | null;
  readonly source: Source;
}

const citation = ({ text }: Source): string => text.slice(0, text.indexOf(')') + 1);

export const gloveLosses: SourcedTable<GloveLoss> = {
  record: {
    id: 'hand/glove-losses',
    revision: 1,
    title: 'What a pressurised glove takes from the hand, as published',
    source: ROESCH_1986,
    restsOn: [APPENDINO_2014, BISHU_1995, TANAKA_2014],
    doesNotKnow:
      'The glove of anybody’s next space walk: grip left at working pressure ran from 0.1 to 0.6 between designs. A maximum measured in the suit replaces all of it. Slower fingers are not in the table: measure them with the person.',
  },
  columns: [
    { name: 'Quantity', unit: '' },
    { name: 'Found', unit: '' },
    { name: 'People', unit: '' },
    { name: 'Source', unit: '' },
  ],
  rows: [
    { what: 'Grip maximum at 29.6 kPa against bare', found: '−42 %', people: 16, source: ROESCH_1986 },
    { what: 'Grip maximum at 3.4 kPa against bare', found: '−35 %', people: 16, source: ROESCH_1986 },
    {
      what: 'Another design without pressure: grip and lateral pinch',
      found: 'about 50 to 70 % of bare; pinch of two or three fingers hardly changed',
      people: null,
      source: APPENDINO_2014,
    },
    {
      what: 'The same design under pressure',
      found: 'about 10 to 30 % of bare in all tasks',
      people: null,
      source: APPENDINO_2014,
    },
    {
      what: 'Endurance at a share of the maximum possible in that glove',
      found: 'the same in every glove and at every pressure',
      people: 6,
      source: BISHU_1995,
    },
    {
      what: 'A stiff glove at 0.29 atmospheres against an elastic one at 0.65',
      found: 'range of motion about the same, less activity of the flexors in the elastic one',
      people: null,
      source: TANAKA_2014,
    },
  ],
  cells: ({ what, found, people, source }) => [what, found, people, citation(source)],
};

export type HandSize = 'small' | 'medium' | 'large' | 'extra large';

interface HandSizeLoss {
  readonly size: HandSize;
  /** From low to working pressure. */
  readonly loss: number;
  /** Printed as "less than": the loss is an upper bound. */
  readonly atMost: boolean;
}

export const handSizeLosses: SourcedTable<HandSizeLoss> = {
  record: {
    id: 'hand/hand-size-losses',
    revision: 1,
    title: 'Further loss of grip from 3.4 to 29.6 kPa by hand size',
    source: ROESCH_1986,
    doesNotKnow: 'How the sizes were cut, and how far single people lay from these means; 16 people over four sizes.',
  },
  columns: [
    { name: 'Hand size', unit: '' },
    { name: 'Loss', unit: '1' },
    { name: 'Printed as', unit: '' },
  ],
  rows: [
    { size: 'extra large', loss: 0.17, atMost: false },
    { size: 'large', loss: 0.12, atMost: false },
    { size: 'medium', loss: 0.09, atMost: false },
    { size: 'small', loss: 0.01, atMost: true },
  ],
  cells: ({ size, loss, atMost }) => [size, loss, atMost ? 'less than 1 %' : `${Math.round(100 * loss)} %`],
};

interface Complaints {
  readonly site: string;
  readonly count: number;
  readonly percent: number;
}

export const suitedTrainingComplaints: SourcedTable<Complaints> = {
  record: {
    id: 'hand/suited-training-complaints',
    revision: 1,
    title: 'Complaints in suited training, by site',
    source: STRAUSS_2005,
    doesNotKnow:
      'Weightlessness: training under water, in one kind of suit. 770 runs, symptoms in 190 of them (24.6 % as printed), 352 complaints; the sites not listed make up the rest.',
  },
  columns: [
    { name: 'Site', unit: '' },
    { name: 'Complaints', unit: '' },
    { name: 'Share of 352', unit: '%' },
  ],
  rows: [
    { site: 'hands', count: 166, percent: 47.2 },
    { site: 'shoulders', count: 73, percent: 20.7 },
    { site: 'feet', count: 40, percent: 11.4 },
  ],
  cells: ({ site, count, percent }) => [site, count, percent],
};

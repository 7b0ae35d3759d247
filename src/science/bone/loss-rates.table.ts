import type { Source, SourceStatus } from '../formula.ts';
import type { SourcedTable } from '../sourced-table.ts';
import { AXPE_2020, CAVANAGH_2010, ENGLISH_2020, LEBLANC_2000, SMITH_2012 } from '../sources.ts';
import { GABEL_2022, LANG_2004, LANG_2006, STAVNICHUK_2020, VICO_2017 } from './sources.ts';

/** Measured losses of bone in flight, as data; a loss is negative. */

export interface MeasuredLoss {
  readonly study: Source;
  readonly people: number;
  readonly site: string;
  /** [%] of the value before flight. */
  readonly value: number;
  /** Between people. */
  readonly sd: number | null;
  /** 95 % interval of the mean, or the spread of a quoted range. */
  readonly interval: readonly [low: number, high: number] | null;
  readonly per: 'month' | 'flight';
  readonly status: SourceStatus;
  readonly note: string;
}

const leblanc = (site: string, value: number, sd: number, people = 18): MeasuredLoss => ({
  study: LEBLANC_2000,
  people,
  site,
  value,
  sd,
  interval: null,
  per: 'month',
  status: 'from memory',
  note: '4 to 14.4 months, light exercise',
});

const pooled = (site: string, value: number, low: number, high: number, per: MeasuredLoss['per']): MeasuredLoss => ({
  study: STAVNICHUK_2020,
  people: 148,
  site,
  value,
  sd: null,
  interval: [low, high],
  per,
  status: 'seen',
  note: 'all studies pooled',
});

const plain = (
  study: Source,
  people: number,
  site: string,
  value: number,
  per: MeasuredLoss['per'],
  status: SourceStatus,
  note: string,
  sd: number | null = null,
): MeasuredLoss => ({ study, people, site, value, sd, interval: null, per, status, note });

const QUOTED = '4 to 6 months, computed tomography; rate seen where it is quoted, number of people from memory';

/** "LeBlanc A. et al. (2000)" of a whole citation. */
export const authorsAndYear = ({ text }: Source): string => text.slice(0, text.indexOf(')') + 1);

export const MEASURED_LOSSES: SourcedTable<MeasuredLoss> = {
  record: {
    id: 'bone/measured-losses',
    revision: 1,
    title: 'Bone lost in flight, as measured',
    source: STAVNICHUK_2020,
    restsOn: [LEBLANC_2000, LANG_2004, CAVANAGH_2010, AXPE_2020, SMITH_2012, ENGLISH_2020],
    doesNotKnow:
      'What one person will lose: within each group the spread is about as wide as the mean. Exercise differed between the groups and was never assigned by chance; later groups on heavier machines lost about half, with a residual loss at the hip.',
  },
  columns: [
    { name: 'study', unit: '' },
    { name: 'people', unit: '' },
    { name: 'site', unit: '' },
    { name: 'change', unit: '%' },
    { name: 'standard deviation', unit: '%' },
    { name: 'from', unit: '%' },
    { name: 'to', unit: '%' },
    { name: 'per', unit: '' },
    { name: 'status', unit: '' },
    { name: 'note', unit: '' },
  ],
  rows: [
    leblanc('lumbar spine', -1.06, 0.63),
    leblanc('femoral neck', -1.15, 0.84),
    leblanc('trochanter', -1.56, 0.99),
    leblanc('pelvis', -1.35, 0.54, 17),
    leblanc('legs', -0.34, 0.33, 17),
    leblanc('arms', 0.04, 0.88, 17),
    leblanc('whole body', -0.35, 0.25, 17),
    plain(LANG_2004, 14, 'lumbar spine', -0.9, 'month', 'seen', QUOTED),
    {
      ...plain(LANG_2004, 14, 'total hip', -1.45, 'month', 'seen', QUOTED),
      interval: [-1.5, -1.4],
    },
    {
      ...plain(
        LANG_2004,
        14,
        'trabecular bone of the hip',
        -2.45,
        'month',
        'from memory',
        '4 to 6 months; middle of the range',
      ),
      interval: [-2.7, -2.2],
    },
    plain(
      CAVANAGH_2010,
      4,
      'lumbar spine',
      -0.83,
      'month',
      'seen',
      'foot forces measured: a quarter under those on the ground',
    ),
    plain(
      CAVANAGH_2010,
      4,
      'femoral neck',
      -0.71,
      'month',
      'seen',
      'foot forces measured: a quarter under those on the ground',
    ),
    pooled('spine and pelvis', -6.2, -6.7, -5.6, 'flight'),
    pooled('lower limb', -5.4, -6, -4.9, 'flight'),
    pooled('lower limb', -0.8, -1.1, -0.5, 'month'),
    pooled('skull', 2.2, 1.1, 3.3, 'flight'),
    plain(AXPE_2020, 46, 'femoral neck', -6.8, 'flight', 'seen', '181 ± 47 days', 1.1),
    plain(AXPE_2020, 16, 'femoral neck', -9.4, 'flight', 'seen', '150 ± 30 days', 6.4),
    plain(SMITH_2012, 8, 'hip and pelvis', -1, 'month', 'from memory', 'machine of lower loads; low confidence'),
    {
      ...plain(
        SMITH_2012,
        5,
        'hip and pelvis',
        -0.4,
        'month',
        'from memory',
        'machine of higher loads; low confidence; middle of the range',
      ),
      interval: [-0.5, -0.3],
    },
    plain(ENGLISH_2020, 26, 'femoral neck', -1.7, 'flight', 'seen', 'about 0.3 % a month by our own division'),
  ],
  cells: ({ study, people, site, value, sd, interval, per, status, note }) => [
    authorsAndYear(study),
    people,
    site,
    value,
    sd,
    interval?.[0] ?? null,
    interval?.[1] ?? null,
    per,
    status,
    note,
  ],
};

export interface AfterLanding {
  readonly study: Source;
  readonly people: number;
  readonly finding: string;
}

export const BONE_AFTER_LANDING: SourcedTable<AfterLanding> = {
  record: {
    id: 'bone/after-landing',
    revision: 1,
    title: 'Bone at landing and a year later, beyond density',
    source: GABEL_2022,
    restsOn: [VICO_2017, LANG_2006, STAVNICHUK_2020],
    doesNotKnow:
      'When one person’s bone is strong again: density comes back before strength, and in some strength has not.',
  },
  columns: [
    { name: 'study', unit: '' },
    { name: 'people', unit: '' },
    { name: 'finding', unit: '' },
  ],
  rows: [
    {
      study: VICO_2017,
      people: 13,
      finding:
        'Tibia at landing: cortex 4 % thinner, 15 % more porous; a year later its size was back, porosity was not fully.',
    },
    {
      study: GABEL_2022,
      people: 17,
      finding:
        'Tibia after twelve months: strength, density and trabeculae still 0.9 to 2.1 % down in the median; failure load −0.4 % after flights under six months, −3.9 % after longer ones; nine had not got their density back.',
    },
    {
      study: LANG_2006,
      people: 16,
      finding: 'Upper thigh bone after a year: mass largely back, density by volume and strength only partly.',
    },
    {
      study: STAVNICHUK_2020,
      people: 148,
      finding:
        'Resorption rises within days (half of its plateau of +113 % at day 11) and falls quickly after landing; formation rises for three to five months then.',
    },
  ],
  cells: ({ study, people, finding }) => [authorsAndYear(study), people, finding],
};

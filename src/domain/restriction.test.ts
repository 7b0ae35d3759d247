import { isoDay } from '#units/day.ts';
import { entered } from '#units/entered.ts';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { BODY_SITES, type Exercise } from './catalogue.ts';
import { idOf } from './identity.ts';
import {
  isWithinScope,
  showRestriction,
  type Restriction,
  type RestrictionLimit,
  type RestrictionScope,
} from './restriction.ts';

const exercise = (more: Partial<Exercise>): Exercise => ({
  id: idOf<'exercise'>('back-squat'),
  name: 'Back squat',
  alsoKnownAs: [],
  pattern: 'squat',
  bodyPart: 'lower body',
  perSide: false,
  shareModel: 'back squat, parallel',
  carriedAt: 'shoulders',
  loads: ['shoulder', 'low back', 'hip', 'knee', 'ankle'],
  capacity: { kind: 'one-repetition maximum' },
  roundTo: { kg: '2.5', lb: '5' },
  secondsPerRepetition: 4,
  cues: [],
  faults: [],
  cautions: [],
  settingFields: [],
  machineKinds: [],
  substitutes: [],
  source: 'invented for this test',
  ...more,
});

const SQUAT = exercise({});
const CURL = exercise({
  id: idOf<'exercise'>('curl'),
  name: 'Curl',
  pattern: 'arm',
  loads: ['elbow', 'wrist', 'hand'],
});

test.each<{ scope: RestrictionScope; squat: boolean; curl: boolean }>([
  { scope: { kind: 'all' }, squat: true, curl: true },
  { scope: { kind: 'exercise', exercise: SQUAT.id }, squat: true, curl: false },
  { scope: { kind: 'exercise', exercise: CURL.id }, squat: false, curl: true },
  { scope: { kind: 'pattern', pattern: 'squat' }, squat: true, curl: false },
  { scope: { kind: 'pattern', pattern: 'vertical pull' }, squat: false, curl: false },
  { scope: { kind: 'site', site: 'low back', side: null }, squat: true, curl: false },
  { scope: { kind: 'site', site: 'elbow', side: 'left' }, squat: false, curl: true },
  { scope: { kind: 'site', site: 'neck', side: null }, squat: false, curl: false },
])('$scope restricts the squat: $squat, the curl: $curl', ({ scope, squat, curl }) => {
  expect(isWithinScope(scope, SQUAT)).toBe(squat);
  expect(isWithinScope(scope, CURL)).toBe(curl);
});

test('a limit of one side restricts what a limit of both sides restricts: two hands hold one bar', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...BODY_SITES),
      fc.constantFrom('left' as const, 'right' as const),
      fc.subarray([...BODY_SITES]),
      (site, side, loads) => {
        const lift = exercise({ loads });
        expect(isWithinScope({ kind: 'site', site, side }, lift)).toBe(loads.includes(site));
        expect(isWithinScope({ kind: 'site', site, side: null }, lift)).toBe(loads.includes(site));
      },
    ),
  );
});

const restricting = (scope: RestrictionScope, limit: RestrictionLimit): Restriction => ({
  scope,
  limit,
  toldBy: 'Dr Ana Ferreira',
  toldOn: isoDay('2027-02-20'),
  confirmed: false,
  from: isoDay('2027-02-20'),
  reviewOn: isoDay('2027-03-20'),
});

test.each<{ scope: RestrictionScope; limit: RestrictionLimit; shown: string }>([
  {
    scope: { kind: 'site', site: 'shoulder', side: 'left' },
    limit: { kind: 'forbidden' },
    shown: 'everything that loads the left shoulder: forbidden',
  },
  {
    scope: { kind: 'exercise', exercise: SQUAT.id },
    limit: { kind: 'load at most', load: entered('200', 'lb') },
    shown: 'Back squat: at most 200 lb',
  },
  {
    scope: { kind: 'pattern', pattern: 'hip hinge' },
    limit: { kind: 'fraction at most', of: 0.6 },
    shown: 'every hip hinge: at most 60 % of the last capacity before flight',
  },
  { scope: { kind: 'all' }, limit: { kind: 'RPE at most', rpe: 6 }, shown: 'every exercise: effort at most RPE 6' },
  {
    scope: { kind: 'site', site: 'low back', side: null },
    limit: { kind: 'no straining' },
    shown: 'everything that loads the low back: no straining, breathe throughout',
  },
])('$shown', ({ scope, limit, shown }) => {
  expect(showRestriction(restricting(scope, limit), (id) => (id === SQUAT.id ? 'Back squat' : id))).toBe(shown);
});

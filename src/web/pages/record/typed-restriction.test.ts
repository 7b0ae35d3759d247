import { expect, test } from 'vitest';
import type { HouseWindow } from '#contract/windows/house-window.ts';
import type { Problem } from '#contract/problem.ts';
import type { Fact } from '#domain/fact.ts';
import { idOf } from '#domain/identity.ts';
import type { Restriction } from '#domain/restriction.ts';
import { isoDay } from '#units/day.ts';
import { restrictionOf, startOfRestriction } from './typed-restriction.ts';

const TODAY = isoDay('2027-03-01');
const house = {
  exercises: [
    {
      id: idOf('back-squat'),
      name: 'Back squat',
      bodyPart: 'lower body',
      perSide: false,
      settingFields: [],
      machineKinds: [],
    },
  ],
} as Pick<HouseWindow, 'exercises'> as HouseWindow;

const told = { toldBy: 'Dr Lind', toldOn: TODAY, confirmed: true, from: TODAY, reviewOn: isoDay('2027-03-15') };
const restrictions: readonly Restriction[] = [
  { ...told, scope: { kind: 'exercise', exercise: idOf('back-squat') }, limit: { kind: 'forbidden' } },
  { ...told, scope: { kind: 'pattern', pattern: 'hip hinge' }, limit: { kind: 'fraction at most', of: 0.57 } },
  { ...told, scope: { kind: 'site', site: 'shoulder', side: 'left' }, limit: { kind: 'RPE at most', rpe: 6.5 } },
  { ...told, scope: { kind: 'all' }, limit: { kind: 'no straining' }, reviewOn: null, confirmed: false },
  { ...told, scope: { kind: 'all' }, limit: { kind: 'load at most', load: { text: '200', unit: 'lb' } } },
];

test.each(restrictions)('$scope.kind, $limit.kind: what stands in the fields is what was recorded', (restriction) => {
  const problems: Problem[] = [];
  const fact = { kind: 'restricted', restriction, medicalReason: null } as Fact<'restricted'>;
  expect(restrictionOf(startOfRestriction(TODAY, fact), house, problems)).toEqual(restriction);
  expect(problems).toEqual([]);
});

test('an empty form says at once what it needs', () => {
  const problems: Problem[] = [];
  expect(restrictionOf(startOfRestriction(TODAY, null), house, problems)).toBeNull();
  expect(problems.map(({ field }) => field)).toEqual(['restriction.scope.site', 'restriction.toldBy']);
});

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { degrees } from '#units/quantity.ts';
import { BODY, WINTER_BODY } from './body-model.ts';
import { figure, STANDING, type Point } from './planar-model.ts';
import { BOTTOM_POSTURES, type LegLift } from './postures.ts';
import { SEXES } from './segments.ts';
import { bendingShare } from './share-reckonings.ts';
import { LEVELS, staticShare } from './static-share.ts';
import { bendingGivens, bodyWeightShare, SHARE_MODELS, workShareInPosture } from './work-share.ts';

const anySex = fc.constantFrom(...SEXES);
const anyLift = fc.constantFrom(...(Object.keys(BOTTOM_POSTURES) as LegLift[]));
const anyAngle = (min: number, max: number) => fc.double({ min, max, noNaN: true }).map(degrees);
const anyPosture = fc.record({
  shankLean: anyAngle(0, 45),
  thighLean: anyAngle(20, 120),
  trunkLean: anyAngle(0, 80),
});
const bodies = [BODY.male, BODY.female, WINTER_BODY];

test('the share of every leg lift in every posture lies above 0 and not above 1', () => {
  fc.assert(
    fc.property(anyLift, anySex, anyPosture, (lift, sex, posture) => {
      const share = workShareInPosture(lift, BODY[sex], posture);
      expect(share).toBeGreaterThan(0);
      expect(share).toBeLessThanOrEqual(1);
    }),
  );
});

const moving = SHARE_MODELS.filter((model) => model !== 'none');

test.each(moving)('%s: both shares lie above 0 and not above 1', (model) => {
  for (const sex of SEXES) {
    const { work, static: joint } = bodyWeightShare(model, sex);
    expect(work).toBeGreaterThan(0);
    expect(work).toBeLessThanOrEqual(1);
    const shares = joint.kind === 'share' ? [joint.share] : [];
    expect(shares.filter((share) => !(share > 0 && share <= 1))).toEqual([]);
    expect(joint.kind === 'none').toBe(model === 'split squat');
  }
});

test('a lift that moves no body weight has a share of 0, and says why', () => {
  const { work, static: joint, working } = bodyWeightShare('none', 'female');
  expect(work).toBe(0);
  expect([joint.kind, working.kind]).toEqual(['none', 'none']);
});

test('the parts of a share make the share', () => {
  fc.assert(
    fc.property(anyLift, anySex, anyPosture, (lift, sex, posture) => {
      const row = bendingShare.reckon(bendingGivens(BODY[sex], lift, posture));
      const sum = row.shanks + row.thighs + row.otherLeg + row.trunk + row.head + row.arms;
      expect(row.share).toBeCloseTo(sum, 12);
    }),
  );
});

test('the working of a share ends in the share', () => {
  for (const model of moving)
    for (const sex of SEXES) {
      const { work, working } = bodyWeightShare(model, sex);
      expect(working.kind === 'reckoned' && working.cells.at(-1)).toMatchObject({ name: 'share', value: work });
    }
});

test('the higher a level, the less it carries', () => {
  const [legs] = [LEVELS.slice(0, 6)];
  for (const sex of SEXES) {
    const shares = legs.map((level) => staticShare(level, sex));
    expect(shares).toEqual(shares.toSorted((a, b) => b - a));
  }
});

const distance = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y);

test('limbs keep their lengths in every posture', () => {
  fc.assert(
    fc.property(fc.constantFrom(...bodies), anyPosture, (body, posture) => {
      const { joints } = figure(body, posture);
      expect(distance(joints.ankle, joints.knee)).toBeCloseTo(body.shank.length, 12);
      expect(distance(joints.knee, joints.hip)).toBeCloseTo(body.thigh.length, 12);
      expect(distance(joints.hip, joints.shoulder)).toBeCloseTo(body.trunk.length, 12);
    }),
  );
});

test('the drops of the reckoning are those of the figure', () => {
  fc.assert(
    fc.property(anySex, anyPosture, (sex, posture) => {
      const body = BODY[sex];
      const [top, bottom] = [figure(body, STANDING), figure(body, posture)];
      const row = bendingShare.reckon(bendingGivens(body, 'back squat, parallel', posture));
      expect(row.barDrop).toBeCloseTo(top.joints.bar.y - bottom.joints.bar.y, 12);
      expect(row.hipDrop).toBeCloseTo(top.joints.hip.y - bottom.joints.hip.y, 12);
      expect(row.thighDrop).toBeCloseTo(top.centres.thigh.y - bottom.centres.thigh.y, 12);
      expect(row.trunkDrop).toBeCloseTo(top.centres.trunk.y - bottom.centres.trunk.y, 12);
      expect(row.c7Drop).toBeCloseTo(top.centres.head.y - bottom.centres.head.y, 12);
    }),
  );
});

test('a standing figure is as tall as its parts, and a hanging bar hangs under the shoulder', () => {
  const { joints } = figure(BODY.male, STANDING, 'hanging hands');
  expect(joints.headTop.y).toBeCloseTo(
    BODY.male.shank.length + BODY.male.thigh.length + BODY.male.hipToC7 + BODY.male.headAboveC7,
    12,
  );
  expect(joints.bar.x).toBe(joints.shoulder.x);
  expect(joints.bar.y).toBeLessThan(joints.shoulder.y);
});

test('an unknown model is refused by name', () => {
  expect(() => bodyWeightShare('handstand' as 'curl', 'male')).toThrow('No share model is called "handstand".');
});

test.each(Object.keys(BOTTOM_POSTURES))('%s: what is looked up is what is reckoned', (name) => {
  const lift = name as LegLift; // the keys of the postures
  for (const sex of SEXES)
    expect(workShareInPosture(lift, BODY[sex], BOTTOM_POSTURES[lift])).toBe(bodyWeightShare(lift, sex).work);
});

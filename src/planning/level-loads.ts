import { barLoad, kilograms, machineLoad } from '#units/quantity.ts';
import type { LevelLoad } from '#domain/crossing.ts';
import { staticShare, type Level } from '#science/body/static-share.ts';
import { axialLoadInFlight, axialLoadOnGround } from '#science/crossing/axial-load.ts';
import type { CrossedSet, CrossingGround } from './crossing-view.ts';

const LEVELS: readonly { readonly level: LevelLoad['level']; readonly share: Level | null }[] = [
  { level: 'shoulders', share: null },
  { level: 'L5/S1', share: 'above L5/S1' },
  { level: 'hips', share: 'above both hips' },
  { level: 'knees', share: 'above both knees' },
  { level: 'ankles', share: 'above both ankles' },
  { level: 'feet', share: 'feet' },
];

/**
 * Load along the body at each level, standing: the bar of the same effort in 1 g against the machine. Only for lifts
 * that the whole body carries.
 */
export const levelLoads = (ground: CrossingGround, set: CrossedSet): readonly LevelLoad[] => {
  if (ground.exercise.carriedAt !== 'shoulders') return [];
  const inFlight = axialLoadInFlight(machineLoad(set.kilograms));
  return LEVELS.map(({ level, share }) => {
    const above = share === null ? 0 : staticShare(share, ground.context.known.sex);
    const onGround = axialLoadOnGround(
      barLoad(set.bar),
      above as ReturnType<typeof staticShare>,
      kilograms(ground.mass),
    );
    return { level, onGround, inFlight, change: inFlight / onGround - 1 };
  });
};

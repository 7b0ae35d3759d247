import type { CrossingDetail, CrossingLift } from '#domain/crossing.ts';
import type { PersonHead } from './person-head.ts';

export type { CrossingDetail, CrossingLift, LevelLoad, PolicyOption } from '#domain/crossing.ts';

export interface CrossingWindow {
  readonly person: PersonHead;
  readonly machine: { readonly name: string; readonly ceiling: string; readonly unit: string };
  readonly stature: number | null;
  readonly lifts: readonly CrossingLift[];
  readonly detail: CrossingDetail | null;
  readonly empty: string | null;
}

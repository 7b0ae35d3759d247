import type { MassUnit } from '#units/mass.ts';

/** What somebody is asked to do with an exercise, as the trade writes it on one line. No load of any person stands in it. */

/** From least to most; one value where both are the same. */
export interface Span {
  readonly least: number;
  readonly most: number;
}

export const only = (value: number): Span => ({ least: value, most: value });
export const isOne = ({ least, most }: Span): boolean => least === most;

/** How hard a set of repetitions or a hold is meant to be. */
export type SetIntensity =
  /** Of the person's own maximum: 0.8 is 80 %. */
  | { readonly kind: 'of maximum'; readonly of: Span }
  | { readonly kind: 'in reserve'; readonly repetitions: Span }
  | { readonly kind: 'RPE'; readonly rating: Span }
  /** Off the load of the first group: 0.1 is ten percent lighter. */
  | { readonly kind: 'off the top'; readonly by: number };

/** How hard a bout of endurance is meant to be. */
export type BoutIntensity =
  | { readonly kind: 'of heart-rate reserve'; readonly of: Span }
  | { readonly kind: 'of greatest heart rate'; readonly of: Span }
  | { readonly kind: 'of greatest uptake'; readonly of: Span }
  | { readonly kind: 'watts'; readonly watts: Span }
  | { readonly kind: 'RPE'; readonly rating: Span }
  | { readonly kind: 'all-out' };

/** A load as typed; without a unit it is in the machine's own. */
export interface TypedLoad {
  readonly text: string;
  readonly unit: MassUnit | null;
}

export interface SetGroup {
  readonly warmUp: boolean;
  /** The first, heaviest set that later groups are measured from. */
  readonly top: boolean;
  readonly sets: Span;
  readonly each:
    | { readonly kind: 'repetitions'; readonly count: Span; /** As many more as go well. */ readonly orMore: boolean }
    | { readonly kind: 'hold'; readonly seconds: Span };
  readonly perSide: boolean;
  readonly load: TypedLoad | null;
  readonly intensity: SetIntensity | null;
}

/** Seconds down, held and up. */
export type Tempo = readonly [down: number, held: number, up: number];

export type Prescription =
  | {
      readonly kind: 'sets';
      /** Lines of one letter are done in turn: "A". */
      readonly superset: string | null;
      readonly groups: readonly SetGroup[];
      readonly tempo: Tempo | null;
      /** Seconds. */
      readonly rest: number | null;
    }
  | {
      readonly kind: 'bouts';
      readonly repeats: Span;
      readonly seconds: number;
      readonly intensity: BoutIntensity | null;
      /** Seconds of easy work between bouts. */
      readonly easy: number | null;
    };

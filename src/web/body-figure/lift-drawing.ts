import type { ShareModel } from '#domain/catalogue.ts';
import { barPlaceOf, BOTTOM_POSTURES, type LegLift } from '#science/body/postures.ts';
import { type BarPlace, type Posture, STANDING } from '#science/body/planar-model.ts';

/** How a lift is drawn, or why it is not. */
export type LiftDrawing =
  | {
      readonly kind: 'drawn';
      readonly posture: Posture;
      readonly bar: BarPlace;
      readonly position: string;
      readonly standing: boolean;
    }
  | { readonly kind: 'not drawn'; readonly why: string };

const isLegLift = (model: ShareModel): model is LegLift & ShareModel => model in BOTTOM_POSTURES;

const NOT_DRAWN = 'is not drawn: the planar model has legs, trunk and head, and this lift moves only the arms.';

/** The bottom position of the model whose share the loads rest on. */
export const liftDrawing = (model: ShareModel): LiftDrawing => {
  if (isLegLift(model))
    return {
      kind: 'drawn',
      posture: BOTTOM_POSTURES[model],
      bar: barPlaceOf(model),
      position: `bottom of the lift (${model})`,
      standing: model === 'Romanian deadlift',
    };
  if (model === 'heel raise' || model === 'single-leg heel raise')
    return {
      kind: 'drawn',
      posture: STANDING,
      bar: 'shoulders',
      position: `bottom of the ${model}, heels down`,
      standing: true,
    };
  if (model === 'none')
    return { kind: 'not drawn', why: 'This exercise has no share of body weight: nothing is drawn.' };
  return { kind: 'not drawn', why: `The ${model} ${NOT_DRAWN}` };
};

import type { CalledOffCause } from '#domain/fact.ts';
import type { ExerciseId } from '#domain/identity.ts';

/** What may become of one session beside training it as planned. */
export type Incident =
  | { readonly kind: 'called off'; readonly cause: CalledOffCause; readonly text: string }
  | { readonly kind: 'missed' }
  /** Nothing was ever reported. */
  | { readonly kind: 'not heard' }
  /** Trained on another flight day than the card's: two cards were swapped. */
  | { readonly kind: 'trained on'; readonly flightDay: number }
  /** The same result arrives a second time. */
  | { readonly kind: 'sent twice' }
  | { readonly kind: 'note'; readonly exercise: ExerciseId; readonly text: string }
  /** The note says that the last sets were lighter than the numbers typed. */
  | { readonly kind: 'contradicting note'; readonly exercise: ExerciseId; readonly lighterBy: number };

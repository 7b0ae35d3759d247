import type { CardDrill } from './card.ts';
import type { BoutsItem, DrillItem } from './programme.ts';
import { writeBouts } from './programme-line/bouts-line.ts';
import { writtenDrillOf } from './programme-line/drill-line.ts';
import { writeDrill } from './programme-line/write-drill.ts';

/** The line that writes bouts: "4 × 4 min @ 90 % HRR, 3 min easy", one kind after another where they differ. */
export const lineOfBouts = (item: BoutsItem): string => writeBouts(item);

/** The line that writes a drill: sets, holds or pulses, with a target of the hand where it has one. */
export const lineOfDrill = (item: DrillItem, perSide: boolean): string => writeDrill(writtenDrillOf(item), perSide);

/** The line of a drill that no programme holds as one, such as what stands in for a lift: by what the card asks for. */
export const lineOfCardDrill = ({ sets }: CardDrill): string | null => {
  const [first] = sets;
  if (!first) return null;
  const ofSide = sets.filter(({ side }) => side === first.side);
  const { rest } = first;
  const work = ofSide.map((set) => set.work);
  const sameRest = ofSide.every((set) => set.rest === rest);
  return writeDrill({ work, target: null, rest: sameRest ? rest : null, rpe: null }, first.side !== null);
};

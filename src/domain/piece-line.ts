import type { CardDrill } from './card.ts';
import { only, type Prescription } from './prescription.ts';
import type { BoutsItem } from './programme.ts';
import { writeShorthand } from './shorthand/write-shorthand.ts';

/** The line of shorthand that writes bouts, or null where they differ from one another: no one line says that. */
export const lineOfBouts = ({ bouts }: BoutsItem): string | null => {
  const [first] = bouts;
  if (!first || bouts.some((bout) => JSON.stringify(bout) !== JSON.stringify(first))) return null;
  return writeShorthand({
    kind: 'bouts',
    repeats: only(bouts.length),
    seconds: first.seconds,
    intensity: first.intensity,
    easy: first.easy > 0 ? first.easy : null,
  });
};

/** The line that writes a drill, or null where its sets differ, or where they are pulses. */
export const lineOfDrill = ({ sets }: CardDrill): string | null => {
  const [first] = sets;
  if (!first || first.work.kind === 'pulses') return null;
  const ofSide = sets.filter(({ side }) => side === first.side);
  if (ofSide.some(({ work }) => JSON.stringify(work) !== JSON.stringify(first.work))) return null;
  const each =
    first.work.kind === 'hold'
      ? ({ kind: 'hold', seconds: only(first.work.seconds) } as const)
      : ({ kind: 'repetitions', count: only(first.work.count), orMore: false } as const);
  const line: Prescription = {
    kind: 'sets',
    superset: null,
    groups: [
      {
        warmUp: false,
        top: false,
        sets: only(ofSide.length),
        each,
        perSide: first.side !== null,
        load: null,
        intensity: null,
      },
    ],
    tempo: null,
    rest: first.rest > 0 ? first.rest : null,
  };
  return writeShorthand(line);
};

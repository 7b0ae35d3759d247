import type { CardBout, CardBouts, CardDrill, CardDrillSet, HarnessPull } from './card.ts';
import type { DrillWork } from './programme.ts';

/** Bouts and drills of a card in one line: "4 × 4 min, 3 min easy · 168–176/min · 230 W". */
export const showPiece = (item: CardBouts | CardDrill): string =>
  item.kind === 'bouts' ? showBouts(item) : showDrill(item);

const showBouts = ({ bouts, harness }: CardBouts): string =>
  [...runsOf(bouts, showBout), ...(harness ? [`harness ${showHarness(harness)}`] : [])].join(' · ');

/** Everything that is set for one bout, without its count. */
const showBout = (bout: CardBout): string =>
  [
    `${showSeconds(bout.seconds)}${bout.easy > 0 ? `, ${showSeconds(bout.easy)} easy` : ''}`,
    ...showBoutTargets(bout),
  ].join(' · ');

/** What to set and to hold in a bout; effort where nothing else is known. */
export const showBoutTargets = ({ heartRate, watts, speed, rpe }: CardBout): readonly string[] => {
  const known = [
    ...(watts === null ? [] : [`${watts} W`]),
    ...(speed === null ? [] : [`${speed} km/h`]),
    ...(heartRate === null ? [] : [`${heartRate[0]}–${heartRate[1]}/min`]),
  ];
  return known.length > 0 ? known : [`RPE ${rpe[0]}–${rpe[1]}`];
};

export const showHarness = ({ increments, increment, unit, ofBodyWeight }: HarnessPull): string =>
  `${Number((increments * Number(increment)).toFixed(6))} ${unit} (${Math.round(ofBodyWeight * 100)} % of body weight)`;

const showDrill = ({ sets }: CardDrill): string => {
  const [first] = sets;
  const ofSide = sets.filter(({ side }) => side === first?.side);
  return `${runsOf(ofSide, showDrillSet).join(', ')}${first && first.side !== null ? ' each side' : ''}`;
};

const showDrillSet = ({ work, force }: CardDrillSet): string =>
  `${showDrillWork(work)}${force === null ? '' : ` at ${force} N`}`;

export const showDrillWork = (work: DrillWork): string => {
  switch (work.kind) {
    case 'repetitions':
      return String(work.count);
    case 'hold':
      return `${work.seconds} s`;
    case 'pulses':
      return `${work.count} × (${work.on} s on, ${work.off} s off)`;
  }
};

/** "4 min", "2:30 min", "45 s". */
export const showSeconds = (seconds: number): string => {
  if (seconds < 60) return `${seconds} s`;
  const [minutes, rest] = [Math.floor(seconds / 60), Math.round(seconds % 60)];
  return rest === 0 ? `${minutes} min` : `${minutes}:${String(rest).padStart(2, '0')} min`;
};

/** Neighbours that are alike are counted. */
const runsOf = <Part>(parts: readonly Part[], show: (part: Part) => string): readonly string[] => {
  const runs: { readonly text: string; count: number }[] = [];
  for (const part of parts) {
    const text = show(part);
    const last = runs.at(-1);
    if (last?.text === text) last.count += 1;
    else runs.push({ text, count: 1 });
  }
  return runs.map(({ text, count }) => (count === 1 && runs.length > 1 ? text : `${count} × ${text}`));
};

import type { CardBout, CardBouts, CardDrill, CardDrillSet, HarnessPull } from './card.ts';
import { showRange } from './asked-sets.ts';
import type { DrillWork } from './programme.ts';

/** Bouts and drills of a card in one line: "4 × 4 min, 3 min easy · 168–176/min · 230 W". */
export const showPiece = (item: CardBouts | CardDrill): string =>
  item.kind === 'bouts' ? showBouts(item) : showDrill(item);

/** The share of body weight is not said: with the load it would tell what somebody weighs. */
const showBouts = ({ bouts, harness }: CardBouts): string =>
  [...showEach(alikeToTheEnd(bouts)), ...(harness ? [`harness ${showPull(harness)}`] : [])].join(' · ');

/** "5 × 2 min, 2 min easy: 160 W 132–142/min, 185 W 146–155/min, ..." where only what is held differs. */
const showEach = (bouts: readonly CardBout[]): readonly string[] => {
  const runs = runsOf(bouts, showBout);
  if (runs.length < 2 || !areAlikeInTime(bouts)) return runs;
  const [first] = bouts;
  const each = bouts.map((bout) => showBoutTargets(bout).join(' ')).join(', ');
  return first ? [`${bouts.length} × ${showTime(first)}: ${each}`] : runs;
};

/** Do bouts last alike, with alike easy time between them? */
export const areAlikeInTime = (bouts: readonly CardBout[]): boolean =>
  new Set(alikeToTheEnd(bouts).map(showTime)).size === 1;

const showTime = ({ seconds, easy }: CardBout): string =>
  `${showSeconds(seconds)}${easy > 0 ? `, ${showSeconds(easy)} easy` : ''}`;

/** After the last bout comes the cooling down: its easy time makes no other bout of it. */
const alikeToTheEnd = (bouts: readonly CardBout[]): readonly CardBout[] => {
  const before = bouts.at(-2);
  return bouts.map((bout, place) => (before && place === bouts.length - 1 ? { ...bout, easy: before.easy } : bout));
};

/** Everything that is set for one bout, without its count. */
const showBout = (bout: CardBout): string => [showTime(bout), ...showBoutTargets(bout)].join(' · ');

/** What to set and to hold in a bout; effort where nothing else is known. */
const showBoutTargets = ({ heartRate, watts, speed, rpe }: CardBout): readonly string[] => {
  const known = [
    ...(watts === null ? [] : [`${watts} W`]),
    ...(speed === null ? [] : [`${speed} km/h`]),
    ...(heartRate === null ? [] : [`${heartRate[0]}–${heartRate[1]}/min`]),
  ];
  return known.length > 0 ? known : [`RPE ${rpe[0]}–${rpe[1]}`];
};

/** For the specialist alone: load and share together tell the body mass. */
export const showHarness = (harness: HarnessPull): string =>
  `${showPull(harness)} (${Math.round(harness.ofBodyWeight * 100)} % of body weight)`;

/** "122 lb". */
export const showPull = ({ increments, increment, unit }: HarnessPull): string =>
  `${Number((increments * Number(increment)).toFixed(6))} ${unit}`;

/** "3 × 40 s each side"; sides that are asked for different forces stand each for itself. */
const showDrill = ({ sets }: CardDrill): string => {
  const ofSide = (side: CardDrillSet['side']): string =>
    runsOf(
      sets.filter((set) => set.side === side),
      showDrillSet,
    ).join(', ');
  const [first] = sets;
  if (!first || first.side === null) return ofSide(null);
  const [left, right] = [ofSide('left'), ofSide('right')];
  if (left === right) return `${left} each side`;
  const both = onlyForcesDiffer(sets);
  if (both !== null) return both;
  const bySide = [left === '' ? '' : `${left} left`, right === '' ? '' : `${right} right`];
  return bySide.filter((text) => text !== '').join(', ');
};

/** "2 × 40 s at 135 N left, 145 N right"; null where more than the force of the sides differs. */
const onlyForcesDiffer = (sets: readonly CardDrillSet[]): string | null => {
  const workOf = (side: CardDrillSet['side']): string =>
    runsOf(
      sets.filter((set) => set.side === side),
      ({ work }) => showDrillWork(work),
    ).join(', ');
  const forcesOf = (side: CardDrillSet['side']): readonly (number | null)[] => [
    ...new Set(sets.filter((set) => set.side === side).map(({ force }) => force)),
  ];
  const [[left, ...moreLeft], [right, ...moreRight]] = [forcesOf('left'), forcesOf('right')];
  const isOneEach = typeof left === 'number' && typeof right === 'number' && moreLeft.length + moreRight.length === 0;
  return isOneEach && workOf('left') === workOf('right')
    ? `${workOf('left')} at ${left} N left, ${right} N right`
    : null;
};

const showDrillSet = ({ work, force }: CardDrillSet): string =>
  `${showDrillWork(work)}${force === null ? '' : ` at ${force} N`}`;

const showDrillWork = (work: DrillWork): string => {
  switch (work.kind) {
    case 'repetitions':
      return showRange(work.count, work.most);
    case 'hold':
      return `${showRange(work.seconds, work.most)} s`;
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

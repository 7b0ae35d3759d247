import { showCount, showRepetitions } from '#domain/asked-sets.ts';
import {
  workIncrements,
  type CardBouts,
  type CardDrill,
  type CardItem,
  type CardLift,
  type CardSet,
  type SignedRule,
} from '#domain/card.ts';
import { showPiece, showSeconds } from '#domain/show-piece.ts';
import { plainAscii, shortAscii } from './plain-ascii.ts';
import { shownLoad } from './shown-load.ts';

/** What may go where a week does not fit. */
export interface Keeps {
  readonly cues: boolean;
  readonly lastTime: boolean;
  /** How far loads are on their way up, and settings from what was tested. */
  readonly explanations: boolean;
  readonly warmUps: boolean;
  /** What to do when a machine is down. */
  readonly machineDown: boolean;
}

/** One exercise of a card in a few lines. */
export const itemLines = (item: CardItem, keeps: Keeps): readonly string[] => [
  `${item.place} ${plainAscii(item.exerciseName)}, ${withWhat(item)}${settingsText(item)}`,
  ...(keeps.lastTime && item.last !== null ? [` last ${shortAscii(item.last)}`] : []),
  ...(item.kind === 'lift' ? setLines(item) : pieceLines(item)),
  ...(item.kind === 'lift' && item.rule ? [` rule ${shortRule(item, item.rule)}`] : []),
  ...item.says.map((says) => ` ${shortAscii(says)}`),
  ...(keeps.cues && item.cues.length > 0 ? [` ${cuesText(item)}`] : []),
];

/** Cues as one line; their own full stops would only double the separators. */
export const cuesText = ({ cues }: Pick<CardItem, 'cues'>): string =>
  plainAscii(cues.map((cue) => cue.replace(/\.$/, '')).join('; '));

/** "bar stop 14, strap left 2". */
export const settingsOf = ({ settings }: Pick<CardItem, 'settings'>): string =>
  settings.map(({ field, value, side }) => plainAscii(`${field}${side ? ` ${side}` : ''} ${value}`)).join(', ');

const settingsText = (item: CardItem): string => (item.settings.length === 0 ? '' : `. Set: ${settingsOf(item)}`);

/** Loads in the unit of the machine; else what the item is done on. */
const withWhat = (item: CardItem): string => {
  if (item.kind === 'lift') return item.unit;
  return plainAscii(item.kind === 'bouts' ? item.machineName : item.means);
};

/** "warm 5 min | WORK 4 x 4 min, 3 min easy - 168-176/min - 230 W | cool 5 min | feel 7-8". */
const pieceLines = (item: CardBouts | CardDrill): readonly string[] => [
  ` ${[
    ...(item.kind === 'bouts' && item.warmUpSeconds > 0 ? [`warm ${showSeconds(item.warmUpSeconds)}`] : []),
    `WORK ${shortAscii(showPiece(item))}`,
    ...(item.kind === 'bouts' && item.coolDownSeconds > 0 ? [`cool ${showSeconds(item.coolDownSeconds)}`] : []),
    `feel ${span(item.shouldFeel)}`,
  ].join(' | ')}`,
];

const setLines = (item: CardLift): readonly string[] => {
  const [warmUps, work] = [of(item, 'warm-up'), of(item, 'work')];
  const rest = restText(work);
  const feel = `feel ${span(item.shouldFeel)}`;
  return [
    ` ${[
      ...(warmUps.length > 0 ? [`warm ${setsText(item, warmUps)}`] : []),
      `WORK ${setsText(item, work)}`,
      ...mannerOf(item),
      ...(rest ? [rest] : []),
      feel,
    ].join(' | ')}`,
  ];
};

const of = (item: CardLift, kind: CardSet['kind']): readonly CardSet[] => item.sets.filter((set) => set.kind === kind);

interface Run {
  readonly text: string;
  readonly sets: CardSet[];
}

/** "4x6 270", "3-4x6-8 270", "3x10 start 85 RPE 6-8", "1x6 200 1x6 220": neighbours that are alike are counted. */
export const setsText = (item: CardLift, sets: readonly CardSet[]): string => {
  const runs: Run[] = [];
  for (const set of sets) {
    const text = `${plainAscii(showRepetitions(set))} ${loadText(item, set)}`;
    const last = runs.at(-1);
    if (last?.text === text) last.sets.push(set);
    else runs.push({ text, sets: [set] });
  }
  return runs.map(runText).join(' ');
};

/** Sets of both sides in turn are told by side: "3x12 85 each side". */
const runText = ({ text, sets }: Run): string => {
  const sides = [...new Set(sets.flatMap(({ side }) => side ?? []))];
  const isEach = sides.length === 2 && sets.length % 2 === 0;
  const counted = `${plainAscii(showCount(sets, isEach ? 2 : 1))}x${text}`;
  if (isEach) return `${counted} each side`;
  return sides.length === 0 ? counted : `${counted} ${sides.join(' and ')}`;
};

/** "tempo 3-1-1", "A with 2, rest after both": how the sets are done. */
export const mannerOf = ({ tempo, superset }: CardLift): readonly string[] => [
  ...(tempo === null ? [] : [`tempo ${tempo.join('-')}`]),
  ...(superset === null ? [] : [`${superset.letter} in turn with ${superset.inTurnWith.join(', ')}`]),
];

export const loadText = (item: CardLift, { load }: CardSet): string => {
  const shown = shownLoad(load.increments, item.increment);
  return load.kind === 'set' ? shown : `start ${shown} RPE ${span(load.rpe)}`;
};

const restText = (work: readonly CardSet[]): string | null => {
  const rests = [...new Set(work.map((set) => set.rest))].filter((rest) => rest > 0);
  return rests.length === 0 ? null : `rest ${rests.join('/')} s`;
};

export const span = ([low, high]: readonly [number, number]): string => (low === high ? `${low}` : `${low}-${high}`);

/** "+5, max 300, -20": spelled out once in the common lines. Without room for a whole step the load stays. */
const shortRule = (item: CardLift, rule: SignedRule): string => {
  const shown = (increments: number): string => shownLoad(increments, item.increment);
  const work = workIncrements(item) ?? 0;
  return rule.neverOver >= work + rule.add
    ? `+${shown(rule.add)}, max ${shown(rule.neverOver)}, -${shown(rule.takeOff)}${ruleTerms(rule)}`
    : `stay at ${shown(work)}, -${shown(rule.takeOff)}`;
};

/** The usual terms are said once a week; others stand with the rule itself. */
export const USUAL_TERMS = { rpeAtMost: 8, discomfortBelow: 3 } as const;

const ruleTerms = ({ rpeAtMost, discomfortBelow }: SignedRule): string =>
  rpeAtMost === USUAL_TERMS.rpeAtMost && discomfortBelow === USUAL_TERMS.discomfortBelow
    ? ''
    : ` (RPE <=${rpeAtMost}, discomfort <${discomfortBelow})`;

export const USUAL_RULE =
  `Rule "+5, max 300, -20": add 5 next time if all repetitions at RPE ${USUAL_TERMS.rpeAtMost} or less and no discomfort ` +
  `of ${USUAL_TERMS.discomfortBelow} or more, once a week; never over 300; take up to 20 off if it feels wrong and write why.`;

import {
  workIncrements,
  type CardBout,
  type CardBouts,
  type CardDrill,
  type CardItem,
  type CardLift,
  type CardSet,
} from '#domain/card.ts';
import { showPiece, showPull, showSeconds } from '#domain/show-piece.ts';
import { plainAscii, shortAscii } from './plain-ascii.ts';
import { loadText, mannerOf, setsText, settingsOf, span, USUAL_TERMS, type Keeps } from './item-lines.ts';
import { shownLoad } from './shown-load.ts';

/** What the letters of the compact lines mean: stands above them. */
export const COMPACT_LEGEND = 'w warm-up sets, r rest in s, f should feel (RPE); r and f hold until others are named.';

export const COMPACT_RULE = `Rule "+5<300-20": add 5 next time if all done at RPE <=${USUAL_TERMS.rpeAtMost}, discomfort under ${USUAL_TERMS.discomfortBelow}, once a week, never over 300; up to 20 off if it feels wrong, say why.`;

/** Rest and feeling that were named last: said again only where they change. */
export interface Named {
  rest: string;
  feel: string;
}

/** "Back squat w 1x6 80; 4x8 140 r120 f6 +5<150-15": one exercise in one line, without its place. */
export const compactItem = (item: CardItem, keeps: Keeps, named: Named): string => {
  const name = plainAscii(item.exerciseName);
  const what = item.kind === 'lift' ? compactLift(item, keeps) : compactPiece(item);
  const terms = [...namedRest(item, named), ...namedFeel(item, named)];
  const rule = item.kind === 'lift' ? compactRule(item) : null;
  const last = keeps.lastTime && item.last !== null ? ` (${shortAscii(item.last)})` : '';
  return [name, what, ...terms, ...(rule === null ? [] : [rule])].join(' ') + last;
};

const namedRest = (item: CardItem, named: Named): readonly string[] => {
  const sets =
    item.kind === 'lift' ? item.sets.filter(({ kind }) => kind === 'work') : item.kind === 'drill' ? item.sets : [];
  const rests = [...new Set(sets.map(({ rest }) => rest))].filter((rest) => rest > 0);
  const rest = rests.length === 0 ? null : `r${rests.join('/')}`;
  if (rest === null || rest === named.rest) return [];
  named.rest = rest;
  return [rest];
};

/** Where effort leads the bouts, it stands with them already. */
const namedFeel = (item: CardItem, named: Named): readonly string[] => {
  const [low, high] = item.shouldFeel;
  if (
    item.kind === 'bouts' &&
    item.bouts.every((bout) => isByEffort(bout) && bout.rpe[0] === low && bout.rpe[1] === high)
  )
    return [];
  const feel = `f${span(item.shouldFeel)}`;
  if (feel === named.feel) return [];
  named.feel = feel;
  return [feel];
};

const isByEffort = ({ heartRate, watts, speed }: CardBout): boolean =>
  heartRate === null && watts === null && speed === null;

const compactLift = (item: CardLift, { warmUps }: Keeps): string => {
  const of = (kind: 'warm-up' | 'work') => item.sets.filter((set) => set.kind === kind);
  const warm = warmUps && of('warm-up').length > 0 ? `w ${warmUpText(item, of('warm-up'))}; ` : '';
  return [`${warm}${setsText(item, of('work'))}`, ...mannerOf(item)].join(' ');
};

const warmUpText = (item: CardLift, sets: readonly CardSet[]): string =>
  sets.some(({ side }) => side !== null)
    ? setsText(item, sets)
    : sets.map((set) => `${set.repetitions}x${loadText(item, set)}`).join(' ');

/** "+5<300-20"; without room for a whole step the load stays. */
const compactRule = (item: CardLift): string | null => {
  const { rule } = item;
  if (!rule) return null;
  const shown = (increments: number): string => shownLoad(increments, item.increment);
  const hasRoom = rule.neverOver >= (workIncrements(item) ?? 0) + rule.add;
  const isUsual = rule.rpeAtMost === USUAL_TERMS.rpeAtMost && rule.discomfortBelow === USUAL_TERMS.discomfortBelow;
  const terms = isUsual ? '' : ` (RPE <=${rule.rpeAtMost}, discomfort <${rule.discomfortBelow})`;
  return hasRoom
    ? `+${shown(rule.add)}<${shown(rule.neverOver)}-${shown(rule.takeOff)}${terms}`
    : `stay, -${shown(rule.takeOff)}`;
};

const compactPiece = (item: CardBouts | CardDrill): string =>
  shortAscii(showPiece(item.kind === 'bouts' ? { ...item, harness: null } : item))
    .replaceAll(' - ', '; ')
    .replaceAll(' x ', 'x')
    .replaceAll(/ at (\d+) N left, (\d+) N right/g, ' L $1 R $2 N')
    .replaceAll(' each side', '/side')
    // In a list of bouts the unit of the pulse is said by the last.
    .replaceAll(/(\d+-\d+)\/min, /g, '$1, ');

/** What is set once for an exercise, each by itself: the harness, the person's own settings, easy minutes before and after. */
export const compactSettings = (item: CardItem): readonly string[] => {
  const own = settingsOf(item);
  const settings = own === '' ? [] : [own];
  if (item.kind !== 'bouts') return settings;
  const { harness, warmUpSeconds: warm, coolDownSeconds: cool } = item;
  const around =
    warm === cool && warm > 0
      ? [`warm/cool ${showSeconds(warm)}`]
      : [...(warm > 0 ? [`warm ${showSeconds(warm)}`] : []), ...(cool > 0 ? [`cool ${showSeconds(cool)}`] : [])];
  return [...(harness ? [`harness ${showPull(harness)}`] : []), ...settings, ...around];
};

import { totalMinutes, type Card, type CardItem } from '#domain/card.ts';
import { cardCode } from '#domain/card-code.ts';
import type { IssuedCard } from '#domain/issued-card.ts';
import { compactItem, compactSettings, type Named } from './compact-item.ts';
import type { Keeps } from './item-lines.ts';
import { plainAscii, shortAscii } from './plain-ascii.ts';
import { isSaidOnce, machineDownLines, marksOf, saidIn, saidLines, type Said } from './shared-lines.ts';
import { validUntil } from './session-lines.ts';

/** All sessions of a week in the fewest words: what they share stands once, what an earlier one says is only pointed to. */
export const compactSessions = (documents: readonly IssuedCard[], keeps: Keeps): readonly string[] => {
  const settings = commonSettings(documents);
  const said = saidIn(documents, (says) => keeps.explanations || !explains(says));
  const shared = sharedBy(documents);
  const saidOn = new Map<string, string>();
  return [
    ...(keeps.machineDown ? machineDownLines(documents) : []),
    ...settingsLine(settings),
    ...saidLines(said),
    ...(shared.says === '' ? [] : [shared.says]),
    ...documents.flatMap((document) => [
      head(document, shared),
      ...itemLinesOf(document.card, keeps, { settings, said, isOneUnit: shared.isOneUnit }, saidOn),
      ...tailOf(document.card, keeps, said),
    ]),
  ];
};

interface Shared {
  readonly isOneUnit: boolean;
  readonly isOneValidity: boolean;
  readonly isEasier: boolean;
  readonly isOneShort: boolean;
  readonly says: string;
}

/** Unit, days of validity, an easier week: where all sessions agree they are said before them. */
const sharedBy = (documents: readonly IssuedCard[]): Shared => {
  const units = [...new Set(documents.flatMap(({ card }) => unitsOf(card)))];
  const days = [...new Set(documents.map(({ card, validUntil: until }) => until - card.day))];
  const short = [...new Set(documents.map(({ card }) => shortOf(card)))];
  const isEasier = documents.length > 0 && documents.every(({ card }) => card.deload);
  return {
    isOneUnit: units.length === 1,
    isOneValidity: days.length === 1,
    isEasier,
    isOneShort: short.length === 1,
    says: [
      ...(units.length === 1 ? [`Loads in ${units[0] ?? ''}.`] : []),
      ...(days.length === 1 ? [`Each card is valid for ${days[0] ?? 0} days after its own.`] : []),
      ...(isEasier ? ['An easier week.'] : []),
      ...(short.length === 1 && short[0] ? [`In every session ${short[0]}.`] : []),
    ].join(' '),
  };
};

/** Most sessions give up their end: that is said alike of all of them. */
const shortOf = ({ shortOfTime, items }: Card): string => {
  const [first, second] = shortOfTime;
  if (first === undefined) return '';
  const isTheEnd = shortOfTime.length === 2 && first === items.length && second === items.length - 1;
  return isTheEnd ? 'short of time, leave the end out, last first' : `short of time: out ${shortOfTime.join(', ')}`;
};

const head = (document: IssuedCard, { isOneValidity, isEasier, isOneShort }: Shared): string => {
  const { card, digest } = document;
  const until = isOneValidity ? '' : `, valid to ${validUntil(document)}`;
  const short = isOneShort || card.shortOfTime.length === 0 ? '' : `; ${shortOf(card)}`;
  return shortAscii(
    `== ${card.missionDay} ${card.title}${card.deload && !isEasier ? ' (easier week)' : ''}. ${cardCode(digest)}, ${Math.round(totalMinutes(card))}/${card.blockMinutes} min${until}${short}.`,
  );
};

/** What is set for an exercise alike in every session. */
type Settings = ReadonlyMap<string, readonly string[]>;

const commonSettings = (documents: readonly IssuedCard[]): Settings => {
  const found = new Map<string, readonly string[]>();
  for (const item of documents.flatMap(({ card }) => card.items)) {
    const name = plainAscii(item.exerciseName);
    const settings = compactSettings(item);
    found.set(name, found.get(name)?.filter((each) => settings.includes(each)) ?? settings);
  }
  return new Map([...found].filter(([, settings]) => settings.length > 0));
};

const settingsLine = (common: Settings): readonly string[] =>
  common.size === 0
    ? []
    : [`Set: ${[...common].map(([name, settings]) => `${name} ${settings.join(', ')}`).join('; ')}.`];

interface Line {
  readonly place: number;
  readonly text: string;
  /** Day of an earlier session that says the same of the same place. */
  readonly sameAs: string | null;
}

interface Common {
  readonly settings: Settings;
  readonly said: Said;
  readonly isOneUnit: boolean;
}

const itemLinesOf = (card: Card, keeps: Keeps, common: Common, saidOn: Map<string, string>): readonly string[] => {
  const named: Named = { rest: '', feel: '' };
  const lines = card.items.map((item): Line => {
    const beside = `${unitOf(item, common)}${ownSettings(item, common)}${marksOf(item, common.said)}`;
    // Held against earlier sessions with everything named: what holds from above may differ there.
    const whole = `${item.place} ${compactItem(item, keeps, { rest: '', feel: '' })}${beside}`;
    const sameAs = saidOn.get(whole) ?? null;
    if (sameAs !== null) {
      Object.assign(named, { rest: '', feel: '' });
      return { place: item.place, text: '', sameAs };
    }
    saidOn.set(whole, shortAscii(card.missionDay));
    return { place: item.place, text: `${compactItem(item, keeps, named)}${beside}`, sameAs };
  });
  return pointed(lines);
};

const unitsOf = ({ items }: Card): readonly string[] => [
  ...new Set(items.flatMap((item) => (item.kind === 'lift' ? [item.unit] : []))),
];

const unitOf = (item: CardItem, { isOneUnit }: Common): string =>
  item.kind === 'lift' && !isOneUnit ? ` ${item.unit}` : '';

const ownSettings = (item: CardItem, { settings }: Common): string => {
  const common = settings.get(plainAscii(item.exerciseName)) ?? [];
  const own = compactSettings(item).filter((each) => !common.includes(each));
  return own.length === 0 ? '' : `; ${own.join(', ')}`;
};

/** "1-6 as FD 23": neighbours that stand in the same earlier session are pointed to together. */
const pointed = (lines: readonly Line[]): readonly string[] => {
  const shown: string[] = [];
  for (let at = 0; at < lines.length;) {
    const line = lines[at] as Line;
    const run = line.sameAs === null ? 1 : lengthOfRun(lines, at);
    const last = lines[at + run - 1] as Line;
    shown.push(
      line.sameAs === null
        ? `${line.place} ${line.text}`
        : `${line.place}${run > 1 ? `-${last.place}` : ''} as ${line.sameAs}`,
    );
    at += run;
  }
  return shown;
};

const lengthOfRun = (lines: readonly Line[], from: number): number => {
  const day = lines[from]?.sameAs;
  const end = lines.findIndex(({ sameAs }, at) => at > from && sameAs !== day);
  return (end < 0 ? lines.length : end) - from;
};

const tailOf = (card: Card, keeps: Keeps, said: Said): readonly string[] => [
  ...saysLines(card, keeps, said),
  ...(card.leftOut.length === 0
    ? []
    : [
        shortAscii(
          `Left out: ${card.leftOut.map(({ exerciseName, says }) => `${exerciseName} (${says.replace(/^left out: /, '')})`).join('; ')}`,
        ),
      ]),
];

/** "1-6, 10: limited by the physician": what is said of several exercises of a session is said once in it, where no letter stands for it. */
const saysLines = ({ items }: Card, keeps: Keeps, said: Said): readonly string[] => {
  const places = new Map<string, number[]>();
  for (const item of items)
    for (const text of item.says) {
      if (isSaidOnce(said, item, text) || (!keeps.explanations && explains(text))) continue;
      places.set(text, [...(places.get(text) ?? []), item.place]);
    }
  return [...places].map(([text, of]) => shortAscii(`${inRanges(of)}: ${text}`));
};

/** "1-6, 10". */
const inRanges = (places: readonly number[]): string => {
  const runs: { readonly from: number; to: number }[] = [];
  for (const place of places) {
    const last = runs.at(-1);
    if (last && place === last.to + 1) last.to = place;
    else runs.push({ from: place, to: place });
  }
  return runs.map(({ from, to }) => (from === to ? `${from}` : `${from}-${to}`)).join(', ');
};

/** Sentences that explain a load or a setting to who signs it: nobody trains by them. One that is worded anew is only kept. */
const EXPLAINING = [
  /^on the way up: /i,
  /^by the segment model /i,
  / lies outside the .* that were tested/,
  /^reckoned from a test /i,
  /^harness held by /i,
];

const explains = (says: string): boolean => EXPLAINING.some((pattern) => pattern.test(says));

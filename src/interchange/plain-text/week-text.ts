import { isOpenCount } from '#domain/asked-sets.ts';
import { liftsOf } from '#domain/card.ts';
import { isoOfDay } from '#units/day.ts';
import type { IssuedCard } from '#domain/issued-card.ts';
import type { WeekTextWindow } from '#contract/windows/card-window.ts';
import { COMPACT_LEGEND, COMPACT_RULE } from './compact-item.ts';
import { compactSessions } from './compact-sessions.ts';
import { cuesText, USUAL_RULE, type Keeps } from './item-lines.ts';
import { shortAscii } from './plain-ascii.ts';
import { sessionLines, type Said } from './session-lines.ts';
import { breathingLine, STOP_BOX } from './stop-box.ts';

/** What a slow line takes in one message. ASCII: a character is a byte. */
export const MOST_BYTES = 4096;

type Cut = WeekTextWindow['cut'][number];

interface Step {
  readonly keeps: Keeps;
  readonly isCompact: boolean;
  readonly cut: readonly Cut[];
}

const ALL: Keeps = { cues: true, lastTime: true, explanations: true, warmUps: true, machineDown: true };
const NO_CUES: Keeps = { ...ALL, cues: false };
const NO_LAST: Keeps = { ...NO_CUES, lastTime: false };
const NO_EXPLANATIONS: Keeps = { ...NO_LAST, explanations: false };
const NO_WARM_UPS: Keeps = { ...NO_EXPLANATIONS, warmUps: false };

/** What is given up, step by step, until the week fits: first cues, then words, then what explains, warm-up sets, what is rarely needed. */
const STEPS: readonly Step[] = [
  { keeps: ALL, isCompact: false, cut: [] },
  { keeps: NO_CUES, isCompact: false, cut: ['cues'] },
  { keeps: NO_CUES, isCompact: true, cut: ['cues'] },
  { keeps: NO_LAST, isCompact: true, cut: ['cues', 'last time'] },
  { keeps: NO_EXPLANATIONS, isCompact: true, cut: ['cues', 'last time', 'explanations'] },
  { keeps: NO_WARM_UPS, isCompact: true, cut: ['cues', 'last time', 'explanations', 'warm-up sets'] },
  {
    keeps: { ...NO_WARM_UPS, machineDown: false },
    isCompact: true,
    cut: ['cues', 'last time', 'explanations', 'warm-up sets', 'machine down'],
  },
];
const SHORTEST = STEPS.at(-1) as Step;

/** One person's cards as plain text: common lines once, then the sessions, never more than one message takes. */
export const weekText = (documents: readonly IssuedCard[]): WeekTextWindow => {
  const inOrder = documents.toSorted((a, b) => a.card.day - b.card.day);
  for (const step of STEPS) {
    const text = wholeText(inOrder, inOrder, step);
    if (text.length <= MOST_BYTES) return { text, bytes: text.length, cut: step.cut };
  }
  return withFewerSessions(inOrder);
};

/** Nothing that is kept is cut in half: a session stands whole, or the text says that it is missing. */
const withFewerSessions = (inOrder: readonly IssuedCard[]): WeekTextWindow => {
  const step: Step = { ...SHORTEST, cut: [...SHORTEST.cut, 'sessions'] };
  for (let count = inOrder.length - 1; count >= 0; count -= 1) {
    const text = wholeText(inOrder.slice(0, count), inOrder, step);
    if (text.length <= MOST_BYTES) return { text, bytes: text.length, cut: step.cut };
  }
  throw new RangeError('The common lines alone are longer than a message.');
};

const wholeText = (
  shown: readonly IssuedCard[],
  all: readonly IssuedCard[],
  { keeps, isCompact, cut }: Step,
): string => {
  const machineDown = commonMachineDown(shown);
  const saidBefore = (place: number): Said => ({
    cues: cuesOf(shown.slice(0, place)),
    machineDown: machineDown !== null,
  });
  return [
    ...headLines(all),
    ...STOP_BOX,
    ...breathingLines(all),
    ...(shown.some(hasBouts) ? ['Heart rate and effort govern: over what stands here, go slower.'] : []),
    ...(isCompact ? [COMPACT_LEGEND] : []),
    ...(shown.some(hasRule) ? [isCompact ? COMPACT_RULE : USUAL_RULE] : []),
    ...(shown.some(isOpen) ? [OPEN_SETS] : []),
    shown.some(hasBouts) ? WRITE_BOUTS : WRITE,
    ...(machineDown === null || isCompact ? [] : [`Machine down: ${machineDown}`]),
    ...cutLines(cut, all.length - shown.length),
    ...(isCompact
      ? compactSessions(shown, keeps)
      : shown.flatMap((document, place) => sessionLines(document, keeps, saidBefore(place)))),
    '',
  ].join('\n');
};

const hasBouts = ({ card }: IssuedCard): boolean => card.items.some(({ kind }) => kind === 'bouts');

const WRITE = 'Write for each set: repetitions, load, RPE; discomfort 0-10 with site and side; session RPE; minutes.';
const WRITE_BOUTS =
  'Write sets: repetitions, load, RPE; bouts: done, min, pulse, W or km/h, harness, RPE; discomfort 0-10, site, side; session RPE, minutes.';

const hasRule = ({ card }: IssuedCard): boolean => liftsOf(card).some((item) => item.rule !== null);

/** Does a card leave it open how much is done, or have lifts done in turn? */
const isOpen = ({ card }: IssuedCard): boolean =>
  liftsOf(card).some(({ superset, sets }) => superset !== null || sets.some((set) => set.optional || isOpenCount(set)));

const OPEN_SETS =
  '3-4x6-8: the last set and the last repetitions as it goes well; a rule counts only at the most; 6+ goes on while it goes well, write its RPE. In turn: a set of each, then the rest.';

/** What to do when the machine is down, where all sessions say the same of themselves. */
const commonMachineDown = (documents: readonly IssuedCard[]): string | null => {
  const texts = new Set(documents.map(({ card }) => card.machineDown.replaceAll(card.title.toLowerCase(), 'session')));
  const [only] = texts;
  return texts.size === 1 && only ? shortAscii(only) : null;
};

/** What an earlier session of the text has said already is not said again. */
const cuesOf = (documents: readonly IssuedCard[]): ReadonlySet<string> =>
  new Set(documents.flatMap(({ card }) => card.items.map(cuesText)));

/** Names may be long; a head that ate the message would help nobody. */
const LONGEST_NAME = 60;
const short = (text: string): string => {
  const plain = shortAscii(text);
  return plain.length > LONGEST_NAME ? `${plain.slice(0, LONGEST_NAME - 3)}...` : plain;
};

const headLines = (documents: readonly IssuedCard[]): readonly string[] => {
  const [first, last] = [documents[0], documents.at(-1)];
  if (!first || !last) return ['CARDS: none issued.'];
  const by = first.issuedBy.signsFor === null ? '' : ` for ${short(first.issuedBy.signsFor)}`;
  return [
    `CARDS of ${short(first.person.name)}, ${short(first.mission.name)}: ${daySpan(first, last)}.`,
    `${short(first.card.programme.name)}, version ${first.card.programme.number}. Signed by ${short(first.issuedBy.name)}${by}, ${first.issuedAt.slice(0, 16)}Z.`,
  ];
};

const daySpan = (first: IssuedCard, last: IssuedCard): string =>
  shortAscii(
    first === last
      ? `${first.card.missionDay} (${isoOfDay(first.card.day)})`
      : `${first.card.missionDay} (${isoOfDay(first.card.day)}) to ${last.card.missionDay} (${isoOfDay(last.card.day)})`,
  );

const breathingLines = (documents: readonly IssuedCard[]): readonly string[] => [
  ...new Set(documents.map(({ card }) => breathingLine(card.breathing))),
];

const cutLines = (cut: readonly Cut[], missing: number): readonly string[] => {
  if (cut.length === 0) return [];
  const texts = cut.filter((part) => part !== 'sessions');
  return [
    `Cut to fit ${MOST_BYTES} bytes: ${texts.join(', ')} are on the cards only.`,
    ...(missing > 0 ? [`NOT IN THIS TEXT: the last ${missing} of the sessions; ask for them one by one.`] : []),
  ];
};

import { liftsOf } from '#domain/card.ts';
import { isoOfDay } from '#units/day.ts';
import type { IssuedCard } from '#domain/issued-card.ts';
import type { WeekTextWindow } from '#contract/windows/card-window.ts';
import { cuesText, USUAL_RULE, type Keeps } from './item-lines.ts';
import { shortAscii } from './plain-ascii.ts';
import { sessionLines, type Said } from './session-lines.ts';
import { breathingLine, STOP_BOX } from './stop-box.ts';

/** What a slow line takes in one message. ASCII: a character is a byte. */
export const MOST_BYTES = 4096;

type Cut = WeekTextWindow['cut'][number];

/** What is given up, step by step, until the week fits. */
const STEPS: readonly { readonly keeps: Keeps; readonly cut: readonly Cut[] }[] = [
  { keeps: { cues: true, lastTime: true }, cut: [] },
  { keeps: { cues: false, lastTime: true }, cut: ['cues'] },
  { keeps: { cues: false, lastTime: false }, cut: ['cues', 'last time'] },
];

/** One person's cards as plain text: common lines once, then the sessions, never more than one message takes. */
export const weekText = (documents: readonly IssuedCard[]): WeekTextWindow => {
  const inOrder = documents.toSorted((a, b) => a.card.day - b.card.day);
  for (const { keeps, cut } of STEPS) {
    const text = wholeText(inOrder, inOrder, keeps, cut);
    if (text.length <= MOST_BYTES) return { text, bytes: text.length, cut };
  }
  return withFewerSessions(inOrder);
};

/** Nothing that is kept is cut in half: a session stands whole, or the text says that it is missing. */
const withFewerSessions = (inOrder: readonly IssuedCard[]): WeekTextWindow => {
  const cut: readonly Cut[] = ['cues', 'last time', 'sessions'];
  const keeps: Keeps = { cues: false, lastTime: false };
  for (let count = inOrder.length - 1; count >= 0; count -= 1) {
    const text = wholeText(inOrder.slice(0, count), inOrder, keeps, cut);
    if (text.length <= MOST_BYTES) return { text, bytes: text.length, cut };
  }
  throw new RangeError('The common lines alone are longer than a message.');
};

const wholeText = (
  shown: readonly IssuedCard[],
  all: readonly IssuedCard[],
  keeps: Keeps,
  cut: readonly Cut[],
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
    ...(shown.some(({ card }) => liftsOf(card).some((item) => item.rule)) ? [USUAL_RULE] : []),
    'Write for each set: repetitions, load, RPE; discomfort 0-10 with site and side; session RPE; minutes.',
    ...(machineDown === null ? [] : [`Machine down: ${machineDown}`]),
    ...cutLines(cut, all.length - shown.length),
    ...shown.flatMap((document, place) => sessionLines(document, keeps, saidBefore(place))),
    '',
  ].join('\n');
};

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
    `Cut to fit ${MOST_BYTES} bytes: ${texts.join(' and ')} are on the cards only.`,
    ...(missing > 0 ? [`NOT IN THIS TEXT: the last ${missing} of the sessions; ask for them one by one.`] : []),
  ];
};

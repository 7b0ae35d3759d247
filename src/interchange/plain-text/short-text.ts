import { totalMinutes, type Card, type CardItem, type CardLift } from '#domain/card.ts';
import { showPiece } from '#domain/show-piece.ts';
import { shortAscii } from './plain-ascii.ts';
import { shownLoad } from './shown-load.ts';

/** A text message holds so many characters; parts of a longer one lose some to what joins them (GSM 03.38 and 03.40). */
const ONE_MESSAGE = 160;
const PART_OF_MORE = 153;

export interface ShortText {
  readonly text: string;
  /** Text messages that it takes. */
  readonly messages: number;
}

/** One session in as few words as it can be trained from, to be sent by telephone: plain ASCII. */
export const shortText = (card: Card, code: string | null): ShortText => {
  const text = [
    shortAscii(`${card.missionDay} ${card.title}, ${Math.round(totalMinutes(card))} min`),
    ...card.items.map(itemText),
    ...(card.leftOut.length > 0 ? [shortAscii(`Out: ${card.leftOut.map(nameOf).join(', ')}`)] : []),
    'Pain 5+, dizzy, chest pain, numb: stop, tell somebody, call.',
    ...(code === null ? [] : [`Card ${code}`]),
  ].join('\n');
  return { text, messages: text.length <= ONE_MESSAGE ? 1 : Math.ceil(text.length / PART_OF_MORE) };
};

const nameOf = ({ exerciseName }: Card['leftOut'][number]): string => exerciseName.toLowerCase();

/** "1 Box squat 3x8 start 14 kg, RPE 5-6". */
const itemText = (item: CardItem): string => {
  const work = item.kind === 'lift' ? liftText(item) : `${gearOf(item)}${showPiece(item)}`;
  return shortAscii(`${item.place} ${item.exerciseName} ${work}, RPE ${span(item.shouldFeel)}`);
};

/** Gear is worth a word, a floor or an own body is not. */
const gearOf = (item: CardItem): string =>
  item.kind === 'drill' && item.means !== 'no gear' && item.means !== 'body weight' ? `${item.means} ` : '';

const liftText = ({ sets, increment, unit }: CardLift): string => {
  const work = sets.filter(({ kind }) => kind === 'work');
  const sides = new Set(work.map(({ side }) => side)).size;
  const runs = new Map<string, number>();
  for (const { repetitions, load } of work) {
    const text = `${repetitions} ${load.kind === 'start at' ? 'start ' : ''}${shownLoad(load.increments, increment)} ${unit}`;
    runs.set(text, (runs.get(text) ?? 0) + 1);
  }
  return [...runs].map(([text, count]) => `${count / sides}x${text}${sides > 1 ? '/side' : ''}`).join(', ');
};

const span = ([low, high]: readonly [number, number]): string => (low === high ? `${low}` : `${low}-${high}`);

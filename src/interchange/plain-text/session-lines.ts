import { totalMinutes } from '#domain/card.ts';
import { cardCode } from '#domain/card-code.ts';
import type { IssuedCard } from '#domain/issued-card.ts';
import { showMissionDay } from '#domain/mission-day.ts';
import { cuesText, itemLines, type Keeps } from './item-lines.ts';
import { shortAscii } from './plain-ascii.ts';

/** What stands in the text already and is not said again. */
export interface Said {
  readonly cues: ReadonlySet<string>;
  readonly machineDown: boolean;
}

/** One session: its head, its exercises, what to leave out. */
export const sessionLines = (document: IssuedCard, keeps: Keeps, said: Said): readonly string[] => {
  const { card } = document;
  return [
    shortAscii(
      `== ${card.missionDay} ${card.title}${card.deload ? ' (easier week)' : ''}. Code ${cardCode(document.digest)}. ` +
        `${Math.round(totalMinutes(card))} of ${card.blockMinutes} min. Valid until ${validUntil(document)}.`,
    ),
    ...card.items.flatMap((item) => itemLines(item, { ...keeps, cues: keeps.cues && !said.cues.has(cuesText(item)) })),
    ...card.leftOut.map(({ exerciseName, says }) => shortAscii(`Left out: ${exerciseName}: ${says}`)),
    ...(card.shortOfTime.length > 0 ? [`Short of time: leave out ${card.shortOfTime.join(', then ')}.`] : []),
    ...(card.machineDown === '' || said.machineDown ? [] : [shortAscii(`Machine down: ${card.machineDown}`)]),
  ];
};

export const validUntil = ({ mission, validUntil: day }: IssuedCard): string =>
  showMissionDay({ launch: mission.launch, landing: null }, day);

import type { BoutsItem, DrillItem, LiftItem, ProgrammeSet } from '#domain/programme.ts';
import { writeShorthand } from '#domain/shorthand/write-shorthand.ts';
import { only } from '#domain/prescription.ts';
import { showDrillWork, showSeconds as showTime } from '#domain/show-piece.ts';

/** "4 × 6", or "6, 5, 4" where sets differ. */
export const showSets = ({ sets }: Pick<LiftItem, 'sets'>): string => {
  const [first] = sets;
  const areAlike = sets.every(({ repetitions }) => repetitions === first?.repetitions);
  return areAlike && first
    ? `${sets.length} × ${first.repetitions}`
    : sets.map(({ repetitions }) => repetitions).join(', ');
};

/** Where the load comes from, and how hard it is meant to be. */
export const showBasis = (item: Pick<LiftItem, 'basis' | 'reserve' | 'shouldFeel'>): string => {
  const feel = `should feel ${range(item.shouldFeel)}`;
  const reserve = item.reserve === null ? '' : `, ${item.reserve} in reserve`;
  return `${basisWords(item.basis)}${reserve}; ${feel}`;
};

const basisWords = (basis: LiftItem['basis']): string => {
  switch (basis.kind) {
    case 'fraction':
      return `fraction: ${percent(basis.of)} of capacity`;
    case 'from last': {
      const start = basis.start === 'effort' ? 'starts by effort' : `starts at ${percent(basis.start)} of capacity`;
      return `from last: ${start}, then +${basis.rule.add.lb} lb or +${basis.rule.add.kg} kg`;
    }
    case 'effort':
      return `effort: RPE ${range(basis.rpe)}`;
    case 'fixed':
      return `fixed: ${basis.load.text} ${basis.load.unit}`;
  }
};

/** "rest 2 min 30 s; warm-up 50 % × 5, 70 % × 3". */
export const showRest = ({ sets, warmUps }: Pick<LiftItem, 'sets' | 'warmUps'>): string => {
  const rests = [...new Set(sets.map(({ rest }: ProgrammeSet) => rest))].map(showSeconds).join(' or ');
  const warm = warmUps.map(({ of, repetitions }) => `${percent(of)} × ${repetitions}`).join(', ');
  return `rest ${rests}${warm === '' ? '' : `; warm-up ${warm}`}`;
};

const showSeconds = (seconds: number): string => {
  const [minutes, left] = [Math.floor(seconds / 60), seconds % 60];
  return [...(minutes > 0 ? [`${minutes} min`] : []), ...(left > 0 || minutes === 0 ? [`${left} s`] : [])].join(' ');
};

const percent = (part: number): string => `${Number((part * 100).toFixed(1))} %`;
const range = ([low, high]: readonly [number, number]): string => (low === high ? String(low) : `${low} to ${high}`);

/** "4 × 4 min @ 90 % HRR, 3 min easy": bouts that are alike are counted. */
export const showBouts = ({ bouts }: Pick<BoutsItem, 'bouts'>): string => {
  const lines = bouts.map(({ seconds, intensity, easy }) => ({ seconds, intensity, easy: easy > 0 ? easy : null }));
  const runs: { readonly bout: (typeof lines)[number]; count: number }[] = [];
  for (const bout of lines) {
    const last = runs.at(-1);
    if (last && JSON.stringify(last.bout) === JSON.stringify(bout)) last.count += 1;
    else runs.push({ bout, count: 1 });
  }
  return runs.map(({ bout, count }) => writeShorthand({ kind: 'bouts', repeats: only(count), ...bout })).join('; ');
};

/** "3 × 8", "5 × 8 × (7 s on, 3 s off) at 100 % of critical force". */
export const showDrill = ({ sets, target }: Pick<DrillItem, 'sets' | 'target'>): string => {
  const works = sets.map(({ work }) => showDrillWork(work));
  const alike = works.every((work) => work === works[0]);
  const text = alike && works[0] ? `${works.length} × ${works[0]}` : works.join(', ');
  return target ? `${text} at ${percent(target.of)} ${target.kind}` : text;
};

/** What stands around bouts: "5 min warming up, 5 min cooling down". */
export const showAround = ({ warmUpSeconds, coolDownSeconds }: Pick<BoutsItem, 'warmUpSeconds' | 'coolDownSeconds'>) =>
  `${showTime(warmUpSeconds)} warming up, ${showTime(coolDownSeconds)} cooling down`;

export const showFeel = ({ shouldFeel }: { readonly shouldFeel: readonly [number, number] }): string =>
  `should feel ${range(shouldFeel)}`;

import type { BoutsItem, LiftItem, ProgrammeSet } from '#domain/programme.ts';
import { showSeconds as showTime } from '#domain/show-piece.ts';

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

/** What stands around bouts: "5 min warming up, 5 min cooling down". */
export const showAround = ({ warmUpSeconds, coolDownSeconds }: Pick<BoutsItem, 'warmUpSeconds' | 'coolDownSeconds'>) =>
  `${showTime(warmUpSeconds)} warming up, ${showTime(coolDownSeconds)} cooling down`;

export const showFeel = ({ shouldFeel }: { readonly shouldFeel: readonly [number, number] }): string =>
  `should feel ${range(shouldFeel)}`;

import type { ProgrammeItem, ProgrammeSet } from '#domain/programme.ts';

/** "4 × 6", or "6, 5, 4" where sets differ. */
export const showSets = ({ sets }: Pick<ProgrammeItem, 'sets'>): string => {
  const [first] = sets;
  const areAlike = sets.every(({ repetitions }) => repetitions === first?.repetitions);
  return areAlike && first
    ? `${sets.length} × ${first.repetitions}`
    : sets.map(({ repetitions }) => repetitions).join(', ');
};

/** Where the load comes from, and how hard it is meant to be. */
export const showBasis = (item: Pick<ProgrammeItem, 'basis' | 'reserve' | 'shouldFeel'>): string => {
  const feel = `should feel ${range(item.shouldFeel)}`;
  const reserve = item.reserve === null ? '' : `, ${item.reserve} in reserve`;
  return `${basisWords(item.basis)}${reserve}; ${feel}`;
};

const basisWords = (basis: ProgrammeItem['basis']): string => {
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
export const showRest = ({ sets, warmUps }: Pick<ProgrammeItem, 'sets' | 'warmUps'>): string => {
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

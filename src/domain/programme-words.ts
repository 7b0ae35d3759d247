import type { Deload, LiftItem, LoadBasis, ProgrammeItem, ProgrammePhase, RoadEdge, WarmUpSet } from './programme.ts';

/** Parts of a programme in words, where no line of shorthand says them. */

/** "L−180", "flight day 15", "7 days before landing", "R+0". */
const showEdge = ({ from, days }: RoadEdge): string => {
  if (from === 'launch') return days < 0 ? `L−${-days}` : `flight day ${days + 1}`;
  return days < 0 ? `${-days} ${days === -1 ? 'day' : 'days'} before landing` : `R+${days}`;
};

export const showSpan = ({ first, last }: ProgrammePhase['span']): string => {
  if (last) return `${showEdge(first)} to ${showEdge(last)}`;
  const isAfterLanding = first.from === 'landing' && first.days >= 0;
  return isAfterLanding ? `from ${showEdge(first)} on` : `${showEdge(first)} to the day before landing`;
};

export const showDeload = (deload: Deload | null): string => {
  if (deload === null) return 'no lighter weeks';
  const { everyWeeks, fewerSets, loadBy } = deload;
  const sets = fewerSets === 0 ? '' : `${fewerSets} fewer ${fewerSets === 1 ? 'set' : 'sets'}, `;
  return `every ${everyWeeks} weeks lighter: ${sets}${showPercent(1 - loadBy)} less load`;
};

const showPercent = (part: number): string => `${Number((part * 100).toFixed(2))} %`;

const showBand = ([least, most]: readonly [number, number]): string =>
  least === most ? String(least) : `${least} to ${most}`;

/** Where a lift's load comes from. */
export const showBasis = (basis: LoadBasis): string => {
  switch (basis.kind) {
    case 'fraction':
      return 'a fraction of capacity each time';
    case 'from last': {
      const starts = basis.start === 'effort' ? 'found by effort' : 'a fraction of capacity';
      return `${starts} at first, then from last, +${basis.rule.add.lb} lb or +${basis.rule.add.kg} kg`;
    }
    case 'effort':
      return 'by effort each time';
    case 'fixed':
      return 'the same load each time';
  }
};

const showWarmUps = (warmUps: readonly WarmUpSet[]): string =>
  warmUps.length === 0
    ? 'no warm-ups'
    : `warm-ups ${warmUps.map(({ of, repetitions }) => `${showPercent(of)} × ${repetitions}`).join(', ')}`;

const showReserve = ({ reserve }: LiftItem): string =>
  reserve === null ? 'no reserve named' : `${reserve} in reserve`;

const showRests = (sets: readonly { readonly rest: number }[]): string =>
  `rests ${sets.map(({ rest }) => `${rest} s`).join(', ')}`;

/** What stands beside a line, each under its own name: what a difference is made of. */
export const besideTheLine = (item: ProgrammeItem): readonly (readonly [what: string, says: string])[] => [
  ['machine', `on the ${item.machineKind}`],
  ['condition', `for ${item.condition === 'everyone' ? 'everyone' : `those ${showCondition(item.condition)}`}`],
  ['priority', `priority ${item.priority}`],
  ['should feel', `should feel ${showBand(item.shouldFeel)}`],
  ['track', `track “${item.track}”`],
  ...besideOfKind(item),
];

const showCondition = (condition: ProgrammeItem['condition']): string =>
  condition === 'space-walk crew' ? 'who walk in space' : 'before the squat gates';

const besideOfKind = (item: ProgrammeItem): readonly (readonly [string, string])[] => {
  switch (item.kind) {
    case 'lift':
      return [
        ['load', showBasis(item.basis)],
        ['reserve', showReserve(item)],
        ['warm-ups', showWarmUps(item.warmUps)],
        ['leads', item.leading ? 'leads its lift' : 'follows its lift'],
        ['rests', showRests(item.sets)],
      ];
    case 'bouts':
      return [
        ['warm-up', `warm-up ${item.warmUpSeconds} s`],
        ['cool-down', `cool-down ${item.coolDownSeconds} s`],
        ['bouts', item.bouts.map(({ easy }) => `${easy} s easy`).join(', ')],
      ];
    case 'drill':
      return [['rests', showRests(item.sets)]];
  }
};

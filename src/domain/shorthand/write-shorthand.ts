import {
  isOne,
  type BoutIntensity,
  type Prescription,
  type SetGroup,
  type SetIntensity,
  type Span,
} from '../prescription.ts';

/** One line of shorthand that reads back to the same prescription. */
export const writeShorthand = (prescription: Prescription): string =>
  prescription.kind === 'sets' ? setsText(prescription) : boutsText(prescription);

const setsText = ({ superset, groups, tempo, rest }: Extract<Prescription, { kind: 'sets' }>): string =>
  [
    `${superset ? `${superset}: ` : ''}${groups.map(joined).join('')}`,
    ...(tempo ? [`tempo ${tempo.join('-')}`] : []),
    ...(rest === null ? [] : [`rest ${showClock(rest)}`]),
  ].join(', ');

/** Groups that are measured from the one before follow "then", others a comma. */
const joined = (group: SetGroup, place: number): string => {
  const before = place === 0 ? '' : group.intensity?.kind === 'off the top' ? ' then ' : ', ';
  return `${before}${groupText(group)}`;
};

const groupText = (group: SetGroup): string => {
  const { warmUp, top, sets, load, perSide, intensity } = group;
  const leads = load !== null && isOne(sets) && sets.least === 1 && !top && leadsSafely(load);
  const count = leads || top || (isOne(sets) && sets.least === 1) ? '' : `${span(sets)} × `;
  const target = intensity ? intensityText(intensity) : load && !leads ? ` @ ${loadText(load)}` : '';
  return `${warmUp ? 'w ' : ''}${top ? 'top ' : ''}${leads ? `${loadText(load)} × ` : ''}${count}${eachText(group)}${perSide ? '/side' : ''}${target}`;
};

/** A bare small number in front would read as a number of sets. */
const leadsSafely = ({ text, unit }: NonNullable<SetGroup['load']>): boolean =>
  unit !== null || Number(text) >= 21 || text.includes('.');

const loadText = ({ text, unit }: NonNullable<SetGroup['load']>): string => (unit ? `${text} ${unit}` : text);

const eachText = ({ each }: SetGroup): string =>
  each.kind === 'hold' ? `${span(each.seconds)} s` : `${span(each.count)}${each.orMore ? '+' : ''}`;

const intensityText = (intensity: SetIntensity): string => {
  switch (intensity.kind) {
    case 'of maximum':
      return ` @ ${percent(intensity.of)}`;
    case 'in reserve':
      return ` @ ${span(intensity.repetitions)} RIR`;
    case 'RPE':
      return ` @ RPE ${span(intensity.rating)}`;
    case 'off the top':
      return ` −${hundredfold(intensity.by)} %`;
  }
};

const boutsText = ({ repeats, seconds, intensity, easy }: Extract<Prescription, { kind: 'bouts' }>): string => {
  const count = isOne(repeats) && repeats.least === 1 ? '' : `${span(repeats)} × `;
  const target = intensity ? ` @ ${boutIntensityText(intensity)}` : '';
  return `${count}${duration(seconds)}${target}${easy === null ? '' : `, ${duration(easy)} easy`}`;
};

const boutIntensityText = (intensity: BoutIntensity): string => {
  switch (intensity.kind) {
    case 'of heart-rate reserve':
      return `${percent(intensity.of)} HRR`;
    case 'of greatest heart rate':
      return `${percent(intensity.of)} HRmax`;
    case 'of greatest uptake':
      return `${percent(intensity.of)} VO2max`;
    case 'watts':
      return `${span(intensity.watts)} W`;
    case 'RPE':
      return `RPE ${span(intensity.rating)}`;
    case 'all-out':
      return 'all-out';
  }
};

const span = (of: Span): string => (isOne(of) ? String(of.least) : `${of.least}–${of.most}`);

const percent = ({ least, most }: Span): string =>
  least === most ? `${hundredfold(least)} %` : `${hundredfold(least)}–${hundredfold(most)} %`;

/** 0.07 × 100 is 7.000000000000001 in binary; nobody types more than nine digits. */
const hundredfold = (value: number): number => Number((value * 100).toPrecision(9));

const duration = (seconds: number): string => (seconds % 60 === 0 ? `${seconds / 60} min` : `${seconds} s`);

/** "2:30". */
export const showClock = (seconds: number): string =>
  Number.isInteger(seconds) ? `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}` : `${seconds} s`;

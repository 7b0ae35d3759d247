import type { ProgrammePhase } from '#domain/programme.ts';
import { WEEKDAYS } from '../../parts/dates.ts';

const SHORT = 3;

/** Before launch a week is one of the calendar, later it counts from launch or landing. */
export const dayName = (
  { span: { first } }: Pick<ProgrammePhase, 'span'>,
  weekday: number,
  length: 'whole' | 'short' = 'whole',
): string => {
  if (first.from !== 'launch' || first.days >= 0) return length === 'whole' ? `day ${weekday}` : String(weekday);
  const name = WEEKDAYS[weekday - 1] ?? '';
  return length === 'whole' ? name : name.slice(0, SHORT);
};

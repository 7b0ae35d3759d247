import type { Source } from '../formula.ts';
import { COMMON_PRACTICE, OUR_OWN_DESIGN, SCOTT_2023 } from '../sources.ts';
import type { SourcedTable } from '../sourced-table.ts';
import { LOEHR_2015, STUTZ_2019 } from './sources.ts';

/** What a day and a week must keep, and what it should. The numbers are defaults that a person of the trade may edit. */

export interface SchedulingRule {
  readonly id: string;
  /** *Hard*: must hold. *Soft*: costs. *Fact*: what to expect, binding nobody. */
  readonly kind: 'hard' | 'soft' | 'fact';
  readonly about: string;
  readonly says: string;
  /** The number of the rule, where it has one. */
  readonly value: number | null;
  readonly unit: string;
  readonly source: Source;
}

export const SCHEDULING_RULES = {
  record: {
    id: 'scheduling/rules',
    revision: 1,
    title: 'What a schedule must keep, and what it should',
    source: COMMON_PRACTICE,
    restsOn: [STUTZ_2019, SCOTT_2023, LOEHR_2015],
    doesNotKnow:
      'The rules of this mission: protected windows, limits of the cabin and the medical authority’s word on space walks come from outside and win over every line here.',
  },
  columns: [
    { name: 'about', unit: '' },
    { name: 'rule', unit: '' },
    { name: 'kind', unit: '' },
    { name: 'value', unit: '' },
    { name: 'unit', unit: '' },
    { name: 'source', unit: '' },
  ],
  rows: [
    {
      id: 'daily-block',
      kind: 'fact',
      about: 'the day in flight',
      says: 'The block for exercise, with set-up, harness, clean-up and stowage; typically 90 minutes resistive and 60 aerobic, of which 60 to 75 and 35 to 45 are work.',
      value: 150,
      unit: 'min',
      source: COMMON_PRACTICE,
    },
    {
      id: 'weekly-work',
      kind: 'fact',
      about: 'the week in flight',
      says: 'Aerobic and resistive work done in a week, as recent crews did.',
      value: 600,
      unit: 'min',
      source: SCOTT_2023,
    },
    {
      id: 'rest-day',
      kind: 'soft',
      about: 'the week in flight',
      says: 'At least this many days of rest or light work; six or seven days aerobic, five or six resistive.',
      value: 1,
      unit: 'd',
      source: COMMON_PRACTICE,
    },
    {
      id: 'before-flight',
      kind: 'fact',
      about: 'the week before flight',
      says: 'The least before flight: twice two hours or four times one hour. Training sites differ in their equipment.',
      value: 4,
      unit: 'h',
      source: LOEHR_2015,
    },
    {
      id: 'after-landing',
      kind: 'fact',
      about: 'after landing',
      says: 'Reconditioning each day, for 45 days.',
      value: 120,
      unit: 'min',
      source: COMMON_PRACTICE,
    },
    {
      id: 'one-person-a-machine',
      kind: 'hard',
      about: 'machines',
      says: 'One person on a machine; set-up and clean-up lie inside the reservation, and a turnover lies between two.',
      value: 5,
      unit: 'min',
      source: OUR_OWN_DESIGN,
    },
    {
      id: 'protected-window',
      kind: 'hard',
      about: 'machines',
      says: 'No treadmill and no resistive work while vibration is protected, at docking, at thruster firings and while a crew lock is used. Planners give the list.',
      value: null,
      unit: '',
      source: COMMON_PRACTICE,
    },
    {
      id: 'after-meal-easy',
      kind: 'soft',
      about: 'meals',
      says: 'Easy work begins no sooner after a main meal.',
      value: 60,
      unit: 'min',
      source: COMMON_PRACTICE,
    },
    {
      id: 'after-meal-hard',
      kind: 'soft',
      about: 'meals',
      says: 'Hard work and intervals begin no sooner after a main meal.',
      value: 120,
      unit: 'min',
      source: COMMON_PRACTICE,
    },
    {
      id: 'before-sleep',
      kind: 'soft',
      about: 'sleep',
      says: 'Vigorous work ends this long before lights-out; under one hour sleep may suffer, the default leaves two.',
      value: 120,
      unit: 'min',
      source: OUR_OWN_DESIGN,
    },
    {
      id: 'before-sleep-least',
      kind: 'hard',
      about: 'sleep',
      says: 'Vigorous work ends more than this long before lights-out.',
      value: 60,
      unit: 'min',
      source: STUTZ_2019,
    },
    {
      id: 'after-waking',
      kind: 'soft',
      about: 'sleep',
      says: 'Maximal lifts begin no sooner after waking.',
      value: 45,
      unit: 'min',
      source: COMMON_PRACTICE,
    },
    {
      id: 'before-space-walk',
      kind: 'hard',
      about: 'space walks',
      says: 'No new exercise, no heavy pulling and no heavy grip work before a space walk; the day before is light. Two to three days are practice.',
      value: 48,
      unit: 'h',
      source: COMMON_PRACTICE,
    },
    {
      id: 'day-of-space-walk',
      kind: 'hard',
      about: 'space walks',
      says: 'No session on the day of a space walk, unless the decompression protocol holds exercise: the medical authority decides.',
      value: 0,
      unit: 'd',
      source: COMMON_PRACTICE,
    },
    {
      id: 'after-space-walk',
      kind: 'hard',
      about: 'space walks',
      says: 'The day after is light. Grip and pressing resume only after hands, nails, skin and shoulders were looked at; heavy work of the hands no sooner.',
      value: 48,
      unit: 'h',
      source: COMMON_PRACTICE,
    },
    {
      id: 'test-and-space-walk',
      kind: 'hard',
      about: 'maximal tests',
      says: 'No maximal test this close to a space walk.',
      value: 24,
      unit: 'h',
      source: COMMON_PRACTICE,
    },
    {
      id: 'test-after-heavy-day',
      kind: 'soft',
      about: 'maximal tests',
      says: 'No maximal test on the day after heavy work of the same pattern.',
      value: 1,
      unit: 'd',
      source: COMMON_PRACTICE,
    },
    {
      id: 'sprints',
      kind: 'hard',
      about: 'sprints',
      says: 'Short all-out sprints only on the cycle, and none before about this week of flight.',
      value: 4,
      unit: 'week',
      source: COMMON_PRACTICE,
    },
    {
      id: 'time-zones',
      kind: 'soft',
      about: 'travel',
      says: 'After a shift of this many hours or more the first day stays at RPE 5 or less.',
      value: 3,
      unit: 'h',
      source: OUR_OWN_DESIGN,
    },
    {
      id: 'new-machine',
      kind: 'soft',
      about: 'travel',
      says: 'The first session on another machine at this share of the load brought over, at RPE 6 or less; its own ratio is learned from the first two.',
      value: 80,
      unit: '%',
      source: OUR_OWN_DESIGN,
    },
  ],
  cells: ({ about, says, kind, value, unit, source }) => [about, says, kind, value, unit, source.status],
} as const satisfies SourcedTable<SchedulingRule>;

export type SchedulingRuleId = (typeof SCHEDULING_RULES.rows)[number]['id'];

/** A rule by its name. */
export const schedulingRule = (id: SchedulingRuleId): SchedulingRule => {
  const found = SCHEDULING_RULES.rows.find((rule) => rule.id === id);
  if (!found) throw new RangeError(`There is no scheduling rule "${id}".`);
  return found;
};

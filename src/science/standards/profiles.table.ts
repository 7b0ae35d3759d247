import type { Cell, SourcedTable } from '../sourced-table.ts';
import type {
  LimitRule,
  RuleBasis,
  RulePhase,
  RuleQuantity,
  StandardProfile,
  StandardRule,
  WordedRule,
} from './rule.ts';
import { STANDARD_3001_BASELINE, STANDARD_3001_LATER } from './sources.ts';

/** Two profiles. Only what was seen in the document is verified; against the rest no probability is ever given. */

const FROM_MEMORY = 'From memory: hold it against the document.';
const LOW = 'From memory, low confidence: hold it against the document.';
const SEEN = 'The sentence was seen; the section number is inferred from where it stands.';

type Named = Pick<LimitRule, 'id' | 'number' | 'quantity' | 'phase' | 'unit'>;

const named = (id: string, number: string | null, quantity: RuleQuantity, phase: RulePhase, unit: string): Named => ({
  id,
  number,
  quantity,
  phase,
  unit,
});

const atLeast = (
  rule: Named,
  limit: number,
  basis: RuleBasis,
  status: LimitRule['status'] = 'unverified',
  note: string = FROM_MEMORY,
): LimitRule => ({ kind: 'limit', ...rule, comparator: 'at least', limit, basis, status, note });

const inWords = (
  { id, number, quantity, phase }: Named,
  says: string,
  status: WordedRule['status'] = 'unverified',
  note: string = FROM_MEMORY,
): WordedRule => ({ kind: 'words', id, number, quantity, phase, says, status, note });

const UPTAKE = 'mL/(kg min)';

export const BASELINE_2007: StandardProfile = {
  id: 'standard-3001-1-baseline',
  revision: '2007-03-05',
  source: STANDARD_3001_BASELINE,
  rules: [
    atLeast(
      named('aerobic-before', '4.2.3', 'maximal oxygen uptake', 'before flight', UPTAKE),
      1,
      'of the mean for age and sex',
    ),
    atLeast(
      named('aerobic-in-flight', '4.2.3', 'maximal oxygen uptake', 'in flight', UPTAKE),
      0.75,
      'of before flight',
    ),
    atLeast(
      named('aerobic-after', '4.2.3', 'maximal oxygen uptake', 'after flight', UPTAKE),
      1,
      'of the mean for age and sex',
    ),
    inWords(
      named('muscle-before', '4.2.8', 'muscle strength', 'before flight', 'kg'),
      'Strength lies within what is normal for age and sex.',
    ),
    atLeast(named('muscle-in-flight', '4.2.8', 'muscle strength', 'in flight', 'kg'), 0.8, 'of before flight'),
    atLeast(named('bone-before', '4.2.9', 'T score', 'before flight', 'SD'), -1, 'absolute', 'verified', SEEN),
    inWords(
      named('bone-in-flight', '4.2.9', 'T score', 'in flight', 'SD'),
      'Countermeasures aim to keep bone mass within the limit after flight.',
      'verified',
      SEEN,
    ),
    atLeast(named('bone-after', '4.2.9', 'T score', 'after flight', 'SD'), -2, 'absolute', 'verified', SEEN),
    inWords(
      named('bone-rehabilitation', '4.2.9', 'T score', 'after flight', 'SD'),
      'Rehabilitation aims to bring bone mass back to where it was before flight.',
      'verified',
      SEEN,
    ),
  ],
};

export const LATER_REVISIONS: StandardProfile = {
  id: 'standard-3001-1-later',
  revision: 'after 2014, not seen',
  source: STANDARD_3001_LATER,
  rules: [
    atLeast(
      named('aerobic-walk-weightless', null, 'maximal oxygen uptake', 'before flight', UPTAKE),
      32.9,
      'absolute',
      'unverified',
      `${LOW} For space walks in weightlessness.`,
    ),
    atLeast(
      named('aerobic-walk-surface', null, 'maximal oxygen uptake', 'before flight', UPTAKE),
      36.5,
      'absolute',
      'unverified',
      `${LOW} For walks on a surface.`,
    ),
    atLeast(
      named('aerobic-in-flight-later', null, 'maximal oxygen uptake', 'in flight', UPTAKE),
      0.8,
      'of before flight',
      'unverified',
      LOW,
    ),
    atLeast(
      named('aerobic-after-later', null, 'maximal oxygen uptake', 'after flight', UPTAKE),
      1,
      'of before flight',
      'unverified',
      LOW,
    ),
    atLeast(
      named('deadlift-before', null, 'deadlift', 'before flight', 'kg'),
      1.3,
      'of body weight',
      'unverified',
      LOW,
    ),
    atLeast(
      named('bench-press-before', null, 'bench press', 'before flight', 'kg'),
      0.7,
      'of body weight',
      'unverified',
      LOW,
    ),
    atLeast(
      named('muscle-in-flight-later', null, 'muscle strength', 'in flight', 'kg'),
      0.8,
      'of before flight',
      'unverified',
      LOW,
    ),
    inWords(
      named('bone-before-later', null, 'T score', 'before flight', 'SD'),
      'T and Z scores of hip and spine agree with people of the same age.',
      'unverified',
      LOW,
    ),
    ...(['in flight', 'after flight'] as const).flatMap((phase) => [
      atLeast(
        named(`hip-and-spine-${phase.replace(' ', '-')}`, null, 'density of hip and spine', phase, 'g/cm²'),
        0.95,
        'of before flight',
        'unverified',
        LOW,
      ),
      atLeast(
        named(`femoral-neck-${phase.replace(' ', '-')}`, null, 'density of the femoral neck', phase, 'g/cm²'),
        0.9,
        'of before flight',
        'unverified',
        LOW,
      ),
    ]),
  ],
};

export const STANDARD_PROFILES: readonly StandardProfile[] = [BASELINE_2007, LATER_REVISIONS];

const cellsOf = (rule: StandardRule): readonly Cell[] => [
  rule.number,
  rule.quantity,
  rule.phase,
  rule.kind === 'limit' ? rule.comparator : rule.says,
  rule.kind === 'limit' ? rule.limit : null,
  rule.kind === 'limit' ? (rule.basis === 'absolute' ? rule.unit : rule.basis) : null,
  rule.status,
  rule.note,
];

const tableOf = (profile: StandardProfile, title: string, doesNotKnow: string): SourcedTable<StandardRule> => ({
  record: { id: `standards/${profile.id}`, revision: 1, title, source: profile.source, doesNotKnow },
  columns: ['section', 'quantity', 'phase', 'rule', 'limit', 'counted in', 'status', 'note'].map((name) => ({
    name,
    unit: '',
  })),
  rows: profile.rules,
  cells: cellsOf,
});

export const BASELINE_TABLE = tableOf(
  BASELINE_2007,
  'Standard 3001, volume 1, baseline issue of 2007',
  'Whether a mission is flown under this issue. A person meets or does not meet a rule; what follows from it a physician decides.',
);
export const LATER_TABLE = tableOf(
  LATER_REVISIONS,
  'Standard 3001, volume 1, later revisions, from memory',
  'Whether any of these numbers stands in the document: none was seen, so none is judged as if it did. A physician decides.',
);

import { showRange } from '../asked-sets.ts';
import type { DrillWork, HandTarget } from '../programme.ts';
import { showClock } from '../shorthand/write-shorthand.ts';
import type { WrittenDrill } from './drill-line.ts';

/** "3 × 30 s, rest 1:00", "3 × 6 × 7 s on, 3 s off @ 40 % critical force", "10, 8, 6/side". */
export const writeDrill = ({ work, target, rest }: WrittenDrill, perSide: boolean): string => {
  const groups = runsOf(work)
    .map(([first, count]) => `${count > 1 || first.kind === 'pulses' ? `${count} × ` : ''}${workText(first)}`)
    .join(', ');
  return `${groups}${perSide ? '/side' : ''}${target ? ` @ ${targetText(target)}` : ''}${rest === null ? '' : `, rest ${showClock(rest)}`}`;
};

const runsOf = (work: readonly DrillWork[]): readonly (readonly [DrillWork, number])[] => {
  const runs: [DrillWork, number][] = [];
  for (const each of work) {
    const run = runs.at(-1);
    if (run && JSON.stringify(run[0]) === JSON.stringify(each)) run[1] += 1;
    else runs.push([each, 1]);
  }
  return runs;
};

const workText = (work: DrillWork): string => {
  switch (work.kind) {
    case 'repetitions':
      return showRange(work.count, work.most);
    case 'hold':
      return `${showRange(work.seconds, work.most)} s`;
    case 'pulses':
      return `${work.count} × ${work.on} s on, ${work.off} s off`;
  }
};

const targetText = ({ kind, of }: HandTarget): string =>
  `${Number((of * 100).toPrecision(9))} % ${kind === 'of critical force' ? 'critical force' : 'greatest grip'}`;

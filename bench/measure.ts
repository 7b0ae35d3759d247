import { cpus } from 'node:os';

/** One thing measured: the median of its runs, and what is aimed at. */
export interface Measured {
  readonly name: string;
  readonly medianMilliseconds: number;
  readonly fastestMilliseconds: number;
  readonly runs: number;
  readonly aimMilliseconds?: number;
}

/** How many times the first takes as long as the second, both measured turn by turn in one process. */
export interface Ratio {
  readonly name: string;
  readonly ratio: number;
  readonly first: Measured;
  readonly second: Measured;
}

export interface MeasureOptions {
  /** Runs before counting begins, so that the engine has compiled what it will compile. */
  readonly warmUp?: number;
  readonly runs?: number;
  readonly aimMilliseconds?: number;
}

type Work = () => unknown;

const WARM_UP = 3;
const RUNS = 15;

const median = (values: readonly number[]): number => {
  const inOrder = [...values].sort((a, b) => a - b);
  const middle = inOrder.length >> 1;
  const upper = inOrder[middle] ?? Number.NaN;
  return inOrder.length % 2 === 1 ? upper : ((inOrder[middle - 1] ?? Number.NaN) + upper) / 2;
};

const timeOf = async (work: Work): Promise<number> => {
  const started = performance.now();
  await work();
  return performance.now() - started;
};

const summary = (name: string, times: readonly number[], { aimMilliseconds }: MeasureOptions): Measured => ({
  name,
  medianMilliseconds: median(times),
  fastestMilliseconds: Math.min(...times),
  runs: times.length,
  ...(aimMilliseconds === undefined ? {} : { aimMilliseconds }),
});

/** Times works turn by turn, so that what else the machine does falls on all of them alike. */
const timesOf = async (works: readonly Work[], { warmUp = WARM_UP, runs = RUNS }: MeasureOptions) => {
  const times = works.map((): number[] => []);
  for (let run = -warmUp; run < runs; run += 1)
    for (const [place, work] of works.entries()) {
      const taken = await timeOf(work);
      if (run >= 0) times[place]?.push(taken);
    }
  return times;
};

/** The median time of a piece of work after a warm-up. */
export const measure = async (name: string, work: Work, options: MeasureOptions = {}): Promise<Measured> => {
  const [times = []] = await timesOf([work], options);
  return summary(name, times, options);
};

/** Two ways of doing the same, and the ratio of their medians. */
export const compare = async (
  name: string,
  first: { readonly name: string; readonly work: Work },
  second: { readonly name: string; readonly work: Work },
  options: MeasureOptions = {},
): Promise<Ratio> => {
  const [firstTimes = [], secondTimes = []] = await timesOf([first.work, second.work], options);
  return ratioOf(name, summary(first.name, firstTimes, options), summary(second.name, secondTimes, options));
};

/** A ratio of two measurements, one of which may come from another program measured in the same run. */
export const ratioOf = (name: string, first: Measured, second: Measured): Ratio => ({
  name,
  ratio: first.medianMilliseconds / second.medianMilliseconds,
  first,
  second,
});

/** A measurement taken by other means, as times in milliseconds. */
export const measured = (name: string, times: readonly number[], options: MeasureOptions = {}): Measured =>
  summary(name, times, options);

const isRatio = (result: Measured | Ratio): result is Ratio => 'ratio' in result;

const milliseconds = (value: number): string => `${value.toPrecision(3)} ms`;

const rowOf = (result: Measured): string => {
  const aim = result.aimMilliseconds === undefined ? '' : `aim ${milliseconds(result.aimMilliseconds)}`;
  const times = `${milliseconds(result.medianMilliseconds).padStart(11)} ${milliseconds(result.fastestMilliseconds).padStart(11)}`;
  return `  ${result.name.padEnd(58)} ${times} ${String(result.runs).padStart(5)}   ${aim}`.trimEnd();
};

const rowsOf = (result: Measured | Ratio): readonly string[] =>
  isRatio(result)
    ? [
        rowOf(result.first),
        rowOf(result.second),
        `  ${result.name.padEnd(58)} ${result.ratio.toPrecision(3).padStart(8)} ×`,
      ]
    : [rowOf(result)];

/** Prints results as a table: median, fastest, number of runs, and the aim where there is one. */
export const present = (title: string, results: readonly (Measured | Ratio)[]): void => {
  const machine = `Node ${process.versions.node}, ${cpus()[0]?.model.trim() ?? 'unknown processor'}`;
  console.log(`${title} (${machine})`);
  console.log(`  ${''.padEnd(58)} ${'median'.padStart(11)} ${'fastest'.padStart(11)} ${'runs'.padStart(5)}`);
  for (const row of results.flatMap(rowsOf)) console.log(row);
};

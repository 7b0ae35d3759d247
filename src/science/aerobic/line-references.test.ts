import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { ownHeartRateAtPower, ownPowerForFraction } from './personal-lines.ts';
import { sdOf, valueOf } from './read-estimate.ts';
import { stagedEstimate } from './staged-estimate.ts';
import { lineOfLeastSquares, lineSd, onLine, readingSd, whereOnLine } from './line-through-stages.ts';

/** Lines through stages against R and against statsmodels and SciPy, which share no code with each other or with this. */

interface Reading {
  readonly x: readonly number[];
  readonly y: readonly number[];
  readonly intercept: number;
  readonly slope: number;
  readonly residualSd: number;
  readonly at: readonly number[];
  readonly fit: readonly number[];
  readonly lineSd: readonly number[];
  readonly readingSd: readonly number[];
}

interface ByR extends Reading {
  readonly rateSd: number;
  readonly totalSd: readonly number[];
  readonly value: number;
  readonly place: number;
  readonly placeSd: number;
}

interface ByPython extends Reading {
  readonly slopeByScipy: number;
  readonly rate: number;
  readonly rateSd: number;
  readonly simulatedSd: number;
}

interface Fixture<Line> {
  readonly made: Readonly<Record<string, string | number>>;
  readonly lines: readonly Line[];
}

const read = <Line>(name: string): Fixture<Line> =>
  // Written by the script that stands beside the file.
  JSON.parse(readFileSync(join(import.meta.dirname, '../../../test/fixtures/science', name), 'utf8')) as Fixture<Line>;

const r = read<ByR>('aerobic-lines-r.json');
const python = read<ByPython>('aerobic-lines-python.json');

/** Doubles on both sides; a residual of a line that nearly fits loses some of their digits. */
const WITHIN = 1e-10;

/** How far two numbers lie apart, relative to the reference or to one. */
const apart = (ours: number, theirs: number | undefined): number =>
  Math.abs(ours - (theirs ?? Number.NaN)) / Math.max(1, Math.abs(theirs ?? Number.NaN));

const lineOf = ({ x, y }: Reading) => {
  const line = lineOfLeastSquares(x.map((each, place) => ({ x: each, y: y[place] ?? Number.NaN })));
  if (line.kind === 'refused') throw new Error(line.reason);
  return line;
};

const named = <Line extends Reading>({ lines }: Fixture<Line>) =>
  lines.map((line, place) => [`line ${place + 1} of ${line.x.length} stages`, line] as const);

test('both references say what made them', () => {
  expect(Object.keys(r.made)).toEqual(expect.arrayContaining(['by', 'seed', 'r']));
  expect(Object.keys(python.made)).toEqual(expect.arrayContaining(['by', 'seed', 'scipy', 'statsmodels']));
  expect(r.lines.length).toBeGreaterThan(10);
});

test.each([...named(r), ...named(python)])('%s is as the library has it', (_, theirs) => {
  const ours = lineOf(theirs);
  expect(apart(ours.slope, theirs.slope)).toBeLessThan(WITHIN);
  expect(apart(ours.intercept, theirs.intercept)).toBeLessThan(WITHIN);
  expect(apart(ours.residualSd, theirs.residualSd)).toBeLessThan(WITHIN);
  for (const [place, at] of theirs.at.entries()) {
    expect(apart(onLine(ours, at), theirs.fit[place])).toBeLessThan(WITHIN);
    expect(apart(lineSd(ours, at), theirs.lineSd[place])).toBeLessThan(WITHIN);
    expect(apart(readingSd(ours, at), theirs.readingSd[place])).toBeLessThan(WITHIN);
  }
});

test.each(named(r))('%s is read backwards as the delta method of R has it', (_, theirs) => {
  const { x, sd } = whereOnLine(lineOf(theirs), theirs.value);
  expect(apart(x, theirs.place)).toBeLessThan(WITHIN);
  expect(apart(sd, theirs.placeSd)).toBeLessThan(WITHIN);
});

test.each(named(python))('%s has the slope of SciPy', (_, theirs) => {
  expect(apart(lineOf(theirs).slope, theirs.slopeByScipy)).toBeLessThan(WITHIN);
});

const stagesOf = ({ x, y }: Reading) => x.map((heartRate, place) => ({ heartRate, uptake: y[place] ?? Number.NaN }));

test.each(named(r).filter(([, { x }]) => Math.max(...x) < 178))('%s gives the maximal uptake of R', (_, theirs) => {
  const place = theirs.at.indexOf(178);
  const estimate = stagedEstimate(stagesOf(theirs), { value: 178, sd: theirs.rateSd });
  expect(apart(valueOf(estimate), theirs.fit[place])).toBeLessThan(WITHIN);
  expect(apart(sdOf(estimate), theirs.totalSd[place])).toBeLessThan(WITHIN);
});

test.each(named(python))('%s spreads as 400 000 draws do', (_, theirs) => {
  const estimate = stagedEstimate(stagesOf(theirs), { value: theirs.rate, sd: theirs.rateSd });
  // The standard deviation of so many normal draws is itself sure to about 0.11 %; four of that.
  expect(Math.abs(sdOf(estimate) / theirs.simulatedSd - 1)).toBeLessThan(0.0045);
});

test.each(named(r).filter(([, { at }]) => at.includes(260)))('%s gives the heart rate of R at a power', (_, theirs) => {
  const stages = theirs.x.map((power, place) => ({ power, heartRate: theirs.y[place] ?? Number.NaN }));
  for (const [place, at] of theirs.at.entries()) {
    const estimate = ownHeartRateAtPower(stages, at);
    expect(apart(valueOf(estimate), theirs.fit[place])).toBeLessThan(WITHIN);
    expect(apart(sdOf(estimate), theirs.readingSd[place])).toBeLessThan(WITHIN);
  }
});

test.each(named(r).filter(([, { at }]) => at.includes(190)))('%s gives the power of R for an uptake', (_, theirs) => {
  // Any rising line will do: here the first column stands for watts, the second for uptakes.
  const stages = theirs.x.map((power, place) => ({ power, uptake: theirs.y[place] ?? Number.NaN }));
  const estimate = ownPowerForFraction(stages, theirs.value / 60, 60);
  expect(apart(valueOf(estimate), theirs.place)).toBeLessThan(WITHIN);
  expect(apart(sdOf(estimate), theirs.placeSd)).toBeLessThan(WITHIN);
});

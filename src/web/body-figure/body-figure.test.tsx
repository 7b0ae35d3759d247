import { renderToStaticMarkup } from 'react-dom/server';
import { expect, test } from 'vitest';
import type { LevelLoad } from '#contract/windows/crossing-window.ts';
import { BodyFigure } from './body-figure.tsx';

const levels: readonly LevelLoad[] = [
  { level: 'shoulders', onGround: 77, inFlight: 122, change: 0.58 },
  { level: 'knees', onGround: 140, inFlight: 122, change: -0.13 },
  { level: 'feet', onGround: 148, inFlight: 122, change: -0.18 },
];

const drawn = (
  shareModel: 'back squat, parallel' | 'deadlift' | 'heel raise' | 'press or row',
  stature: number | null,
) =>
  renderToStaticMarkup(
    <BodyFigure
      sex="female"
      stature={stature}
      shareModel={shareModel}
      levels={levels}
      bar="bar 77 kg"
      machine="machine 270 lb, 122 kg"
    />,
  );

test('both panels say their loads to somebody who cannot see them', () => {
  const markup = drawn('back squat, parallel', 1.72);
  expect(markup).toContain('<title>In 1 g: bar 77 kg. shoulders 77 kg, knees 140 kg, feet 148 kg</title>');
  expect(markup).toContain(
    '<title>In 0 g: machine 270 lb, 122 kg. shoulders 122 kg, knees 122 kg, feet 122 kg</title>',
  );
});

test('the figure grows with stature', () => {
  const highest = (markup: string): number =>
    Math.min(...[...markup.matchAll(/<ellipse[^>]* cy="([\d.]+)"/g)].map(([, y]) => Number(y)));
  expect(highest(drawn('deadlift', 1.9))).toBeLessThan(highest(drawn('deadlift', 1.6)));
});

test.each(['back squat, parallel', 'deadlift', 'heel raise'] as const)('%s stays inside its panel', (model) => {
  const spots = [...drawn(model, 1.95).matchAll(/(-?[\d.]+),(-?[\d.]+)/g)].filter(([text]) => !text.endsWith('.'));
  for (const [, x, y] of spots) {
    expect(Number(x)).toBeGreaterThanOrEqual(0);
    expect(Number(y)).toBeGreaterThanOrEqual(0);
  }
});

test('a stature that nobody measured is said', () => {
  expect(drawn('deadlift', null)).toContain('no stature is recorded');
});

test('a lift of the arms is not drawn, with the reason', () => {
  const markup = drawn('press or row', 1.72);
  expect(markup).not.toContain('<svg');
  expect(markup).toContain('this lift moves only the arms');
});

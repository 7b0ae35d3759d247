import { renderToStaticMarkup } from 'react-dom/server';
import { expect, test } from 'vitest';
import { Equation, MathText } from './math-text.tsx';
import { Prose } from './prose.tsx';

test('an equation is MathML that is read aloud and copied in its readable form', () => {
  const markup = renderToStaticMarkup(<MathText text="a / b_max" />);
  expect(markup).toContain('alttext="a / b_max"');
  expect(markup).toContain('aria-label="a / b_max"');
  expect(markup).toContain('<mfrac>');
  expect(markup).toContain('<msub><mi>b</mi>');
});

test('a long equation is several pieces, between which a line may break', () => {
  const long = 'y = a_first + b_second · c_third where a_first ≤ b_second, and c_third ≥ 2';
  const pieces = renderToStaticMarkup(<Equation text={long} />).match(/<math/g);
  expect(pieces?.length).toBeGreaterThan(1);
});

test('symbols in a sentence are set, and the words around them stay', () => {
  const markup = renderToStaticMarkup(<Prose text="At n_eff under 2 it is low; VO2_max too." />);
  expect(markup.match(/<math/g)).toHaveLength(2);
  expect(markup.startsWith('At <math')).toBe(true);
  expect(renderToStaticMarkup(<Prose text="No symbol here." />)).toBe('No symbol here.');
});

test('a sign after an equals sign belongs to its number', () => {
  expect(renderToStaticMarkup(<MathText text="z = −3" />)).toContain('form="prefix"');
  expect(renderToStaticMarkup(<MathText text="z = 5 − 3" />)).not.toContain('form="prefix"');
});

import type { BreathingRule } from '#domain/fact.ts';
import styles from './card.module.css';

const BREATHING: Readonly<Record<BreathingRule, string>> = {
  'exhale through the hard part': 'Breathe out through the hard part.',
  'brief brace on heavy sets': 'A brief brace on heavy sets only; else breathe out through the hard part.',
  'no straining at all': 'No straining at all: breathe throughout.',
};

/** The heaviest thing on the page (common practice). */
export const StopBox = ({ breathing }: { readonly breathing: BreathingRule }) => (
  <section className={styles['stop']} aria-label="When to stop">
    <p>
      <strong>Stop</strong> for chest discomfort, faintness, numbness or weakness, sudden, spreading or night pain, or
      pain of 7 or more.{' '}
      <strong>Tell a crewmate; use the on-board medical procedure; report at the next contact.</strong>
    </p>
    <p>Pain 5–6: stop that exercise. Pain 3–4: hold the load. {BREATHING[breathing]}</p>
  </section>
);

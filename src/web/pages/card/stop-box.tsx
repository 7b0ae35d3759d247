import type { BreathingRule } from '#domain/fact.ts';
import { BREATHING, STOP_RULE } from '#domain/stop-rule.ts';
import styles from './card.module.css';

const sentence = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;

/** The heaviest thing on the page. */
export const StopBox = ({ breathing }: { readonly breathing: BreathingRule }) => (
  <section className={styles['stop']} aria-label="When to stop">
    <p>
      <strong>Stop</strong> for {STOP_RULE.signs}. <strong>{sentence(STOP_RULE.thenDo)}</strong>
    </p>
    <p>
      {STOP_RULE.lesserPain} {BREATHING[breathing]}
    </p>
  </section>
);

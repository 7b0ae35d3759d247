import { useState } from 'react';
import type { FormulaCheck } from '#science/check.ts';
import type { AnyFormula } from '#science/formula.ts';
import { MathText } from '../equation/math-text.tsx';
import { shownNumber, shownRange, shownUnit } from '../shown-number.ts';
import { tried } from './tried.ts';
import styles from './try-it.module.css';

interface TryItProps {
  readonly formula: AnyFormula;
  /** A printed example to begin with. */
  readonly example?: FormulaCheck;
}

/** A formula to be tried: out of the valid range it is computed and flagged, out of the possible one refused. */
export function TryIt({ formula, example }: TryItProps) {
  const [isOpen, open] = useState(false);
  return (
    <details onToggle={(event) => open(event.currentTarget.open)}>
      <summary>Type values and see what comes out</summary>
      {isOpen && <TryForm formula={formula} {...(example ? { example } : {})} />}
    </details>
  );
}

function TryForm({ formula, example }: TryItProps) {
  const { id, inputs } = formula.record;
  const [texts, setTexts] = useState<readonly string[]>(() =>
    inputs.map(({ valid: [low, high] }, place) => String(example?.given[place] ?? (low + high) / 2)),
  );
  return (
    <form onSubmit={(event) => event.preventDefault()}>
      <div className={styles['fields']}>
        {inputs.map(({ name, symbol, unit, valid }, place) => (
          <label key={place}>
            <span>
              <MathText text={symbol} /> {name}
            </span>
            <span className={styles['line']}>
              <input
                value={texts[place] ?? ''}
                inputMode="decimal"
                autoComplete="off"
                aria-describedby={`${id}-outcome`}
                onChange={(event) => setTexts(texts.with(place, event.target.value))}
              />
              {shownUnit(unit)}
            </span>
            <span className="soft">valid {shownRange(valid)}</span>
          </label>
        ))}
      </div>
      <Outcome formula={formula} texts={texts} />
    </form>
  );
}

function Outcome({ formula, texts }: { readonly formula: AnyFormula; readonly texts: readonly string[] }) {
  const { id, output } = formula.record;
  const met = tried(formula, texts);
  return (
    <output className={styles['outcome']} id={`${id}-outcome`}>
      {met.kind === 'value' ? (
        <>
          <span className={styles['value']}>
            <MathText text={output.symbol} /> = {shownNumber(met.value)} {shownUnit(output.unit)}
          </span>
          {met.cautions.map((caution) => (
            <span key={caution} className={styles['caution']}>
              <b>Flagged.</b> {caution}
            </span>
          ))}
        </>
      ) : (
        met.reasons.map((reason) => (
          <span key={reason} className={styles['refused']}>
            <b>Refused.</b> {reason}
          </span>
        ))
      )}
    </output>
  );
}

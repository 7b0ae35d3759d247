import type { ReMakeWindow } from '#contract/windows/re-make-window.ts';
import type { ReMaking } from './use-re-making.ts';
import styles from './re-make.module.css';

/** What there is to train with: ticked as entered for the place, changed as the telephone says. */
export const GearList = ({ start, making }: { readonly start: ReMakeWindow; readonly making: ReMaking }) => (
  <fieldset className={styles['gear']}>
    <legend>What is there{start.site ? ` (entered for ${start.site})` : ''}</legend>
    {start.gear.map(({ kind, name }) => (
      <label key={kind} title={name ?? undefined}>
        <input type="checkbox" checked={making.here.has(kind)} onChange={() => making.toggle(kind)} /> {kind}
      </label>
    ))}
  </fieldset>
);

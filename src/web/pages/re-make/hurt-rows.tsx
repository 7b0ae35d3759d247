import type { BodySite } from '#domain/catalogue.ts';
import { Button } from '../../parts/button.tsx';
import { nextHurt, type TypedHurt } from './typed-hurt.ts';
import styles from './re-make.module.css';

interface HurtRowsProps {
  readonly sites: readonly BodySite[];
  readonly hurts: readonly TypedHurt[];
  readonly onChange: (hurts: readonly TypedHurt[]) => void;
}

/** Where it hurts, and how much: 5 or more leaves out whatever loads it, 7 or more the session; a house may be stricter. */
export const HurtRows = ({ sites, hurts, onChange }: HurtRowsProps) => {
  const change = (changed: TypedHurt): void =>
    onChange(hurts.map((each) => (each.key === changed.key ? changed : each)));
  return (
    <fieldset className={styles['hurts']}>
      <legend>What hurts, 0 to 10</legend>
      {hurts.map((hurt) => (
        <HurtRow
          key={hurt.key}
          hurt={hurt}
          sites={sites}
          onChange={change}
          onRemove={() => onChange(hurts.filter((each) => each.key !== hurt.key))}
        />
      ))}
      <Button kind="link" onPress={() => onChange([...hurts, nextHurt(hurts, sites[0] ?? 'neck')])}>
        {hurts.length === 0 ? 'Something hurts' : 'Something else hurts'}
      </Button>
      {hurts.length > 0 ? (
        <p className="soft">
          From 5 at the latest nothing that loads it is trained, from 7 at the latest there is no session. It is
          recorded.
        </p>
      ) : null}
    </fieldset>
  );
};

interface HurtRowProps {
  readonly hurt: TypedHurt;
  readonly sites: readonly BodySite[];
  readonly onChange: (hurt: TypedHurt) => void;
  readonly onRemove: () => void;
}

const SIDES = ['', 'left', 'right'] as const;

const HurtRow = ({ hurt, sites, onChange, onRemove }: HurtRowProps) => (
  <p className={styles['hurt']}>
    <select
      aria-label="Where it hurts"
      value={hurt.site}
      onChange={({ target }) => onChange({ ...hurt, site: sites.find((site) => site === target.value) ?? hurt.site })}
    >
      {sites.map((site) => (
        <option key={site}>{site}</option>
      ))}
    </select>
    <select
      aria-label="Side"
      value={hurt.side}
      onChange={({ target }) => onChange({ ...hurt, side: SIDES.find((side) => side === target.value) ?? '' })}
    >
      <option value="">both or middle</option>
      <option>left</option>
      <option>right</option>
    </select>
    <input
      aria-label="How much, 0 to 10"
      inputMode="numeric"
      autoComplete="off"
      placeholder="0–10"
      value={hurt.score}
      onChange={({ target }) => onChange({ ...hurt, score: target.value })}
    />
    <Button kind="link" label={`Take out ${hurt.site}`} onPress={onRemove}>
      take out
    </Button>
  </p>
);

import type { Raise } from '#domain/raise.ts';
import type { Problem } from '#contract/problem.ts';
import { Field } from './field.tsx';
import { Figure } from './figure.tsx';
import { showChange, showFraction, showIncrements } from './loads.ts';
import { Table } from './table.tsx';
import styles from './raise-table.module.css';

export interface RaiseTableProps {
  readonly raises: readonly Raise[];
  /** Typed reasons by track, where they can be typed. */
  readonly reasons?: Readonly<Record<string, string>>;
  readonly onReason?: (track: string, reason: string) => void;
  readonly problems?: readonly Problem[];
}

const fractionText = ({ trueFraction }: Raise): string => {
  if (!trueFraction) return '–';
  const { was, is } = trueFraction;
  return was === null ? showFraction(is) : `${showFraction(was)}\u00a0→\u00a0${showFraction(is)}`;
};

const Row = ({
  raise,
  reasons,
  onReason,
  problems = [],
}: Omit<RaiseTableProps, 'raises'> & { readonly raise: Raise }) => {
  const { track, exerciseName, from, to, unit, increment, atTheBar, cause, cautions, needsReason } = raise;
  return (
    <tr>
      <th scope="row">
        {exerciseName}
        <div className="soft small">{cause}</div>
      </th>
      <td className={styles['change']}>
        {from === null ? <span className="soft">first </span> : `${showIncrements(from, increment)} → `}
        <strong>
          <Figure value={showIncrements(to, increment)} unit={unit} />
        </strong>
      </td>
      <td className="number">{atTheBar === null ? '–' : showChange(atTheBar)}</td>
      <td className="number">{fractionText(raise)}</td>
      <td>
        {cautions.map((caution) => (
          <p className={styles['caution']} key={caution}>
            {caution}
          </p>
        ))}
        {needsReason && onReason ? (
          <Field
            label="Reason for more than the step"
            name={`reasons.${track}`}
            value={reasons?.[track] ?? ''}
            onChange={(reason) => onReason(track, reason)}
            problems={problems}
            isRequired
          />
        ) : null}
      </td>
    </tr>
  );
};

/** Every load that goes up, as a signer must see it. */
export const RaiseTable = ({ raises, ...rest }: RaiseTableProps) => (
  <Table caption={raises.length === 1 ? 'One load goes up' : `${raises.length} loads go up`}>
    <thead>
      <tr>
        <th scope="col">lift</th>
        <th scope="col">was → is</th>
        <th scope="col" className="number">
          at the bar
        </th>
        <th scope="col" className="number">
          of capacity
        </th>
        <th scope="col">before you sign</th>
      </tr>
    </thead>
    <tbody>
      {raises.map((raise) => (
        <Row key={raise.track} raise={raise} {...rest} />
      ))}
    </tbody>
  </Table>
);

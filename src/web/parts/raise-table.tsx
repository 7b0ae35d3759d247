import type { ReactNode } from 'react';
import type { Raise } from '#domain/raise.ts';
import type { Problem } from '#contract/problem.ts';
import { Field } from './field.tsx';
import { Figure } from './figure.tsx';
import { kilogramsOfForce, showChange, showFraction, showIncrements } from './loads.ts';
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

/** Watts, speed and force have no bar to stand against: what goes up is told of the setting itself. */
const changeText = ({ atTheBar, from, to, unit }: Raise): ReactNode => {
  if (atTheBar !== null) return showChange(atTheBar);
  const isLoad = unit === 'kg' || unit === 'lb';
  if (from === null || from === 0) return '–';
  return (
    <>
      {showChange(to / from - 1)}
      <div className="soft small">{isLoad ? 'of the load' : 'of the setting'}</div>
    </>
  );
};

/** What a dynamometer in kilograms of force would show. */
const besideForce = ({ to, unit, increment }: Raise): ReactNode =>
  unit === 'N' ? <div className="soft small">{kilogramsOfForce(to * Number(increment))} kg of force</div> : null;

const Row = ({
  raise,
  reasons,
  onReason,
  problems = [],
}: Omit<RaiseTableProps, 'raises'> & { readonly raise: Raise }) => {
  const { track, exerciseName, from, to, unit, increment, cause, cautions, needsReason } = raise;
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
        {besideForce(raise)}
      </td>
      <td className="number">{changeText(raise)}</td>
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

const captionOf = (raises: readonly Raise[]): string => {
  const areLoads = raises.every(({ unit }) => unit === 'kg' || unit === 'lb');
  if (raises.length === 1) return areLoads ? 'One load goes up' : 'One setting goes up';
  return `${raises.length} ${areLoads ? 'loads go up' : 'loads and settings go up'}`;
};

/** Every load that goes up, as a signer must see it. */
export const RaiseTable = ({ raises, ...rest }: RaiseTableProps) => (
  <Table caption={captionOf(raises)}>
    <thead>
      <tr>
        <th scope="col">exercise</th>
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
        <Row key={`${raise.track} ${raise.exerciseName} ${raise.unit}`} raise={raise} {...rest} />
      ))}
    </tbody>
  </Table>
);

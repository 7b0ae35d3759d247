import { useState } from 'react';
import type { CrossingDetail } from '#contract/windows/crossing-window.ts';
import { Button, Dialog, showFraction, WorkingPanel } from '../../parts/parts.ts';
import { useHouse } from '../../windows.ts';
import styles from './crossing-page.module.css';

interface CrossingSumProps {
  readonly detail: CrossingDetail;
  readonly capacity: number | null;
}

/** bar part + added back = target → load; every term opens its working. */
export function CrossingSum({ detail, capacity }: CrossingSumProps) {
  const [isOpen, setOpen] = useState(false);
  const term = { onOpen: () => setOpen(true) };
  return (
    <section aria-label="The sum">
      <h2>
        {detail.name}: {detail.prescription}
      </h2>
      <div className={styles['sum']}>
        <Term value={detail.bar} name="Bar part" {...term}>
          bar part, kg{capacity !== null && `: ${showFraction(detail.bar / capacity)} of ${Math.round(capacity)}`}
        </Term>
        <span className={styles['sign']}>+</span>
        <Term value={detail.added} name="Added back" {...term}>
          added back, kg: {showFraction(detail.added / detail.bodyMass.kilograms)} ×{' '}
          {detail.bodyMass.kilograms.toFixed(1)}
        </Term>
        <span className={styles['sign']}>=</span>
        <Term value={detail.target} name="Target" {...term}>
          target, kg
        </Term>
        <span className={styles['sign']}>→</span>
        <Load detail={detail} {...term} />
      </div>
      <Sentences detail={detail} />
      <Dialog title={`${detail.name}: working`} isOpen={isOpen} onClose={() => setOpen(false)} place="side">
        {detail.workings.length === 0 ? (
          <p>No working is kept: no card with this lift stands ahead.</p>
        ) : (
          detail.workings.map((working, index) => <WorkingPanel key={index} working={working} />)
        )}
      </Dialog>
    </section>
  );
}

interface TermProps {
  readonly value: number;
  readonly name: string;
  readonly onOpen: () => void;
  readonly children: React.ReactNode;
}

function Term({ value, name, onOpen, children }: TermProps) {
  return (
    <div className={styles['term']}>
      <button
        type="button"
        className={styles['big']}
        onClick={onOpen}
        aria-label={`${name} ${shown(value)} kg: show the working`}
      >
        {shown(value)}
      </button>
      <span className="soft small">{children}</span>
    </div>
  );
}

function Load({ detail, onOpen }: { readonly detail: CrossingDetail; readonly onOpen: () => void }) {
  return (
    <div className={styles['term']}>
      <strong className={styles['load']}>{detail.load?.text ?? 'no load'}</strong>
      <span className="soft small">
        {detail.load ? `set on the machine, ${shown(detail.load.kilograms)} kg ` : 'nothing can be set '}
        <Button kind="link" onPress={onOpen}>
          working
        </Button>
      </span>
    </div>
  );
}

function Sentences({ detail }: { readonly detail: CrossingDetail }) {
  const perStep = useHouse().data?.policies.sessionsPerStep;
  const { kilograms } = detail.bodyMass;
  const step = (place: number): string => `step ${place + 1} of ${detail.steps}`;
  return (
    <>
      <p className="soft">
        Two ramps: effort {showFraction(detail.effort)} of the full effort, {step(detail.effortStep)}; body weight{' '}
        {showFraction(detail.added / kilograms)} on the way to {showFraction(fullShareOf(detail))},{' '}
        {step(detail.shareStep)}. Each step is earned by {perStep ?? 'some'} completed, pain-free sessions of this lift,
        and signed.
      </p>
      <p>
        True fraction of capacity: <b>{showFraction(detail.trueFraction)}</b>{' '}
        <span className="soft">(the load less the work-matched share of body weight, over capacity).</span> Body mass{' '}
        {detail.bodyMass.kilograms.toFixed(1)} kg: {detail.bodyMass.says}.
      </p>
      {detail.limits.map((limit) => (
        <p key={limit.says} className={limit.binds ? styles['caution'] : 'soft'}>
          {limit.binds ? <b>Sets the load: </b> : 'Not reached: '}
          {limit.says}
        </p>
      ))}
      {detail.cappedOffSays !== null && <p className={styles['caution']}>{detail.cappedOffSays}</p>}
    </>
  );
}

/** The share of the policy that stands, at the top of its ramp. */
const fullShareOf = ({ policies, signedPolicy, workShare }: CrossingDetail): number =>
  policies.find(({ policy }) => JSON.stringify(policy) === JSON.stringify(signedPolicy))?.share ?? workShare;

const shown = (value: number): string => Math.round(value).toString().replace('-', '−');

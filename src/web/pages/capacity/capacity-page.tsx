import { Link, useParams, useSearchParams } from 'wouter';
import { ROUTES } from '#contract/routes.ts';
import type { CapacityLift, CapacityWindow } from '#contract/windows/capacity-window.ts';
import { Await, Empty, PersonFrame } from '../../parts/parts.ts';
import { useWindow } from '../../windows.ts';
import { CapacityTable } from './capacity-table.tsx';
import styles from './capacity-page.module.css';
import { ProfileTable } from './profile-table.tsx';
import { SeriesSection } from './series-section.tsx';

/** What a person can lift, how sure that is, how old, and what it rests on. */
export default function CapacityPage() {
  const { person } = useParams<{ person: string }>();
  const [search] = useSearchParams();
  return (
    <Await query={useWindow<CapacityWindow>(ROUTES.capacity(person))}>
      {(capacity) => (
        <PersonFrame person={capacity.person} active="Capacity">
          {isUntested(capacity) && (
            <Empty>
              No test is recorded. <Link href={`/people/${person}/record?record=test`}>Type one in</Link>, or{' '}
              <Link href="/in-and-out">bring in a spreadsheet</Link>. Until then every item runs on effort or waits.
            </Empty>
          )}
          {capacity.profile.length > 0 && <ProfileTable profile={capacity.profile} />}
          {capacity.lifts.length > 0 && <Lifts capacity={capacity} chosen={search.get('exercise')} />}
        </PersonFrame>
      )}
    </Await>
  );
}

function Lifts({ capacity, chosen }: { readonly capacity: CapacityWindow; readonly chosen: string | null }) {
  const lift =
    capacity.lifts.find(({ exercise }) => exercise === chosen) ??
    capacity.lifts.find(({ series }) => series.length > 0) ??
    null;
  return (
    <div className={styles['columns']}>
      <CapacityTable capacity={capacity} chosen={lift?.exercise ?? null} />
      {lift !== null && <LiftDetail capacity={capacity} lift={lift} />}
    </div>
  );
}

function LiftDetail({ capacity, lift }: { readonly capacity: CapacityWindow; readonly lift: CapacityLift }) {
  return (
    <section aria-label={lift.name}>
      <h2>{lift.name}</h2>
      <p>{lift.reading.says}</p>
      {lift.series.length === 0 && <Empty>Nothing was measured on this lift itself.</Empty>}
      {lift.series.map((series) => (
        <SeriesSection key={series.label} series={series} today={capacity.today} />
      ))}
    </section>
  );
}

const isUntested = ({ lifts }: CapacityWindow): boolean => lifts.every(({ series }) => series.length === 0);

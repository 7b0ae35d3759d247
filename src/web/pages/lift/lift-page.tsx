import { useLocation, useParams } from 'wouter';
import { ROUTES } from '#contract/routes.ts';
import type { LiftWindow } from '#contract/windows/lift-window.ts';
import { Await } from '../../parts/await.tsx';
import { Empty, Page } from '../../parts/page.tsx';
import { useWindow } from '../../windows.ts';
import { LiftPeople } from './lift-people.tsx';
import styles from './lift.module.css';

/** The same page of another lift. */
const LiftSwitcher = ({ lift }: { readonly lift: LiftWindow }) => {
  const [, go] = useLocation();
  const isListed = lift.lifts.some(({ id }) => id === lift.exercise);
  return (
    <select
      className={`${styles['lifts'] ?? ''} on-screen`}
      aria-label="Lift"
      value={lift.exercise}
      onChange={(event) => go(`/lift/${event.target.value}`)}
    >
      {isListed ? null : <option value={lift.exercise}>{lift.name}</option>}
      {lift.lifts.map(({ id, name }) => (
        <option key={id} value={id}>
          {name}
        </option>
      ))}
    </select>
  );
};

const Without = ({ without }: Pick<LiftWindow, 'without'>) =>
  without.length > 0 ? (
    <section className={styles['without']}>
      <h2>Not in the sessions of</h2>
      <ul>
        {without.map(({ id, name, why }) => (
          <li key={id}>
            {name} <span className="soft">{why}</span>
          </li>
        ))}
      </ul>
    </section>
  ) : null;

const countOf = ({ people }: LiftWindow): string => {
  if (people.length === 0) return 'nobody trains it';
  return people.length === 1 ? 'one person trains it' : `${people.length} people train it`;
};

/** One lift, all people: what each did, what comes next, and what speaks for or against more. */
const LiftPage = () => {
  const { exercise } = useParams<{ exercise: string }>();
  return (
    <Await query={useWindow<LiftWindow>(ROUTES.lift(exercise))}>
      {(lift) => (
        <Page title={lift.name} lead={`all people · ${countOf(lift)}`} aside={<LiftSwitcher lift={lift} />}>
          {lift.people.length > 0 ? (
            <LiftPeople key={lift.exercise} lift={lift} />
          ) : (
            <Empty>
              Nobody of ours has {lift.name.toLowerCase()} in a session between four weeks ago and three weeks from now.
            </Empty>
          )}
          <Without without={lift.without} />
        </Page>
      )}
    </Await>
  );
};

export default LiftPage;

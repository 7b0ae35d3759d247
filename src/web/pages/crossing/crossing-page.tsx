import { useParams, useSearchParams } from 'wouter';
import { ROUTES } from '#contract/routes.ts';
import type { CrossingWindow } from '#contract/windows/crossing-window.ts';
import { Await, Empty, PersonFrame } from '../../parts/parts.ts';
import { useWindow } from '../../windows.ts';
import { CrossingSum } from './crossing-sum.tsx';
import styles from './crossing-page.module.css';
import { FigurePair } from './figure-pair.tsx';
import { LiftTable } from './lift-table.tsx';
import { LoadCarried } from './load-carried.tsx';
import { PolicyChoice } from './policy-choice.tsx';
import { RampLadder } from './ramp-ladder.tsx';

/** One lift between 1 g and 0 g: the sum in the open, the way up, and where the load is carried. */
export default function CrossingPage() {
  const { person } = useParams<{ person: string }>();
  const [search] = useSearchParams();
  const exercise = search.get('exercise');
  const query = exercise === null ? '' : `?exercise=${encodeURIComponent(exercise)}`;
  const window = useWindow<CrossingWindow>(ROUTES.crossing(person) + query);
  return (
    <Await query={window}>
      {(crossing) => (
        <PersonFrame person={crossing.person} active="Crossing">
          {crossing.empty !== null && <Empty>{crossing.empty}</Empty>}
          {crossing.lifts.length > 0 && <Crossing crossing={crossing} />}
        </PersonFrame>
      )}
    </Await>
  );
}

function Crossing({ crossing }: { readonly crossing: CrossingWindow }) {
  const { detail } = crossing;
  const lift = crossing.lifts.find(({ exercise }) => exercise === detail?.exercise);
  return (
    <div className={styles['columns']}>
      <LiftTable crossing={crossing} />
      {detail === null ? (
        <Empty>
          Choose a lift: those with a capacity show their sum, the others run on effort and are not translated.
        </Empty>
      ) : (
        <>
          <div>
            <CrossingSum detail={detail} capacity={lift?.capacity ?? null} />
            <FigurePair crossing={crossing} detail={detail} />
            <RampLadder detail={detail} />
          </div>
          <div className={styles['side']}>
            <LoadCarried detail={detail} />
            <PolicyChoice key={detail.exercise} person={crossing.person.id} detail={detail} />
          </div>
        </>
      )}
    </div>
  );
}

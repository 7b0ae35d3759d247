import { useParams } from 'wouter';
import { ROUTES } from '#contract/routes.ts';
import type { RoadWindow } from '#contract/windows/road-window.ts';
import { Await, Empty, PersonFrame } from '../../parts/parts.ts';
import { useWindow } from '../../windows.ts';
import { MovedTable } from './moved-table.tsx';
import { PhaseTable } from './phase-table.tsx';
import { RoadChart } from './road-chart.tsx';
import styles from './road-page.module.css';
import { SentenceList } from './sentence-list.tsx';
import { TestTable } from './test-table.tsx';

/** Two and a half years of one person on one sheet: what is planned, where, when it is tested, and what nobody planned. */
export default function RoadPage() {
  const { person } = useParams<{ person: string }>();
  return (
    <Await query={useWindow<RoadWindow>(ROUTES.road(person))}>
      {({ person: head, road, today, empty }) => (
        <div className={styles['page']}>
          <PersonFrame person={head} active="Road">
            {empty !== null && <Empty>{empty}</Empty>}
            {road && (
              <>
                <RoadChart road={road} today={today} />
                <div className={styles['under']}>
                  <div>
                    <PhaseTable phases={road.phases} />
                    <TestTable road={road} />
                  </div>
                  <div>
                    <SentenceList sentences={road.sentences} person={person} />
                    <MovedTable moved={road.moved} />
                  </div>
                </div>
              </>
            )}
          </PersonFrame>
        </div>
      )}
    </Await>
  );
}

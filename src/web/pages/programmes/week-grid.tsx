import { Link } from 'wouter';
import type { Exercise } from '#domain/catalogue.ts';
import type { ProgrammeItem, ProgrammePhase, ProgrammeSession } from '#domain/programme.ts';
import { ItemLine } from './item-line.tsx';
import { showAround, showBasis, showFeel, showRest } from './item-words.ts';
import { dayName } from './day-name.ts';
import styles from './programmes-page.module.css';

interface WeekGridProps {
  readonly phase: ProgrammePhase;
  readonly exercises: readonly Exercise[];
}

const WEEK = [1, 2, 3, 4, 5, 6, 7] as const;

/** The days of a programme week side by side; days without a session are narrow. */
export function WeekGrid({ phase, exercises }: WeekGridProps) {
  return (
    <ol className={styles['week']}>
      {WEEK.map((weekday) => {
        const sessions = phase.sessions.filter((session) => session.weekday === weekday);
        return (
          <li key={weekday} className={sessions.length === 0 ? styles['rest'] : styles['day']}>
            <div className="soft small">{dayName(phase, weekday)}</div>
            {sessions.map((session) => (
              <Session key={session.id} session={session} exercises={exercises} />
            ))}
          </li>
        );
      })}
    </ol>
  );
}

interface SessionProps {
  readonly session: ProgrammeSession;
  readonly exercises: readonly Exercise[];
}

function Session({ session, exercises }: SessionProps) {
  return (
    <div>
      <h4>
        {session.title} <span className="soft">block of {session.blockMinutes} min</span>
      </h4>
      <ul className={styles['items']}>
        {session.items.map((item) => (
          <Item key={item.id} item={item} exercise={exercises.find(({ id }) => id === item.exercise)} />
        ))}
      </ul>
    </div>
  );
}

const detailsOf = (item: ProgrammeItem): string => {
  if (item.kind === 'lift') return `${showRest(item)}; `;
  return item.kind === 'bouts' ? `${showAround(item)}; ` : '';
};

/** The line; opened, all that it does not say. */
function Item({ item, exercise }: { readonly item: ProgrammeItem; readonly exercise: Exercise | undefined }) {
  return (
    <li>
      <details>
        <summary>
          <ItemLine item={item} exercise={exercise} />
        </summary>
        <div>{item.kind === 'lift' ? showBasis(item) : showFeel(item)}</div>
        <div className="soft small">
          {detailsOf(item)}priority {item.priority} (1 is kept longest); track {item.track}
          {item.kind === 'lift' && item.leading ? ', leads' : ''}
          {item.condition === 'everyone' ? '' : `; for ${item.condition} only`}; on the {item.machineKind}
        </div>
        <div className="small">{item.source}</div>
        <Link className="small" href={`/settings#${item.exercise}`}>
          How {exercise?.name.toLowerCase() ?? item.exercise} is done
        </Link>
      </details>
    </li>
  );
}

import { Link } from 'wouter';
import type { Exercise } from '#domain/catalogue.ts';
import type { ProgrammeItem, ProgrammePhase, ProgrammeSession } from '#domain/programme.ts';
import { showAround, showBasis, showBouts, showDrill, showFeel, showRest, showSets } from './item-words.ts';
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
      <ol className={styles['items']}>
        {session.items.map((item) => (
          <Item key={item.id} item={item} exercise={exercises.find(({ id }) => id === item.exercise)} />
        ))}
      </ol>
    </div>
  );
}

const workOf = (item: ProgrammeItem): string => {
  if (item.kind === 'lift') return showSets(item);
  return item.kind === 'bouts' ? showBouts(item) : showDrill(item);
};

const detailsOf = (item: ProgrammeItem): string => {
  if (item.kind === 'lift') return `${showRest(item)}; `;
  return item.kind === 'bouts' ? `${showAround(item)}; ` : '';
};

function Item({ item, exercise }: { readonly item: ProgrammeItem; readonly exercise: Exercise | undefined }) {
  return (
    <li>
      <div>
        <Link href={`/settings#${item.exercise}`}>{exercise?.name ?? item.exercise}</Link> <b>{workOf(item)}</b>
        {exercise?.perSide && <span className="soft"> each side</span>}
      </div>
      <div>{item.kind === 'lift' ? showBasis(item) : showFeel(item)}</div>
      <div className="soft small">
        {detailsOf(item)}priority {item.priority} (1 is kept longest); track {item.track}
        {item.kind === 'lift' && item.leading ? ', leads' : ''}
        {item.condition === 'everyone' ? '' : `; for ${item.condition} only`}
      </div>
      <details className="small">
        <summary>rests on</summary>
        {item.source}
      </details>
    </li>
  );
}

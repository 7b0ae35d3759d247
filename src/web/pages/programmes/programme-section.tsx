import { Link } from 'wouter';
import type { ProgrammesWindow } from '#contract/windows/programmes-window.ts';
import type { ProgrammePhase, RoadEdge } from '#domain/programme.ts';
import { FollowForm } from './follow-form.tsx';
import styles from './programmes-page.module.css';
import { WeekGrid } from './week-grid.tsx';

export type VersionEntry = ProgrammesWindow['versions'][number];

interface ProgrammeSectionProps {
  readonly entry: VersionEntry;
  readonly window: ProgrammesWindow;
}

/** One immutable version: its phases as weeks, and its followers. */
export function ProgrammeSection({ entry: { version, followers, canFollow }, window }: ProgrammeSectionProps) {
  return (
    <article className={styles['version']} id={version.id} aria-label={`${version.name}, version ${version.number}`}>
      <h2>
        {version.name}{' '}
        <span className="soft">
          version {version.number}, {version.id.slice(0, 8)}
        </span>
      </h2>
      <p>
        {followers.length === 0 ? (
          <span className="soft">Nobody follows it yet.</span>
        ) : (
          <>
            Followed by{' '}
            {followers.map(({ id, name, from }, place) => (
              <span key={id}>
                {place > 0 && ', '}
                <Link href={`/people/${id}`}>{name}</Link> <span className="soft">from {from}</span>
              </span>
            ))}
            .
          </>
        )}
      </p>
      <FollowForm version={version} canFollow={canFollow} />
      {version.phases.map((phase) => (
        <section key={phase.name} className={styles['phase']} aria-label={phase.name}>
          <h3>
            {phase.name.charAt(0).toUpperCase() + phase.name.slice(1)} <span className="soft">{daysOf(phase)}</span>
          </h3>
          <WeekGrid phase={phase} exercises={window.exercises} />
          <p className="soft small">{phase.source}</p>
        </section>
      ))}
    </article>
  );
}

const daysOf = ({ span: { first, last }, deload }: ProgrammePhase): string => {
  const ends = last ? ` to ${showEdge(last)}` : first.from === 'landing' ? ' on' : ' to the day before landing';
  const days = `${showEdge(first)}${ends}`;
  if (deload === null) return days;
  const less = Math.round((1 - deload.loadBy) * 100);
  return `${days}; every ${deload.everyWeeks} weeks lighter: ${deload.fewerSets} fewer ${deload.fewerSets === 1 ? 'set' : 'sets'}, ${less} % less load`;
};

/** "L−180", "flight day 15", "R+0". */
const showEdge = ({ from, days }: RoadEdge): string => {
  if (from === 'launch') return days < 0 ? `L−${-days}` : `flight day ${days + 1}`;
  return days < 0 ? `${-days} days before landing` : `R+${days}`;
};

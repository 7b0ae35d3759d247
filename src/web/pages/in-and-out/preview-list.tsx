import type { Preview, PreviewPerson } from '#contract/bring-in.ts';
import { IssueTable } from './issue-table.tsx';
import styles from './in-and-out-page.module.css';

/** What would be recorded, person by person, and what would not. */
export function PreviewList({ preview }: { readonly preview: Preview }) {
  const { totals } = preview;
  return (
    <section aria-label="Preview">
      <h3>
        Would be recorded{' '}
        <span className="soft">
          {totals.people} people ({totals.newPeople} new), {totals.tests} tests, {totals.measurements} measurements,{' '}
          {totals.missions} missions: {totals.facts} facts
        </span>
      </h3>
      {preview.missions.map((line) => (
        <p key={line.says}>{line.says}</p>
      ))}
      {preview.people.map((person) => (
        <PersonPreview key={person.name} person={person} />
      ))}
      {preview.passedOver.length > 0 && (
        <details>
          <summary>{preview.passedOver.length} rows are passed over</summary>
          <IssueTable caption="Passed over" issues={preview.passedOver} />
        </details>
      )}
    </section>
  );
}

function PersonPreview({ person }: { readonly person: PreviewPerson }) {
  return (
    <details className={styles['person']}>
      <summary>
        <b>{person.name}</b>{' '}
        <span className="soft">
          {person.isNew ? 'new, ' : ''}
          {person.tests} tests, {person.measurements} measurements
        </span>
      </summary>
      <ul>
        {person.lines.map((line, place) => (
          <li key={place}>
            {line.says} <span className="faint small">row {line.rows.join(', ')}</span>
          </li>
        ))}
      </ul>
    </details>
  );
}

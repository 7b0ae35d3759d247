import { useState } from 'react';
import { ROUTES } from '#contract/routes.ts';
import { AUDIENCES, type Audience } from '#domain/fact.ts';
import { Await } from '../../parts/parts.ts';
import { useWindow } from '../../windows.ts';
import styles from './in-and-out-page.module.css';

interface Reveals {
  readonly audience: string;
  readonly facts: number;
  readonly people: number;
  readonly kinds: readonly { readonly kind: string; readonly count: number }[];
  readonly reasonsCutOut: number;
}

/** Everything that an audience may see, as JSON; what it reveals is said before it leaves. */
export function ExportFor() {
  const [audience, setAudience] = useState<Audience>('person and specialist');
  const reveals = useWindow<Reveals>(`${ROUTES.exportReveals}?audience=${encodeURIComponent(audience)}`);
  return (
    <section aria-label="Export">
      <h2>Export</h2>
      <fieldset className={styles['audiences']}>
        <legend>Made for</legend>
        {AUDIENCES.map((each) => (
          <label key={each}>
            <input type="radio" name="audience" checked={each === audience} onChange={() => setAudience(each)} /> {each}
          </label>
        ))}
      </fieldset>
      <Await query={reveals}>{(shown) => <Revealed reveals={shown} audience={audience} />}</Await>
    </section>
  );
}

function Revealed({ reveals, audience }: { readonly reveals: Reveals; readonly audience: Audience }) {
  if (reveals.facts === 0) return <p>{audience} may see nothing of what is recorded: there is nothing to export.</p>;
  return (
    <>
      <p>
        It reveals {reveals.facts} facts about {reveals.people} {reveals.people === 1 ? 'person' : 'people'}:{' '}
        <span className="soft">{reveals.kinds.map(({ kind, count }) => `${kind} ${count}`).join(', ')}.</span>
      </p>
      {reveals.reasonsCutOut > 0 && (
        <p>
          {reveals.reasonsCutOut} medical {reveals.reasonsCutOut === 1 ? 'reason is' : 'reasons are'} cut out: they are
          for the physician.
        </p>
      )}
      <a href={`${ROUTES.exportAll}?audience=${encodeURIComponent(audience)}`} download>
        Save the export for {audience}
      </a>
    </>
  );
}

import { createContext, Fragment, useContext } from 'react';
import { Link } from 'wouter';
import { SCREENS_OF_ENTRIES, type ScreenName } from './screens-of-entries.table.ts';
import { isEvidenceOnly, pathOfScreen } from './screens.ts';

/** Somebody to show on the screens of one person; asked for once, not by every entry. */
export const ShownPerson = createContext<string | null>(null);

/** The screens on which a number rests on this entry. */
export function ScreenLinks({ id }: { readonly id: string }) {
  const person = useContext(ShownPerson);
  const screens = SCREENS_OF_ENTRIES[id] ?? [];
  if (screens.length === 0)
    return (
      <p className="soft">
        {isEvidenceOnly(id) ? 'Shown here only, on purpose: no plan and no screen uses it.' : 'On no screen yet.'}
      </p>
    );
  return (
    <p>
      {screens.map((screen, place) => (
        <Fragment key={screen}>
          {place > 0 && ', '}
          <ScreenLink screen={screen} person={person} />
        </Fragment>
      ))}
    </p>
  );
}

function ScreenLink({ screen, person }: { readonly screen: ScreenName; readonly person: string | null }) {
  const path = pathOfScreen(screen, person);
  return path === null ? screen : <Link href={path}>{screen}</Link>;
}

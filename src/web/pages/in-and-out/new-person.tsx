import { useState } from 'react';
import { useLocation } from 'wouter';
import { idOf, type PersonId } from '#domain/identity.ts';
import { Await, Button, Dialog } from '../../parts/parts.ts';
import { useHouse } from '../../windows.ts';
import { PersonForm } from '../record/person-form.tsx';

/** One person, typed in by hand. */
export function NewPerson() {
  const house = useHouse();
  const [, go] = useLocation();
  const [person, setPerson] = useState<PersonId | null>(null);
  return (
    <section aria-label="A person by hand">
      <h2>A person by hand</h2>
      <p className="soft">
        Name, sex and birth date here; tests, body mass and mission dates then on the person’s Record.
      </p>
      <Button onPress={() => setPerson(idOf<'person'>(crypto.randomUUID()))}>Introduce a person</Button>
      {person !== null && (
        <Dialog title="Introduce a person" isOpen onClose={() => setPerson(null)}>
          <Await query={house}>
            {(window) => (
              <PersonForm
                person={person}
                house={window}
                correcting={null}
                onDone={() => setPerson(null)}
                onRecorded={() => go(`/people/${person}/record`)}
              />
            )}
          </Await>
        </Dialog>
      )}
    </section>
  );
}

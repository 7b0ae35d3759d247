import { useState, type SubmitEvent } from 'react';
import { ROUTES } from '#contract/routes.ts';
import type { StartWindow } from '#contract/windows/house-window.ts';
import { Button } from '../../parts/button.tsx';
import { Field } from '../../parts/field.tsx';
import { useTitle } from '../../parts/page.tsx';
import { Problems } from '../../parts/problems.tsx';
import { Outside } from '../../shell/outside.tsx';
import { useWrite } from '../../windows.ts';
import styles from './start-page.module.css';

/** What the very first page asks: look around in an invented house, or begin one's own. */
export const StartPage = ({ start }: { readonly start: StartWindow }) => {
  useTitle('Start');
  const { send, isSending, problems } = useWrite();
  const open = (which: 'scenario' | 'own', signerName: string | null): void =>
    send(ROUTES.start, { which, signerName });
  const trouble = start.trouble ? [{ ...start.trouble, field: null }] : [];
  return (
    <Outside>
      <h1>{start.state === 'choose' ? 'Cards for long weightless missions' : 'Who signs?'}</h1>
      <p className="soft">
        From strength tests on the ground to signed cards for flight, every number with its working. It advises a
        licensed professional and defers to the physician and to local rules.
      </p>
      <Problems problems={[...trouble, ...problems]} shownElsewhere={['signerName']} />
      {start.state === 'choose' ? (
        <section className={styles['choice']}>
          <h2>The invented scenario</h2>
          <p>Skerry Station: a dozen invented people, with all that goes wrong in real life. For looking around.</p>
          <Button kind="main" isDisabled={isSending} onPress={() => open('scenario', null)}>
            {start.existing.includes('scenario') ? 'Go on with the invented scenario' : 'Open the invented scenario'}
          </Button>
        </section>
      ) : null}
      {start.state === 'choose' && start.existing.includes('own') ? (
        <section className={styles['choice']}>
          <h2>Your own people</h2>
          <p>There is a data file of your own on this computer.</p>
          <Button isDisabled={isSending} onPress={() => open('own', null)}>
            Go on with your own people
          </Button>
        </section>
      ) : (
        <Begin
          isSending={isSending}
          problems={problems}
          onOpen={(name) => open(start.about ?? 'own', name)}
          isFirst={start.state === 'choose'}
        />
      )}
    </Outside>
  );
};

interface BeginProps {
  readonly isSending: boolean;
  readonly problems: ReturnType<typeof useWrite>['problems'];
  readonly isFirst: boolean;
  readonly onOpen: (name: string) => void;
}

const Begin = ({ isSending, problems, isFirst, onOpen }: BeginProps) => {
  const [name, setName] = useState('');
  const submit = (event: SubmitEvent): void => {
    event.preventDefault();
    if (name.trim() !== '') onOpen(name.trim());
  };
  return (
    <section className={styles['choice']}>
      {isFirst ? <h2>Start empty</h2> : null}
      <p>
        With the programme, the exercises and one resistive machine that ship, and nobody in it. Nothing raises a load
        without a name under it: yours is asked once, more people can be added later.
      </p>
      <form onSubmit={submit}>
        <Field
          label="Your name, as it stands under a card"
          name="signerName"
          value={name}
          onChange={setName}
          problems={problems}
          isRequired
        />
        <Button type="submit" isDisabled={isSending}>
          {isFirst ? 'Start empty' : 'Start'}
        </Button>
      </form>
    </section>
  );
};

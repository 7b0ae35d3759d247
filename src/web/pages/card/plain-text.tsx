import { useState } from 'react';
import { Button } from '../../parts/button.tsx';
import styles from './card.module.css';

/** The same as plain text, for a slow line or a tablet. */
export const PlainText = ({ text, about }: { readonly text: string; readonly about?: string }) => {
  const [said, setSaid] = useState('');
  const copy = (): void => {
    navigator.clipboard.writeText(text).then(
      () => setSaid('Copied.'),
      () => setSaid('The browser did not allow copying: mark the text and copy it by hand.'),
    );
  };
  return (
    <details className={`${styles['plain'] ?? ''} on-screen`}>
      <summary>As plain text</summary>
      <p>
        <Button onPress={copy}>Copy the text</Button> <output className="soft small">{said}</output>
      </p>
      {about ? <p className="soft small">{about}</p> : null}
      {/* Long lines scroll; what scrolls must be reached by the keyboard. */}
      {/* oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex -- see above */}
      <pre tabIndex={0}>{text}</pre>
    </details>
  );
};

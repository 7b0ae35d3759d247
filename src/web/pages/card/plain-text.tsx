import { CopyButton } from '../../parts/copy-button.tsx';
import styles from './card.module.css';

/** The same as plain text, for a slow line or a tablet. */
export const PlainText = ({ text, about }: { readonly text: string; readonly about?: string }) => (
  <details className={`${styles['plain'] ?? ''} on-screen`}>
    <summary>As plain text</summary>
    <p>
      <CopyButton text={() => text} orElse="mark the text and copy it by hand">
        Copy the text
      </CopyButton>
    </p>
    {about ? <p className="soft small">{about}</p> : null}
    {/* Long lines scroll; what scrolls must be reached by the keyboard. */}
    {/* oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex -- see above */}
    <pre tabIndex={0}>{text}</pre>
  </details>
);

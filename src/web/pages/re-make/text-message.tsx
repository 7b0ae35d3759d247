import { CopyButton } from '../../parts/copy-button.tsx';
import styles from './re-make.module.css';

interface TextMessageProps {
  readonly text: string;
  readonly messages: number;
  /** Signed: to be sent. Else only to be seen. */
  readonly isSigned: boolean;
}

const countOf = (messages: number): string => (messages === 1 ? 'one text message' : `${messages} text messages`);

/** The session in so few words that it goes by telephone. */
export const TextMessage = ({ text, messages, isSigned }: TextMessageProps) => (
  <section className={styles['message']}>
    <h2>
      By telephone{' '}
      <span className="soft">
        {countOf(messages)}, {text.length} letters
      </span>
    </h2>
    <pre>{text}</pre>
    {isSigned ? (
      <CopyButton kind="main" isFirst text={() => text} orElse="mark the text and copy it by hand">
        Copy the text
      </CopyButton>
    ) : (
      <p className="soft">Not signed: not to be trained from.</p>
    )}
  </section>
);

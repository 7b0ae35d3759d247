import type { ReactNode } from 'react';
import { Button as AriaButton } from 'react-aria-components';
import { join } from './join.ts';
import styles from './button.module.css';

export interface ButtonProps {
  readonly children: ReactNode;
  readonly onPress?: () => void;
  /** `main`: the one thing to do here; `stop`: takes something back; `link`: looks like one. */
  readonly kind?: 'plain' | 'main' | 'stop' | 'link';
  readonly type?: 'button' | 'submit';
  readonly isDisabled?: boolean;
  /** What is read aloud, where the words alone do not say it. */
  readonly label?: string;
  /** The keyboard starts here: in a dialog that was opened for it. */
  readonly isFirst?: boolean;
}

export const Button = ({
  children,
  onPress,
  kind = 'plain',
  type = 'button',
  label,
  isFirst = false,
  ...rest
}: ButtonProps) => (
  <AriaButton
    type={type}
    className={join(styles['button'], styles[kind], 'on-screen')}
    {...(onPress ? { onPress } : {})}
    {...(label ? { 'aria-label': label } : {})}
    {...rest}
    {...(isFirst ? { autoFocus: true } : {})}
  >
    {children}
  </AriaButton>
);

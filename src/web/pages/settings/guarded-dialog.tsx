import { useState } from 'react';
import { Actions, Button, Dialog, type DialogProps } from '../../parts/parts.ts';
import styles from './settings-page.module.css';

type GuardedDialogProps = Omit<DialogProps, 'isOpen'>;

/** A dialog with a form: once something is typed, a press beside it or Escape asks before that is lost. */
export function GuardedDialog({ title, onClose, place, children }: GuardedDialogProps) {
  const [isTyped, setTyped] = useState(false);
  const [isLeaving, setLeaving] = useState(false);
  const close = (): void => (isTyped && !isLeaving ? setLeaving(true) : onClose());
  return (
    <Dialog title={title} isOpen onClose={close} {...(place === undefined ? {} : { place })}>
      {isLeaving && (
        <div className={styles['warning']} role="alert">
          What was typed is not signed, and would be lost.
          <Actions>
            <Button isFirst onPress={() => setLeaving(false)}>
              Go on typing
            </Button>
            <Button kind="stop" onPress={onClose}>
              Lose it
            </Button>
          </Actions>
        </div>
      )}
      <div onInput={() => setTyped(true)}>{children}</div>
    </Dialog>
  );
}

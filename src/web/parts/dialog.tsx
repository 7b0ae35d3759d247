import { useEffect, useEffectEvent, type ReactNode } from 'react';
import { Dialog as AriaDialog, Heading, Modal, ModalOverlay } from 'react-aria-components';
import { Button } from './button.tsx';
import { join } from './join.ts';
import styles from './dialog.module.css';

export interface DialogProps {
  readonly title: string;
  readonly isOpen: boolean;
  readonly onClose: () => void;
  readonly children: ReactNode;
  /** `side`: along the right edge, so that the page beside it can still be read. */
  readonly place?: 'middle' | 'side';
}

/** Escape closes even where what held the keyboard has just gone from the dialog, such as a form that was sent. */
const useEscape = (isOpen: boolean, onClose: () => void): void => {
  const onKey = useEffectEvent((event: KeyboardEvent) => {
    if (event.key === 'Escape' && document.activeElement === document.body) onClose();
  });
  useEffect(() => {
    if (!isOpen) return undefined;
    document.addEventListener('keydown', onKey);
    return () => document.removeEventListener('keydown', onKey);
  }, [isOpen]);
};

/** Holds the keyboard until it is closed; Escape closes it. */
export const Dialog = ({ title, isOpen, onClose, children, place = 'middle' }: DialogProps) => {
  useEscape(isOpen, onClose);
  return (
    <ModalOverlay
      className={join(styles['veil'], styles[place])}
      isOpen={isOpen}
      onOpenChange={(open) => (open ? undefined : onClose())}
      isDismissable
    >
      <Modal className={styles['box'] ?? ''}>
        <AriaDialog className={styles['dialog'] ?? ''}>
          <header className={styles['head']}>
            <Heading slot="title" level={2}>
              {title}
            </Heading>
            <Button kind="link" onPress={onClose}>
              Close
            </Button>
          </header>
          {children}
        </AriaDialog>
      </Modal>
    </ModalOverlay>
  );
};

/** Buttons at the foot of a dialog or form. */
export const Actions = ({ children }: { readonly children: ReactNode }) => (
  <div className={styles['actions']}>{children}</div>
);

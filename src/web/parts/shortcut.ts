import { useEffect, useEffectEvent } from 'react';

const isTyping = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement && (target.isContentEditable || /^(INPUT|TEXTAREA|SELECT)$/.test(target.tagName));

const isDialogOpen = (): boolean => document.querySelector('[role="dialog"]') !== null;

/** Calls for one key anywhere on the page, but not while somebody types or a dialog holds the keyboard. */
export const useShortcut = (key: string, call: () => void): void => {
  const onKey = useEffectEvent((event: KeyboardEvent) => {
    if (event.key.toLowerCase() !== key || event.ctrlKey || event.metaKey || event.altKey) return;
    if (isTyping(event.target) || isDialogOpen()) return;
    event.preventDefault();
    call();
  });
  useEffect(() => {
    document.addEventListener('keydown', onKey);
    return () => document.removeEventListener('keydown', onKey);
  }, []);
};

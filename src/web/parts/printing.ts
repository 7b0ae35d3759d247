import { useSyncExternalStore } from 'react';

/** Paper holds everything: what is drawn late on the screen is drawn at once before it is printed. */

const listeners = new Set<() => void>();
let isPrinting = false;

const set = (now: boolean): void => {
  if (now === isPrinting) return;
  isPrinting = now;
  for (const listen of listeners) listen();
};

const began = (): void => set(true);
const ended = (): void => set(false);
const changed = (event: MediaQueryListEvent): void => set(event.matches);

const subscribe = (listen: () => void): (() => void) => {
  if (listeners.size === 0) {
    addEventListener('beforeprint', began);
    addEventListener('afterprint', ended);
    const paper = matchMedia('print');
    paper.addEventListener('change', changed);
    isPrinting = paper.matches;
  }
  listeners.add(listen);
  return () => listeners.delete(listen);
};

export const useIsPrinting = (): boolean => useSyncExternalStore(subscribe, () => isPrinting);

import { startTransition, useEffect, useEffectEvent, useState } from 'react';
import { useIsPrinting } from '../../parts/printing.ts';

/** Chapters drawn at first, and below one that is gone to: more than a window holds. */
const AT_FIRST = 2;

/**
 * How many chapters are drawn: a few at once, the rest while nothing else happens, so that the page answers from the
 * start and the browser's own search, links and paper find all of it a moment later. `placeOf` tells in which chapter an
 * address lies; it and all before it are drawn at once.
 */
export const useDrawnGradually = (of: number, placeOf: (id: string) => number): number => {
  const isPrinting = useIsPrinting();
  const [drawn, setDrawn] = useState(() => placeOf(addressed()) + 1 + AT_FIRST);
  useEffect(() => {
    if (drawn >= of) return;
    const timer = setTimeout(() => startTransition(() => setDrawn(drawn + 1)), 0);
    return () => clearTimeout(timer);
  }, [drawn, of]);
  const go = useEffectEvent((): void => {
    const place = placeOf(addressed());
    if (place >= drawn) setDrawn(place + 1 + AT_FIRST);
    // Found when it is drawn: in the next turn.
    setTimeout(showAddressed, 0);
  });
  useEffect(() => {
    showAddressed();
    addEventListener('hashchange', go);
    return () => removeEventListener('hashchange', go);
  }, []);
  return isPrinting ? of : drawn;
};

/** The id in an address such as evidence#one-rep-max/wathan. */
const addressed = (): string => decodeURIComponent(location.hash.slice(1));

/** What lies above is only estimated until it is laid out: the place is taken again when it has been. */
const showAddressed = (): void => {
  const show = (): void => document.getElementById(addressed())?.scrollIntoView();
  if (addressed() === '') return;
  show();
  requestAnimationFrame(() => requestAnimationFrame(show));
};

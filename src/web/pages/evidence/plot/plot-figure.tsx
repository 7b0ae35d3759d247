import { useEffect, useRef, useState, type RefObject } from 'react';
import type { Plot } from '#science/plot.ts';
import { Prose } from '../equation/prose.tsx';
import { useIsPrinting } from '#web/parts/printing.ts';
import { PlotDrawing } from './plot-drawing.tsx';
import styles from './plot.module.css';

interface PlotFigureProps {
  readonly plot: Plot;
  readonly title: string;
}

/** A curve with what to see in it. It is computed and drawn when it comes near the window, or goes to paper. */
export function PlotFigure({ plot, title }: PlotFigureProps) {
  const place = useRef<HTMLDivElement>(null);
  const isNear = useIsNear(place);
  const isPrinting = useIsPrinting();
  return (
    <figure className={styles['figure']}>
      <div className={styles['room']} ref={place}>
        {(isNear || isPrinting) && <PlotDrawing plot={plot} title={title} />}
      </div>
      <figcaption>
        <Prose text={plot.says} />
      </figcaption>
    </figure>
  );
}

/** Whether an element has been within a window's height of what is seen. */
const useIsNear = (place: RefObject<HTMLElement | null>): boolean => {
  const [isNear, setNear] = useState(false);
  useEffect(() => {
    const element = place.current;
    if (isNear || !element) return;
    const observer = new IntersectionObserver(
      (entries) => {
        if (entries.some(({ isIntersecting }) => isIntersecting)) setNear(true);
      },
      { rootMargin: '100% 0px' },
    );
    observer.observe(element);
    return () => observer.disconnect();
  }, [isNear, place]);
  return isNear;
};

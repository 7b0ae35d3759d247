import { useEffect, useState } from 'react';

/** The chapter at the top of the window, by its anchor. `drawn` tells when there are more of them to watch. */
export const useCurrentChapter = (anchors: readonly string[], drawn: number): string | null => {
  const [current, setCurrent] = useState<string | null>(null);
  useEffect(() => {
    const inSight = new Set<string>();
    const observer = new IntersectionObserver(
      (entries) => {
        for (const { target, isIntersecting } of entries)
          if (isIntersecting) inSight.add(target.id);
          else inSight.delete(target.id);
        setCurrent(anchors.find((anchor) => inSight.has(anchor)) ?? null);
      },
      { rootMargin: '-10% 0px -80% 0px' },
    );
    for (const anchor of anchors) {
      const element = document.getElementById(anchor);
      if (element) observer.observe(element);
    }
    return () => observer.disconnect();
  }, [anchors, drawn]);
  return current;
};

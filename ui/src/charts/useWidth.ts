import { useEffect, useRef, useState } from 'preact/hooks';

/** The width an element has on screen, so that a drawing inside keeps its letters at reading size. */
export function useWidth(first: number) {
  const box = useRef<HTMLDivElement>(null);
  const [width, setWidth] = useState(first);

  useEffect(() => {
    const element = box.current;
    if (!element || !('ResizeObserver' in window)) {
      return undefined;
    }
    const watch = new ResizeObserver(([entry]) => entry && setWidth(Math.max(240, Math.round(entry.contentRect.width))));
    watch.observe(element);
    return () => watch.disconnect();
  }, []);

  return { box, width };
}

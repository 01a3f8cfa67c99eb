import { type RefObject, useEffect, useRef, useState } from 'react';

/** Whether a place of the page has come near the screen: what is costly to draw waits until then. */
export function useSeen<E extends Element>(): readonly [RefObject<E | null>, boolean] {
  const place = useRef<E>(null);
  const [seen, setSeen] = useState(false);
  useEffect(() => {
    const element = place.current;
    if (element === null || seen) return;
    const watch = new IntersectionObserver(
      (entries) => entries.some(({ isIntersecting }) => isIntersecting) && setSeen(true),
      { rootMargin: '600px' },
    );
    watch.observe(element);
    return () => watch.disconnect();
  }, [seen]);
  return [place, seen];
}

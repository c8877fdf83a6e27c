import { useEffect, useRef, useState, useSyncExternalStore, type RefObject } from "react";

/** Size of an element's content box [px], followed as it changes; zero until it is drawn. */
export function useSize<Element extends HTMLElement>(): [RefObject<Element | null>, { width: number; height: number }] {
  const ref = useRef<Element>(null);
  const [size, setSize] = useState({ width: 0, height: 0 });
  useEffect(() => {
    const element = ref.current;
    if (!element) return;
    const observer = new ResizeObserver(([entry]) => {
      if (!entry) return;
      const width = Math.floor(entry.contentRect.width);
      const height = Math.floor(entry.contentRect.height);
      setSize((before) => (before.width === width && before.height === height ? before : { width, height }));
    });
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return [ref, size];
}

/** Height of the window [px]. */
export const useWindowHeight = (): number =>
  useSyncExternalStore(
    (notify) => {
      window.addEventListener("resize", notify);
      return () => window.removeEventListener("resize", notify);
    },
    () => window.innerHeight,
  );

import { type RefObject, useEffect, useRef } from "react";

/**
 * Brings an element back into sight where what it shows becomes another thing while its beginning lies above the screen: what is
 * told at the foot of the screen can be told from any place of the page.
 */
export function useInSight(shown: string): RefObject<HTMLElement | null> {
  const element = useRef<HTMLElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what is shown is what the element must be looked at for.
  useEffect(() => {
    const { current } = element;
    if (current !== null && current.getBoundingClientRect().top < 0) current.scrollIntoView();
  }, [shown]);
  return element;
}

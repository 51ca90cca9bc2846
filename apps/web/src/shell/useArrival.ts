import { useEffect, useLayoutEffect, useRef } from "react";
import { goingBack } from "./goingBack.ts";

/**
 * A page that is gone to begins at its top, and the keyboard begins there, too, where what it was on is no longer there. One
 * that is gone back to stays where it was left. The browser's tab, history and screen reader call it by its title.
 */
export function useArrival(location: string, title: string): void {
  const at = useRef(location);
  useLayoutEffect(() => {
    if (at.current === location) return;
    at.current = location;
    if (!goingBack.isUnderWay) scrollTo({ top: 0, behavior: "instant" });
    goingBack.isUnderWay = false;
    if (document.activeElement === document.body) document.getElementById("page")?.focus({ preventScroll: true });
  }, [location]);
  useEffect(() => {
    document.title = title;
  }, [title]);
}

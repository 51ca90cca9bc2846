import { type RefObject, useEffect, useRef } from "react";

/** Takes the focus when it comes up, so that it is in view and read, and gives it back when it goes. */
export function useFocus(): RefObject<HTMLElement | null> {
  const place = useRef<HTMLElement>(null);
  useEffect(() => {
    const before = document.activeElement;
    place.current?.focus();
    return () => {
      if (before instanceof HTMLElement && before.isConnected) before.focus({ preventScroll: true });
    };
  }, []);
  return place;
}

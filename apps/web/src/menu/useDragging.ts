import { type PointerEvent as ReactPointerEvent, useEffect, useRef, useState } from "react";

/** A plate that is held. */
export interface Held {
  readonly sitting: number;
  /** The sitting under the hand; absent while there is none, or its own. */
  readonly over?: number;
  /** Where the hand is in the window, in CSS pixels. */
  readonly x: number;
  readonly y: number;
}

interface DraggingOptions {
  /** Called when the held plate comes over another sitting. */
  readonly onOver: (sitting: number, over: number) => void;
  readonly onDrop: (sitting: number, over: number | undefined) => void;
  /** What scrolls along when the hand comes to its edges. */
  readonly scroller: { readonly current: HTMLElement | null };
}

/** A finger that rests so long on a plate takes it up; before that it scrolls. */
const REST_MS = 350;
/** A mouse that moves so far takes it up at once. */
const MOVE_PX = 6;
/** So near the edge the picture begins to scroll. */
const EDGE_PX = 40;
const SCROLL_PX = 12;
/** A hand that rests there scrolls on so often. */
const SCROLL_MS = 40;

/** Takes up plates with mouse, pen or finger, and tells over which sitting they are. Escape lets go. */
export function useDragging({ onOver, onDrop, scroller }: DraggingOptions): {
  readonly held: Held | undefined;
  readonly takeUp: (event: ReactPointerEvent<HTMLElement>, sitting: number) => void;
  /** True where the last press was a drag, so that its click counts for nothing. */
  readonly wasDragged: () => boolean;
} {
  const [held, setHeld] = useState<Held>();
  const dragged = useRef(false);
  const end = useRef<() => void>(undefined);
  const latest = useRef({ onOver, onDrop });
  useEffect(() => {
    latest.current = { onOver, onDrop };
  });
  useEffect(() => () => end.current?.(), []);

  const takeUp = (event: ReactPointerEvent<HTMLElement>, sitting: number): void => {
    if (event.button !== 0 || end.current !== undefined) return;
    dragged.current = false;
    const { pointerId, pointerType, clientX, clientY } = event;
    let now: Held | undefined;
    let scrolling: ReturnType<typeof setInterval> | undefined;
    const set = (next: Held | undefined): void => {
      now = next;
      setHeld(next);
    };
    const isFar = (from: Pick<Held, "x" | "y">): boolean => Math.hypot(from.x - clientX, from.y - clientY) > MOVE_PX;
    const begin = (x: number, y: number): void => {
      clearTimeout(rest);
      dragged.current = true;
      set({ sitting, x, y });
      scrolling = setInterval(() => {
        if (now === undefined || !isFar(now)) return;
        if (scrollAlong(scroller.current, now.x)) seek(now.x, now.y);
      }, SCROLL_MS);
    };
    const seek = (x: number, y: number): void => {
      const over = sittingAt(x, y);
      const target = over === sitting ? undefined : over;
      if (target !== undefined && target !== now?.over) latest.current.onOver(sitting, target);
      set({ sitting, x, y, ...(target !== undefined && { over: target }) });
    };
    const rest = setTimeout(() => begin(clientX, clientY), pointerType === "mouse" ? 2 ** 30 : REST_MS);
    const move = (moved: PointerEvent): void => {
      if (moved.pointerId !== pointerId) return;
      const { clientX: x, clientY: y } = moved;
      if (now === undefined) {
        if (isFar({ x, y }) && pointerType === "mouse") begin(x, y);
        else if (isFar({ x, y })) finish();
        return;
      }
      seek(x, y);
    };
    const drop = (up: PointerEvent): void => {
      if (up.pointerId !== pointerId) return;
      const last = now;
      finish();
      if (last !== undefined) latest.current.onDrop(sitting, last.over);
    };
    const letGo = (key: KeyboardEvent): void => {
      if (key.key !== "Escape" || now === undefined) return;
      finish();
      latest.current.onDrop(sitting, undefined);
    };
    // While a plate is held, the finger must not scroll; only a listener that is not passive can say so.
    const hold = (touch: TouchEvent): void => {
      if (now !== undefined) touch.preventDefault();
    };
    const finish = (): void => {
      clearTimeout(rest);
      clearInterval(scrolling);
      removeEventListener("pointermove", move);
      removeEventListener("pointerup", drop);
      removeEventListener("pointercancel", finish);
      removeEventListener("keydown", letGo);
      removeEventListener("touchmove", hold);
      end.current = undefined;
      set(undefined);
    };
    end.current = finish;
    addEventListener("pointermove", move);
    addEventListener("pointerup", drop);
    addEventListener("pointercancel", finish);
    addEventListener("keydown", letGo);
    addEventListener("touchmove", hold, { passive: false });
  };
  return { held, takeUp, wasDragged: () => dragged.current };
}

function sittingAt(x: number, y: number): number | undefined {
  const station = document.elementsFromPoint(x, y).find((each) => each.hasAttribute("data-sitting"));
  const sitting = station?.getAttribute("data-sitting");
  return sitting === null || sitting === undefined ? undefined : Number(sitting);
}

/** Scrolls a step where the hand is at an edge; true where it did. */
function scrollAlong(scroller: HTMLElement | null, x: number): boolean {
  if (scroller === null) return false;
  const { left, right } = scroller.getBoundingClientRect();
  const before = scroller.scrollLeft;
  if (x < left + EDGE_PX) scroller.scrollLeft -= SCROLL_PX;
  else if (x > right - EDGE_PX) scroller.scrollLeft += SCROLL_PX;
  return scroller.scrollLeft !== before;
}

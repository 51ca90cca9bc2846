import type { WeekPlan } from "halfloaf/kitchen";
import { useRef, useState } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import type { MoveTold } from "./reasoning/Told.ts";
import { useReasoner } from "./reasoning/useReasoner.ts";
import { useWeekAsked } from "./reasoning/useWeekAsked.ts";

/** A plate over another sitting, with what the move would come to once that is known. */
export interface Moving {
  readonly sitting: number;
  readonly over: number;
  readonly told?: MoveTold;
}

/** So long it stands why a move could not be made. */
const READ_MS = 6000;

/**
 * Plans the week again while a plate is held over other sittings: one question at a time, and after it the one the hand has
 * come to meanwhile. Let go, the move is made once it is known to fit; where no menu near this one does, `onStuck` is told.
 */
export function useMoving(
  week: WeekPlan,
  onOffer: (week: WeekPlan) => void,
  onStuck: (sitting: number, over: number) => void,
): {
  readonly moving: Moving | undefined;
  readonly over: (sitting: number, over: number) => void;
  readonly drop: (sitting: number, over: number | undefined) => void;
} {
  const { view } = useKitchen();
  const { toAsked } = useWeekAsked(week);
  const reasoner = useReasoner();
  const [moving, setMoving] = useState<Moving>();
  const wanted = useRef<Moving>(undefined);
  const isAsking = useRef(false);
  const isDropped = useRef(false);
  const settle = (told: MoveTold | undefined): void => {
    if (!isDropped.current || told === undefined) return;
    const dropped = wanted.current;
    const clear = (): void => {
      if (wanted.current !== dropped) return;
      wanted.current = undefined;
      setMoving(undefined);
    };
    if (told.kind === "breaks" && dropped !== undefined) {
      clear();
      onStuck(dropped.sitting, dropped.over);
      return;
    }
    if (told.kind !== "fits") {
      setTimeout(clear, READ_MS);
      return;
    }
    clear();
    onOffer(told.week);
  };
  const askOn = async (): Promise<void> => {
    if (isAsking.current) return;
    isAsking.current = true;
    for (let asked = wanted.current; asked !== undefined && asked.told === undefined; asked = wanted.current) {
      const told = await reasoner
        .ask()
        .move(await toAsked(), asked.sitting, asked.over, view.day)
        .catch((): MoveTold => ({ kind: "breaks" }));
      if (wanted.current !== asked) continue;
      wanted.current = { ...asked, told };
      setMoving(wanted.current);
      settle(told);
    }
    isAsking.current = false;
  };
  const over = (sitting: number, target: number): void => {
    isDropped.current = false;
    wanted.current = { sitting, over: target };
    setMoving(wanted.current);
    void askOn();
  };
  const drop = (_: number, target: number | undefined): void => {
    if (target === undefined || wanted.current?.over !== target) {
      wanted.current = undefined;
      setMoving(undefined);
      return;
    }
    isDropped.current = true;
    settle(wanted.current.told);
  };
  return { moving, over, drop };
}

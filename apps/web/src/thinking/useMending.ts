import type { WeekChange, WeekPlan } from "halfloaf/kitchen";
import { weekChanges } from "halfloaf/kitchen/record";
import type { Pack } from "halfloaf/price";
import { useCallback, useEffect, useRef, useState } from "react";
import { readDevice } from "../kitchen/device.ts";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { compareWeeks } from "./compareWeeks.ts";
import { startThinker } from "./startThinker.ts";
import type { MendQuestion, WeekMended } from "./WeekMender.ts";

/** How far planning the week again has come. */
export type Mending =
  | { readonly kind: "idle" }
  | { readonly kind: "busy" }
  | { readonly kind: "failed" }
  /** With what was asked, which stays the same list while it is not asked again. */
  | {
      readonly kind: "answered";
      readonly answer: WeekMended;
      readonly asked: readonly WeekChange[];
      readonly pack: Pack | undefined;
    };

/** How it is asked, and a week that is the answer where no other is found. */
type MendHow = Pick<MendQuestion, "pack" | "isPatient"> & { readonly instead?: WeekPlan | undefined };

/**
 * Plans the accepted week again in the worker. The week is made ready as soon as it is shown, so that a question at the shelf
 * is answered quickly; an answer to a question that is no longer asked is passed over.
 */
export function useMending(isWanted = true): {
  readonly mending: Mending;
  readonly ask: (asked: readonly WeekChange[], how?: MendHow) => Promise<void>;
  readonly forget: () => void;
} {
  const { view } = useKitchen();
  const { day, menu, state } = view;
  const [mending, setMending] = useState<Mending>({ kind: "idle" });
  const turn = useRef(0);
  const event = menu?.event;
  const accepted = menu?.week;
  const lookUp = useRef((): WeekChange[] => []);
  lookUp.current = () => (menu === undefined ? [] : weekChanges(state, menu.week, day));
  useEffect(() => {
    const { open } = readDevice();
    if (!isWanted || open === undefined || event === undefined) return;
    startThinker()
      .prepareWeek(open, day)
      .catch(() => {
        // The question itself will tell what is wrong.
      });
  }, [isWanted, day, event]);
  const ask = useCallback(
    async (asked: readonly WeekChange[], { instead, ...how }: MendHow = {}): Promise<void> => {
      const own = ++turn.current;
      const { open } = readDevice();
      if (open === undefined) return;
      setMending({ kind: "busy" });
      let answered: Mending;
      try {
        const question = { kitchen: open, day, asked, known: lookUp.current(), ...how };
        const found = await startThinker().mendWeek(question);
        const isInstead = found.kind === "none" && instead !== undefined && accepted !== undefined;
        const answer = isInstead ? { kind: "planned" as const, ...compareWeeks(accepted, instead) } : found;
        answered = { kind: "answered", asked, pack: how.pack, answer };
      } catch {
        answered = { kind: "failed" };
      }
      if (own === turn.current) setMending(answered);
    },
    [day, accepted],
  );
  const forget = useCallback((): void => {
    turn.current++;
    setMending({ kind: "idle" });
  }, []);
  return { mending, ask, forget };
}

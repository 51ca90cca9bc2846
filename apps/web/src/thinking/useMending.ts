import type { WeekChange } from "halfloaf/kitchen";
import { weekChanges } from "halfloaf/kitchen/record";
import { useCallback, useEffect, useRef, useState } from "react";
import { readDevice } from "../kitchen/device.ts";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { startThinker } from "./startThinker.ts";
import type { MendQuestion, WeekMended } from "./WeekMender.ts";

/** How far planning the week again has come. */
export type Mending =
  | { readonly kind: "idle" }
  | { readonly kind: "busy" }
  | { readonly kind: "failed" }
  | { readonly kind: "answered"; readonly answer: WeekMended };

/**
 * Plans the accepted week again in the worker. The week is made ready as soon as it is shown, so that a question at the shelf
 * is answered quickly; an answer to a question that is no longer asked is passed over.
 */
export function useMending(isWanted = true): {
  readonly mending: Mending;
  readonly ask: (asked: readonly WeekChange[], how?: Pick<MendQuestion, "pack" | "isPatient">) => Promise<void>;
  readonly forget: () => void;
} {
  const { view } = useKitchen();
  const { day, menu, state } = view;
  const [mending, setMending] = useState<Mending>({ kind: "idle" });
  const turn = useRef(0);
  const event = menu?.event;
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
    async (asked: readonly WeekChange[], how: Pick<MendQuestion, "pack" | "isPatient"> = {}): Promise<void> => {
      const own = ++turn.current;
      const { open } = readDevice();
      if (open === undefined) return;
      setMending({ kind: "busy" });
      let answered: Mending;
      try {
        answered = {
          kind: "answered",
          answer: await startThinker().mendWeek({ kitchen: open, day, asked, known: lookUp.current(), ...how }),
        };
      } catch {
        answered = { kind: "failed" };
      }
      if (own === turn.current) setMending(answered);
    },
    [day],
  );
  const forget = useCallback((): void => {
    turn.current++;
    setMending({ kind: "idle" });
  }, []);
  return { mending, ask, forget };
}

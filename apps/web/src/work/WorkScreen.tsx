import { type ReactNode, useEffect, useState } from "react";
import { useSearchParams } from "wouter";
import { useNames } from "../kitchen/useNames.ts";
import { startThinker } from "../thinking/startThinker.ts";
import type { DishWanted, OrderTold } from "../thinking/Thinker.ts";
import { useFurther } from "../words/useFurther.ts";
import { ChooseDishes } from "./ChooseDishes.tsx";
import { cookingRun } from "./CookingRun.ts";
import { Finish } from "./Finish.tsx";
import { Stove } from "./Stove.tsx";
import { useCooking } from "./useCooking.ts";
import { useStoveKitchen } from "./useStoveKitchen.ts";
import { parseWorkSearch } from "./workPath.ts";
import "../kitchen/fields/fields.css";
import "./work.css";

/** What the hands do now, what boils meanwhile, when it is ready. */
export default function WorkScreen(): ReactNode {
  const { words, further } = useFurther("work");
  const kitchen = useStoveKitchen();
  const names = useNames();
  const [search, setSearch] = useSearchParams();
  const running = useCooking();
  const parts: Readonly<Record<string, string>> = further.stove.parts;
  const tellKit = (kit: string): string => parts[kit] ?? kit;
  const [refused, setRefused] = useState<Exclude<OrderTold, { kind: "sheet" }>>();
  const order = async (wanted: readonly DishWanted[]): Promise<void> => {
    const told = await startThinker().order(kitchen, wanted, 1);
    if (told.kind === "sheet") cookingRun.set({ wanted, sheet: told.sheet, told: [] });
    setRefused(told.kind === "sheet" ? undefined : told);
  };
  const [kept, setKept] = useState(false);
  const asked = search.toString();
  // biome-ignore lint/correctness/useExhaustiveDependencies: what the address asks for is ordered once.
  useEffect(() => {
    const wanted = parseWorkSearch(search);
    if (wanted.length === 0) return;
    setSearch({});
    // A cooking that has begun is not put away for another by a touch elsewhere.
    const isCooking = running?.begunMs !== undefined;
    setKept(isCooking);
    if (!isCooking) void order(wanted);
  }, [asked]);
  const isAtStove = running?.begunMs !== undefined && !running.isOver;
  return (
    <div className="stack">
      {/* By the stove the room is for the step and its cautions; the ways at the foot tell which screen it is. */}
      <h1 className={isAtStove ? "unseen" : undefined}>{words.screens.work}</h1>
      {refused !== undefined && (
        <p role="alert">
          {refused.kind === "kit-missing"
            ? words.work.kitMissing(names.dish(refused.dish), tellKit(refused.kit))
            : words.work.none}
        </p>
      )}
      {kept && running !== undefined && <p role="status">{words.work.kept}</p>}
      {running === undefined ? (
        <ChooseDishes onChoose={order} />
      ) : running.isOver ? (
        <Finish running={running} />
      ) : (
        <Stove running={running} />
      )}
    </div>
  );
}

import { type ReactNode, useEffect, useState, useSyncExternalStore } from "react";
import { useSearchParams } from "wouter";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useNames } from "../kitchen/useNames.ts";
import { startThinker } from "../thinking/startThinker.ts";
import type { DishWanted, OrderTold } from "../thinking/Thinker.ts";
import { useWords } from "../words/WordsContext.tsx";
import { ChooseDishes } from "./ChooseDishes.tsx";
import { cookingRun } from "./CookingRun.ts";
import { Finish } from "./Finish.tsx";
import { Stove } from "./Stove.tsx";
import "../kitchen/fields/fields.css";
import "./work.css";

/** What the hands do now, what boils meanwhile, when it is ready. */
export default function WorkScreen(): ReactNode {
  const { words } = useWords();
  const { view } = useKitchen();
  const names = useNames();
  const [search, setSearch] = useSearchParams();
  const running = useSyncExternalStore(cookingRun.subscribe, () => cookingRun.running);
  const [refused, setRefused] = useState<Exclude<OrderTold, { kind: "sheet" }>>();
  const order = async (wanted: readonly DishWanted[]): Promise<void> => {
    const told = await startThinker().order(view.kitchen, wanted);
    if (told.kind === "sheet") cookingRun.set({ wanted, sheet: told.sheet, told: [] });
    setRefused(told.kind === "sheet" ? undefined : told);
  };
  const asked = search.get("dish");
  const portions = Number(search.get("portions") ?? 1);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what the address asks for is ordered once.
  useEffect(() => {
    if (asked === null) return;
    setSearch({});
    void order([{ dish: asked, portions: portions > 0 ? portions : 1 }]);
  }, [asked]);
  return (
    <div className="stack">
      <h1>{words.screens.work}</h1>
      {refused !== undefined && (
        <p role="alert">
          {refused.kind === "kit-missing"
            ? words.work.kitMissing(names.dish(refused.dish), refused.kit)
            : words.work.none}
        </p>
      )}
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

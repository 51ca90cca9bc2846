import type { ObservedStep } from "halfloaf/kitchen";
import { cook, type RecordEvent } from "halfloaf/kitchen/record";
import { type ReactNode, useEffect, useState } from "react";
import { useLocation } from "wouter";
import { TickField } from "../kitchen/fields/TickField.tsx";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { RoleNote } from "../sharing/RoleNote.tsx";
import { useMayWrite } from "../sharing/useMayWrite.ts";
import { startThinker } from "../thinking/startThinker.ts";
import { useFurther } from "../words/useFurther.ts";
import { Cautions } from "./Cautions.tsx";
import { cookingRun, type Running } from "./CookingRun.ts";
import { type CookedDish, FinishDish } from "./FinishDish.tsx";
import { toldApart } from "./toldApart.ts";
import { wishFor } from "./wishFor.ts";

/** What came out of a cooking: what was really used, who ate of it, and what is left for later. */
export function Finish({ running }: { readonly running: Running }): ReactNode {
  const { further } = useFurther("work");
  const { session, view } = useKitchen();
  const [, go] = useLocation();
  const mayBook = useMayWrite("cooked");
  const [told, setTold] = useState<Readonly<Record<string, CookedDish>>>({});
  const [isLearning, setLearning] = useState(true);
  const seen = useSeenSteps(running);
  const seenCount = seen.reduce((sum, steps) => sum + steps.length, 0);
  const book = (): void => {
    void session.write((pen): readonly RecordEvent[] =>
      running.wanted.flatMap(({ dish: id, portions }, at) => {
        const planned = wishFor(view, id, portions);
        if (planned === undefined) return [];
        const steps = isLearning ? [...(seen[at] ?? [])] : [];
        const { cooked, boxed, eaten } = cook(view.state, view.tables.foods, { ...planned, ...told[id], steps }, pen);
        return [cooked, ...boxed, ...(eaten === undefined ? [] : [eaten])];
      }),
    );
    end();
  };
  const end = (): void => {
    cookingRun.set(undefined);
    go("/");
  };
  const isSound = Object.values(told).every(({ isSound }) => isSound);
  return (
    <div className="stack">
      <h2>{mayBook ? further.finish.title : further.stove.allDone}</h2>
      {mayBook && <p className="soft">{further.finish.about}</p>}
      {mayBook ? (
        running.wanted.map(({ dish, portions }) => (
          <FinishDish
            key={dish}
            dish={dish}
            portions={portions}
            onTell={(cooked) => setTold((before) => ({ ...before, [dish]: cooked }))}
          />
        ))
      ) : (
        <RoleNote />
      )}
      {mayBook && seenCount > 0 && (
        <TickField label={further.finish.learn(seenCount)} isTicked={isLearning} onChange={setLearning} />
      )}
      <Cautions cautions={running.sheet.after} />
      <div className="row">
        {mayBook ? (
          <button type="button" className="button main large" disabled={!isSound} onClick={book}>
            {further.finish.book}
          </button>
        ) : (
          <button type="button" className="button main large" onClick={end}>
            {further.finish.end}
          </button>
        )}
        <button type="button" className="button" onClick={() => cookingRun.set({ ...running, isOver: false })}>
          {further.finish.back}
        </button>
      </div>
    </div>
  );
}

/** How long the steps of each dish took, as far as it was told; nothing where two cooked, whose paces are not told apart. */
function useSeenSteps({ wanted, told, cooks = 1 }: Running): readonly (readonly ObservedStep[])[] {
  const { view } = useKitchen();
  const [seen, setSeen] = useState<readonly (readonly ObservedStep[])[]>([]);
  useEffect(() => {
    const known = cooks === 1 ? toldApart(told) : [];
    if (known.length === 0) return undefined;
    let isWanted = true;
    startThinker()
      .seen(view.kitchen, wanted, known)
      .then(
        (steps) => isWanted && setSeen(steps),
        () => {
          // Without it nothing is learned, and all else is booked.
        },
      );
    return () => {
      isWanted = false;
    };
  }, [view.kitchen, wanted, told, cooks]);
  return seen;
}

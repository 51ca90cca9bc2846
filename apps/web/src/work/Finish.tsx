import { cook, type RecordEvent } from "halfloaf/kitchen/record";
import { type ReactNode, useState } from "react";
import { useLocation } from "wouter";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { RoleNote } from "../sharing/RoleNote.tsx";
import { useMayWrite } from "../sharing/useMayWrite.ts";
import { useFurther } from "../words/useFurther.ts";
import { Cautions } from "./Cautions.tsx";
import { cookingRun, type Running } from "./CookingRun.ts";
import { type CookedDish, FinishDish } from "./FinishDish.tsx";
import { wishFor } from "./wishFor.ts";

/** What came out of a cooking: what was really used, who ate of it, and what is left for later. */
export function Finish({ running }: { readonly running: Running }): ReactNode {
  const { further } = useFurther("work");
  const { session, view } = useKitchen();
  const [, go] = useLocation();
  const mayBook = useMayWrite("cooked");
  const [told, setTold] = useState<Readonly<Record<string, CookedDish>>>({});
  const book = (): void => {
    void session.write((pen): readonly RecordEvent[] =>
      running.wanted.flatMap(({ dish: id, portions }) => {
        const planned = wishFor(view, id, portions);
        if (planned === undefined) return [];
        const { cooked, eaten } = cook(view.state, view.tables.foods, { ...planned, ...told[id] }, pen);
        return eaten === undefined ? [cooked] : [cooked, eaten];
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

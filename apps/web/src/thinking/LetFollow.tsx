import { type ReactNode, useEffect } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useMayWrite } from "../sharing/useMayWrite.ts";
import { useFurther } from "../words/useFurther.ts";
import { MendedWeek } from "./MendedWeek.tsx";
import { useMending } from "./useMending.ts";

/** Plans the accepted week again by what the record knows, once asked to; `told` names what an answer holds for. */
export function LetFollow({ told }: { readonly told: string }): ReactNode {
  const { further } = useFurther("mended");
  const { session, view } = useKitchen();
  const mayTake = useMayWrite("menu-accepted");
  const { mending, ask, forget } = useMending();
  // biome-ignore lint/correctness/useExhaustiveDependencies: an answer holds for the news it was given for.
  useEffect(() => forget, [told, forget]);
  return (
    <>
      <div role="status">
        <MendedWeek
          mending={mending}
          same={further.mended.same}
          onAccept={({ week }) =>
            void session.write((pen) => [pen.write({ kind: "menu-accepted", on: view.day, week })])
          }
        />
      </div>
      {mending.kind !== "answered" && mayTake && (
        <div>
          <button
            type="button"
            className="button main"
            disabled={mending.kind === "busy"}
            onClick={() => void ask([], { isPatient: true })}
          >
            {further.mended.ask}
          </button>
        </div>
      )}
    </>
  );
}

import type { WeekPlan } from "halfloaf/kitchen";
import { type ReactNode, useEffect } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useMayWrite } from "../sharing/useMayWrite.ts";
import { useFurther } from "../words/useFurther.ts";
import { MendedWeek } from "./MendedWeek.tsx";
import { useMending } from "./useMending.ts";

interface LetFollowProps {
  readonly told: string;
  /** True where a week that stays as it is is taken all the same, which says that it goes by what was told. */
  readonly keepSame?: boolean;
}

/** Plans the accepted week again by what the record knows, once asked to; `told` names what an answer holds for. */
export default function LetFollow({ told, keepSame = false }: LetFollowProps): ReactNode {
  const { further } = useFurther("mended");
  const { session, view } = useKitchen();
  const mayTake = useMayWrite("menu-accepted");
  const { mending, ask, forget } = useMending();
  // biome-ignore lint/correctness/useExhaustiveDependencies: an answer holds for the news it was given for.
  useEffect(() => forget, [told, forget]);
  const follow = (instead?: WeekPlan): void => void ask([], { isPatient: true, instead });
  return (
    <>
      <div role="status">
        <MendedWeek
          mending={mending}
          same={further.mended.same}
          keep={keepSame ? further.mended.keep : undefined}
          onAgain={follow}
          onAccept={(week) => void session.write((pen) => [pen.write({ kind: "menu-accepted", on: view.day, week })])}
        />
      </div>
      {mending.kind !== "answered" && mayTake && (
        <div>
          <button type="button" className="button main" disabled={mending.kind === "busy"} onClick={() => follow()}>
            {further.mended.ask}
          </button>
        </div>
      )}
    </>
  );
}

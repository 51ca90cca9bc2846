import type { Kitchen, WeekPlan } from "halfloaf/kitchen";
import type { EditedKitchen } from "halfloaf/kitchen/record";
import { type ReactNode, useEffect } from "react";
import type { DaysAsked } from "../thinking/stateAsked.ts";
import { useFurther } from "../words/useFurther.ts";
import type { ImpossibleTold } from "./reasoning/Told.ts";
import { Thinking } from "./Thinking.tsx";
import { useAnswer } from "./useAnswer.ts";
import { WaysOut } from "./WaysOut.tsx";

interface ImpossibleProps {
  readonly kitchen: Kitchen;
  readonly asked: DaysAsked;
  readonly onOffer: (week: WeekPlan) => void;
  /** The kitchen is to be changed; with a week, that one is possible then. */
  readonly onChange: (change: (kitchen: EditedKitchen) => EditedKitchen, week: WeekPlan | undefined) => void;
}

/** Why no menu keeps every limit, and the smallest steps that would be enough, ready to be set. */
export default function Impossible({ kitchen, asked, onOffer, onChange }: ImpossibleProps): ReactNode {
  const { further } = useFurther("menu", "impossible");
  const { answering, ask, stop } = useAnswer<ImpossibleTold>();
  const { impossible } = further;
  // biome-ignore lint/correctness/useExhaustiveDependencies: asked once for every kitchen that can't be planned.
  useEffect(() => ask((reasoner) => reasoner.explain(kitchen, asked)), [kitchen, asked]);
  const told = answering.kind === "answered" ? answering.answer : undefined;
  return (
    <section className="sheet stack tight">
      <h2>{told?.kind === "gaps" ? impossible.gapTitle : impossible.title}</h2>
      <Thinking answering={answering} onStop={stop} said={impossible.asking} />
      {told !== undefined && <WaysOut told={told} take={further.week.showIt} onTake={onOffer} onChange={onChange} />}
    </section>
  );
}

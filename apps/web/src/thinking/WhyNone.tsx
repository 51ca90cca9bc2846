import type { WeekChange, WeekPlan } from "halfloaf/kitchen";
import type { EditedKitchen } from "halfloaf/kitchen/record";
import type { Pack } from "halfloaf/price";
import { type ReactNode, useEffect } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import type { ImpossibleTold, WeekAsked } from "../menu/reasoning/Told.ts";
import { useWeekAsked } from "../menu/reasoning/useWeekAsked.ts";
import type { NoneAsked } from "../menu/reasoning/whyNone.ts";
import { Thinking } from "../menu/Thinking.tsx";
import { useAnswer } from "../menu/useAnswer.ts";
import { WaysOut } from "../menu/WaysOut.tsx";
import { useFurther } from "../words/useFurther.ts";

interface WhyNoneProps {
  /** The week that could not be planned again. */
  readonly week: WeekPlan;
  /** What was asked of it; the same list for the same question. */
  readonly asked: readonly WeekChange[];
  /** A dish that is to leave one of its sittings; the same for the same question. */
  readonly leaves?: NoneAsked["leaves"];
  /** The question in other kitchens; absent = as the week was planned in. */
  readonly adapt?: ((asked: WeekAsked) => WeekAsked) | undefined;
  /** A pack that the kitchen does not have yet and that may be bought. */
  readonly pack?: Pack | undefined;
  /** What the button says that takes a week which a longer search found after all. */
  readonly take: string;
  readonly onTake: (week: WeekPlan) => void;
  /** The limits were loosened: the same can be asked again; a week that does with them is there in case no nearer one is found. */
  readonly onAgain: (found: WeekPlan | undefined) => void;
}

/** Why a week can't be planned again as it was asked, and how little would have to give way; what is set is asked again at once. */
export default function WhyNone({
  week,
  asked,
  leaves,
  adapt = (own) => own,
  pack,
  take,
  onTake,
  onAgain,
}: WhyNoneProps): ReactNode {
  const { further } = useFurther("menu", "impossible");
  const { session, view } = useKitchen();
  const { toAsked } = useWeekAsked(week);
  const { answering, ask, stop } = useAnswer<ImpossibleTold>();
  const { impossible } = further;
  // biome-ignore lint/correctness/useExhaustiveDependencies: asked once for every question that has no plan.
  useEffect(
    () =>
      ask(async (reasoner) =>
        reasoner.explainRest(adapt(await toAsked()), { asked, leaves, now: view.edited, day: view.day }, pack),
      ),
    [week, asked, leaves, pack],
  );
  const change = async (
    turn: (kitchen: EditedKitchen) => EditedKitchen,
    found: WeekPlan | undefined,
  ): Promise<void> => {
    await session.edit(turn);
    onAgain(found);
  };
  const told = answering.kind === "answered" ? answering.answer : undefined;
  return (
    <div className="stack tight why-none">
      <Thinking answering={answering} onStop={stop} said={impossible.asking} />
      {told !== undefined && (
        <>
          <WaysOut told={told} take={take} onTake={onTake} onChange={(turn, found) => void change(turn, found)} />
          {told.kind !== "possible" && <p className="small soft">{impossible.limitsNote}</p>}
        </>
      )}
    </div>
  );
}

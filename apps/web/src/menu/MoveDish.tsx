import type { WeekPlan } from "halfloaf/kitchen";
import { type ReactNode, useEffect, useId, useMemo, useState } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useNames } from "../kitchen/useNames.ts";
import { Awaited } from "../loading/Awaited.tsx";
import { lazily } from "../loading/lazily.ts";
import { useFurther } from "../words/useFurther.ts";
import type { MoveTold } from "./reasoning/Told.ts";
import { toWish } from "./reasoning/toWish.ts";
import { useWeekAsked } from "./reasoning/useWeekAsked.ts";
import { Thinking } from "./Thinking.tsx";
import { tellMove } from "./tellMove.ts";
import { useAnswer } from "./useAnswer.ts";

const WhyNone = lazily(() => import("../thinking/WhyNone.tsx"));

interface MoveDishProps {
  readonly week: WeekPlan;
  readonly sitting: number;
  /** The sitting that is asked about from the start; absent = none. */
  readonly to?: number | undefined;
  readonly onOffer: (week: WeekPlan) => void;
  readonly onLeave: () => void;
}

/** Another sitting for a dish, by keyboard: arrows go through the sittings, each told with its cost before the move. */
export function MoveDish({ week, sitting, to, onOffer, onLeave }: MoveDishProps): ReactNode {
  const { words, further, formats } = useFurther("menu");
  const { view } = useKitchen();
  const names = useNames();
  const group = useId();
  const [target, setTarget] = useState<number>();
  const { answering, told, ask, stop } = useAnswer<MoveTold>();
  const { toAsked, isThen } = useWeekAsked(week);
  const fits = view.tables.dishes.find(({ id }) => id === week.sittings[sitting]?.dish)?.fits;
  const isFit = (kind: WeekPlan["sittings"][number]["kind"]): boolean => fits?.includes(kind) ?? true;
  const at = (position: number): string => {
    const { date, kind } = week.sittings[position] as WeekPlan["sittings"][number];
    return further.week.at(formats.day(date), words.sittings[kind]);
  };
  const question = useMemo(() => {
    const dish = week.sittings[sitting]?.dish;
    const wish = target === undefined || dish === undefined ? undefined : toWish(week, target, dish);
    return wish && { to: target as number, asked: [wish], leaves: { dish: wish.dish, from: sitting } };
  }, [week, sitting, target]);
  const choose = (position: number): void => {
    setTarget(position);
    ask(async (reasoner, tell) => reasoner.move(await toAsked(), sitting, position, view.day, tell));
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: asked once for every sitting that comes from without.
  useEffect(() => (to === undefined ? undefined : choose(to)), [to]);
  return (
    <form
      className="stack tight"
      onSubmit={(event) => {
        event.preventDefault();
        if (told?.kind === "fits") onOffer(told.week);
      }}
      onKeyDown={(event) => event.key === "Escape" && onLeave()}
    >
      <p className="small soft">{further.week.moveHow}</p>
      <fieldset className="group">
        <legend className="unseen">{further.week.move}</legend>
        <div className="move-targets">
          {week.sittings.map(({ dish, ...other }, position) =>
            position === sitting || !isFit(other.kind) || other.date < view.day ? null : (
              <label key={[other.date, other.kind, ...other.eaters].join()} className="tick">
                <input type="radio" name={group} checked={position === target} onChange={() => choose(position)} />
                <span>
                  {at(position)} <span className="small soft">{names.dish(dish)}</span>
                </span>
              </label>
            ),
          )}
        </div>
      </fieldset>
      {target !== undefined && (
        <Thinking answering={answering} onStop={stop} said={further.week.moveWait(at(target))} />
      )}
      {target !== undefined && told !== undefined && (
        <p role="status">
          {tellMove(told, at(target), week.currency, further, formats)} {isThen && further.week.moveThen}
        </p>
      )}
      {question !== undefined && answering.kind === "answered" && told?.kind === "breaks" && (
        <Awaited>
          <WhyNone
            week={week}
            {...question}
            take={further.week.moveHere}
            onTake={onOffer}
            onAgain={(found) => (found === undefined ? choose(question.to) : onOffer(found))}
          />
        </Awaited>
      )}
      <div className="row">
        <button type="submit" className="button main" disabled={told?.kind !== "fits"}>
          {further.week.moveHere}
        </button>
        <button type="button" className="button" onClick={onLeave}>
          {further.cancel}
        </button>
      </div>
    </form>
  );
}

import type { Dish } from "halfloaf/dish";
import type { Kitchen, WeekPlan } from "halfloaf/kitchen";
import { type ReactNode, useMemo, useState } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useNames } from "../kitchen/useNames.ts";
import { Awaited } from "../loading/Awaited.tsx";
import { lazily } from "../loading/lazily.ts";
import { useFurther } from "../words/useFurther.ts";
import { FindDish } from "./FindDish.tsx";
import type { MoveTold, WeekAsked } from "./reasoning/Told.ts";
import { toWish } from "./reasoning/toWish.ts";
import { useWeekAsked } from "./reasoning/useWeekAsked.ts";
import { Thinking } from "./Thinking.tsx";
import { tellExtra } from "./tellExtra.ts";
import { tellHindrance } from "./tellHindrance.ts";
import { useAnswer } from "./useAnswer.ts";

const WhyNone = lazily(() => import("../thinking/WhyNone.tsx"));

interface WantDishProps {
  readonly week: WeekPlan;
  /** Position of the sitting that is to have another dish. */
  readonly sitting: number;
  readonly onOffer: (week: WeekPlan) => void;
  readonly onLeave: () => void;
}

/** Any dish of the kitchen in place of the one at a sitting, told with what it costs before it is had. */
export default function WantDish({ week, sitting, onOffer, onLeave }: WantDishProps): ReactNode {
  const { further, formats } = useFurther("menu", "work");
  const { view } = useKitchen();
  const names = useNames();
  const [dish, setDish] = useState<string>();
  const { answering, told, ask, stop } = useAnswer<MoveTold>();
  const { toAsked, isThen } = useWeekAsked(week);
  const { other } = further;
  const planned = week.sittings[sitting];
  const dishes = useMemo(
    () => view.tables.dishes.filter(({ id, fits }) => planned && fits.includes(planned.kind) && id !== planned.dish),
    [view.tables.dishes, planned],
  );
  const adaptTo =
    (id: string) =>
    (of: WeekAsked): WeekAsked => ({
      ...of,
      kitchens: of.kitchens.map((kitchen) => withLater(kitchen, view.kitchen, id)),
    });
  const adapt = dish === undefined ? undefined : adaptTo(dish);
  const asked = useMemo(
    () => (dish === undefined ? [] : [toWish(week, sitting, dish) ?? []].flat()),
    [week, sitting, dish],
  );
  const choose = (id: string): void => {
    setDish(id);
    ask(async (reasoner, tell) =>
      reasoner.want(adaptTo(id)(await toAsked()), { dish: id, to: sitting }, view.day, tell),
    );
  };
  return (
    <form
      className="stack tight want"
      onSubmit={(event) => {
        event.preventDefault();
        if (told?.kind === "fits") onOffer(told.week);
      }}
      onKeyDown={(event) => event.key === "Escape" && onLeave()}
    >
      <p className="small soft">{other.how}</p>
      <FindDish dishes={dishes} chosen={dish} onChoose={choose} />
      {dish !== undefined && <Thinking answering={answering} onStop={stop} said={other.wait(names.dish(dish))} />}
      {dish !== undefined && told !== undefined && (
        <p role="status" className="told">
          {tell(told, dish)} {isThen && further.week.moveThen}
        </p>
      )}
      {dish !== undefined && answering.kind === "answered" && told?.kind === "breaks" && (
        <Awaited>
          <WhyNone
            week={week}
            asked={asked}
            adapt={adapt}
            take={other.have}
            onTake={onOffer}
            onAgain={(found) => (found === undefined ? choose(dish) : onOffer(found))}
          />
        </Awaited>
      )}
      <div className="row">
        <button type="submit" className="button main" disabled={told?.kind !== "fits"}>
          {other.have}
        </button>
        <button type="button" className="button" onClick={onLeave}>
          {further.cancel}
        </button>
      </div>
    </form>
  );

  function tell(answer: MoveTold, id: string): string {
    const title = names.dish(id);
    if (answer.kind === "breaks") return other.breaks(title);
    if (answer.kind === "unfit") return other.unfit(title, tellHindrance(answer.hindrance, further, formats, names));
    const cost = tellExtra(answer.extraMinor, week.currency, further, formats);
    return other.cost(title, `${cost}, ${further.week.changes(answer.changed.length)}`);
  }
}

/** A kitchen of then with a dish that was written since, and the foods of the kitchen's own that go into it. */
function withLater(then: Kitchen, now: Kitchen, id: string): Kitchen {
  const isNew = (dish: Dish): boolean => dish.id === id && then.dishes.every((known) => known.id !== id);
  const dishes = now.dishes.filter(isNew);
  if (dishes.length === 0) return then;
  const foods = now.foods.filter((food) => then.foods.every((known) => known.id !== food.id));
  return { ...then, dishes: [...then.dishes, ...dishes], foods: [...then.foods, ...foods] };
}

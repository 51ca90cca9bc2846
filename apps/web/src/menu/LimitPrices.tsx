import type { WeekPlan } from "halfloaf/kitchen";
import { type ReactNode, useState } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useNames } from "../kitchen/useNames.ts";
import { useFurther } from "../words/useFurther.ts";
import type { LimitPrice } from "./reasoning/Told.ts";
import { useWeekAsked } from "./reasoning/useWeekAsked.ts";
import { Thinking } from "./Thinking.tsx";
import { useAnswer } from "./useAnswer.ts";

/** What each limit costs that a menu comes up to: loosened by itself by a natural step, and what that saves at least. */
export default function LimitPrices({ week }: { readonly week: WeekPlan }): ReactNode {
  const { further } = useFurther("menu");
  const { view } = useKitchen();
  const { toAsked } = useWeekAsked(week);
  const { answering, ask, stop } = useAnswer<readonly LimitPrice[] | "behind">();
  const { limitPrices: said } = further;
  const [asked, setAsked] = useState<WeekPlan>();
  // What was told of another menu means nothing for this one.
  const isOfWeek = asked === week;
  const told = isOfWeek && answering.kind === "answered" ? answering.answer : undefined;
  const find = (): void => {
    setAsked(week);
    ask(async (reasoner) => reasoner.limits(await toAsked(), view.day));
  };
  return (
    <>
      <p className="small soft">{said.note}</p>
      {(!isOfWeek || answering.kind !== "thinking") && (
        <div>
          <button type="button" className="button main" onClick={find}>
            {said.find}
          </button>
        </div>
      )}
      {isOfWeek && <Thinking answering={answering} onStop={stop} />}
      {told === "behind" && <p role="status">{said.behind}</p>}
      {told !== undefined && told !== "behind" && (
        <>
          <p role="status">{told.length === 0 ? said.none : said.count(told.length)}</p>
          <ul className="lines">
            {told.map((price) => (
              <li key={JSON.stringify(price)}>
                <Price price={price} currency={week.currency} />
              </li>
            ))}
          </ul>
          <p className="small soft">{further.week.worth}</p>
        </>
      )}
    </>
  );
}

/** One limit: by how much it was loosened, where, and what that saves. */
function Price({ price, currency }: { readonly price: LimitPrice; readonly currency: string }): ReactNode {
  const { further, formats, words } = useFurther("menu");
  const names = useNames();
  const { limitPrices: said } = further;
  const { kind, step, savesMinor, date, sitting, shop } = price;
  const where = [
    ...(date === undefined ? [] : [formats.day(date)]),
    ...(sitting === undefined ? [] : [words.sittings[sitting]]),
    ...(shop === undefined ? [] : [names.shop(shop)]),
  ].join(", ");
  const amounts = {
    budget: () => formats.money(step, currency),
    "hands-on": () => formats.minutes(step),
    elapsed: () => formats.minutes(step),
    energy: () => formats.number(100 * step),
    carry: () => formats.mass(step),
  } as Partial<Record<LimitPrice["kind"], () => string>>;
  const amount = amounts[kind]?.() ?? formats.number(step);
  const saves = Math.floor(savesMinor);
  return (
    <>
      <strong>{saves > 0 ? said.saves(formats.money(saves, currency)) : said.savesNothing}</strong>:{" "}
      {said.loosened[kind](amount)}
      {where !== "" && ` (${where})`}
    </>
  );
}

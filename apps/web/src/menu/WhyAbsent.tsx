import type { WeekPlan } from "halfloaf/kitchen";
import { type ReactNode, useState } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useNames } from "../kitchen/useNames.ts";
import { useFurther } from "../words/useFurther.ts";
import { FindDish } from "./FindDish.tsx";
import type { AbsenceTold, Seat, TryTold } from "./reasoning/Told.ts";
import { useWeekAsked } from "./reasoning/useWeekAsked.ts";
import { ShowWeek } from "./ShowWeek.tsx";
import { Thinking } from "./Thinking.tsx";
import { tellExtra } from "./tellExtra.ts";
import { tellHindrance } from "./tellHindrance.ts";
import { useAnswer } from "./useAnswer.ts";

interface WhyAbsentProps {
  readonly week: WeekPlan;
  readonly onOffer: (week: WeekPlan) => void;
}

/** Why a dish is on no plate of a menu: what hinders it, or what it would cost where it could be. */
export default function WhyAbsent({ week, onOffer }: WhyAbsentProps): ReactNode {
  const { further, words, formats } = useFurther("menu", "work", "impossible");
  const { view } = useKitchen();
  const names = useNames();
  const { toAsked, isThen } = useWeekAsked(week);
  const { answering, told: answer, ask, stop } = useAnswer<AbsenceTold>();
  const [asked, setAsked] = useState<{ readonly week: WeekPlan; readonly dish: string }>();
  const { other } = further;
  // What was told of another menu means nothing for this one.
  const dish = asked?.week === week ? asked.dish : undefined;
  const told = dish === undefined ? undefined : answer;
  const choose = (id: string): void => {
    setAsked({ week, dish: id });
    ask(async (reasoner, tell) => reasoner.whyNotThere(await toAsked(), id, tell));
  };
  const at = ({ date, kind }: Seat): string => further.week.at(formats.day(date), words.sittings[kind]);
  return (
    <>
      <p className="small soft">{other.absentNote}</p>
      <FindDish dishes={view.tables.dishes} chosen={dish} onChoose={choose} />
      {dish !== undefined && <Thinking answering={answering} onStop={stop} />}
      {dish !== undefined && told !== undefined && (
        <div className="stack tight absent" role="status">
          <h3>{names.dish(dish)}</h3>
          {isThen && <p className="small soft">{further.week.asThen}</p>}
          {told.kind === "served" && <p>{other.served(told.at.map(at).join("; "))}</p>}
          {told.kind === "nowhere" && <p>{other.nowhere}</p>}
          {told.kind === "absent" && (
            <ul className="lines">
              {told.tries.map((tried) => (
                <li key={at(tried.seat)} className="line-with-ways">
                  <span>
                    {at(tried.seat)}: {tell(tried)}
                  </span>
                  {tried.kind === "fits" && <ShowWeek week={tried.week} title={at(tried.seat)} onOffer={onOffer} />}
                </li>
              ))}
            </ul>
          )}
          {told.kind === "absent" && told.tries.some(({ kind }) => kind === "fits") && (
            <p className="small soft">{further.week.worth}</p>
          )}
        </div>
      )}
    </>
  );

  function tell(tried: TryTold): string {
    if (tried.kind === "hindered") return tellHindrance(tried.hindrance, further, formats, names);
    if (tried.kind === "breaks")
      return other.breaksLimits(tried.limits.map((limit) => further.impossible.limits[limit]).join(", "));
    const cost = tellExtra(tried.extraMinor, week.currency, further, formats);
    return `${cost}, ${further.week.changes(tried.changed.length)}`;
  }
}

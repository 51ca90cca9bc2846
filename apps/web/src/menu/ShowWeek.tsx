import type { WeekPlan } from "halfloaf/kitchen";
import type { ReactNode } from "react";
import { PlatesAgainst } from "../thinking/PlatesAgainst.tsx";
import { usePlatesAgainst } from "../thinking/WeekBehind.tsx";
import { useFurther } from "../words/useFurther.ts";

interface ShowWeekProps {
  readonly week: WeekPlan;
  /** What tells this menu from others that can be shown; absent = what stands before it does. */
  readonly title?: string;
  readonly onOffer: (week: WeekPlan) => void;
}

/**
 * The way to another week that reasons were told with. They may be of the kitchen as it was when the menu was accepted, so that a
 * week with a plate that is against what its eater takes by now is not offered, and is said to be so.
 */
export function ShowWeek({ week, title, onOffer }: ShowWeekProps): ReactNode {
  const { further } = useFurther("menu", "mended");
  const against = usePlatesAgainst(week);
  if (against.length === 0)
    return (
      <button type="button" className="button" onClick={() => onOffer(week)}>
        {further.week.showIt}
        {title !== undefined && <span className="unseen"> {title}</span>}
      </button>
    );
  return (
    <div className="small stack tight">
      <p>{further.week.notShown}</p>
      <PlatesAgainst against={against} named={1} />
    </div>
  );
}

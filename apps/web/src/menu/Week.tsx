import type { WeekPlan } from "halfloaf/kitchen";
import { type ReactNode, useState } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useNames } from "../kitchen/useNames.ts";
import { Awaited } from "../loading/Awaited.tsx";
import { lazily } from "../loading/lazily.ts";
import { useFurther } from "../words/useFurther.ts";
import type { Lit } from "./Lit.ts";
import { PrintedWeek } from "./PrintedWeek.tsx";
import { Ribbons } from "./Ribbons.tsx";
import { RibbonTable } from "./RibbonTable.tsx";
import { tellMove } from "./tellMove.ts";
import { useMoving } from "./useMoving.ts";

const DishPanel = lazily(() => import("./DishPanel.tsx"));
const PackPanel = lazily(() => import("./PackPanel.tsx"));
const Boxes = lazily(() => import("./Boxes.tsx"));

interface WeekProps {
  readonly week: WeekPlan;
  /** Another week is to be shown and may be taken. */
  readonly onOffer: (week: WeekPlan) => void;
}

/** A week as ribbons and as a table, with what is known of the plate or pack that is touched. */
export function Week({ week, onOffer }: WeekProps): ReactNode {
  const { words, further, formats } = useFurther("menu");
  const { view } = useKitchen();
  const names = useNames();
  const [touched, setTouched] = useState<{ readonly week: WeekPlan; readonly lit: Lit; readonly moveTo?: number }>();
  // What was touched in another week means nothing in this one.
  const { lit, moveTo } = touched?.week === week ? touched : {};
  const onLight = (next: Lit): void => setTouched({ week, lit: next });
  const { moving, over, drop } = useMoving(week, onOffer, (sitting, moveTo) => {
    const batch = week.sittings[sitting]?.batch;
    if (batch !== undefined) setTouched({ week, lit: { batch, sitting }, moveTo });
  });
  const shared = {
    week,
    foods: view.tables.foods,
    nameOf: names.food,
    titleOf: names.dish,
    lit,
    onLight,
  };
  const at = (position: number): string => {
    const { date, kind } = week.sittings[position] as WeekPlan["sittings"][number];
    return further.week.at(formats.day(date), words.sittings[kind]);
  };
  return (
    <>
      <Ribbons {...shared} today={view.day} onOver={over} onDrop={drop} />
      {moving !== undefined && (
        <p className="moving" role="status">
          {moving.told === undefined
            ? further.week.moveWait(at(moving.over))
            : tellMove(moving.told, at(moving.over), week.currency, further, formats)}
        </p>
      )}
      {lit !== undefined && "batch" in lit && (
        <Awaited>
          <DishPanel
            key={`${lit.sitting} ${moveTo}`}
            week={week}
            sitting={lit.sitting}
            moveTo={moveTo}
            onOffer={onOffer}
            onClose={() => onLight(undefined)}
          />
        </Awaited>
      )}
      {lit !== undefined && "lot" in lit && (
        <Awaited>
          <PackPanel key={lit.lot} week={week} lot={lit.lot} onOffer={onOffer} onClose={() => onLight(undefined)} />
        </Awaited>
      )}
      {week.boxes !== undefined && (
        <Awaited isQuiet>
          <Boxes boxes={week.boxes} currency={week.currency} />
        </Awaited>
      )}
      <PrintedWeek week={week} />
      <RibbonTable {...shared} />
    </>
  );
}

import type { WeekPlan } from "halfloaf/kitchen";
import type { ReactNode } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useNames } from "../kitchen/useNames.ts";
import { Awaited } from "../loading/Awaited.tsx";
import { lazily } from "../loading/lazily.ts";
import { Allowed } from "../sharing/Allowed.tsx";
import { RoleNote } from "../sharing/RoleNote.tsx";
import { useFurther } from "../words/useFurther.ts";
import type { DishSwap } from "./compareWeeks.ts";
import type { Mending } from "./useMending.ts";
import type { WeekMended } from "./WeekMender.ts";

const WhyNone = lazily(() => import("./WhyNone.tsx"));

interface MendedWeekProps {
  readonly mending: Mending;
  /** What is said where nothing changes. */
  readonly same: string;
  /** What the button says that takes a week in which nothing changes; absent = it need not be taken. */
  readonly keep?: string | undefined;
  /** Takes the new week; the old one is kept by whatever else can be touched. */
  readonly onAccept: (week: WeekPlan) => void;
  /** Asks the same again, once limits were loosened; a week that does with them is there in case no nearer one is found. */
  readonly onAgain: (found: WeekPlan | undefined) => void;
}

/** What planning the week again came to: what stays, what changes and why, what it costs; and the way to take it. */
export function MendedWeek({ mending, same, keep, onAccept, onAgain }: MendedWeekProps): ReactNode {
  const { further } = useFurther("mended");
  const { mended } = further;
  if (mending.kind === "idle") return null;
  if (mending.kind === "busy") return <p className="soft">{mended.busy}</p>;
  if (mending.kind === "failed") return <p className="caution">{mended.failed}</p>;
  const { answer } = mending;
  if (answer.kind === "none")
    return (
      <div className="stack tight">
        <p className="caution">{mended.none}</p>
        <None mending={mending} onAccept={onAccept} onAgain={onAgain} />
      </div>
    );
  if (answer.kind === "unfit") return <p className="caution">{mended.unfit}</p>;
  const isSame = answer.kept && answer.buying.length === 0;
  const take = isSame ? keep : mended.accept;
  return (
    <div className="stack tight">
      <p>
        <b>{isSame ? same : answer.kept ? mended.sameDishes : mended.otherDishes(answer.dishes.length)}</b>
      </p>
      {answer.dishes.length > 0 && (
        <ul className="lines close">
          {answer.dishes.map((swap) => (
            <li key={`${swap.date} ${swap.sitting} ${swap.from}`}>
              <Swap swap={swap} />
            </li>
          ))}
        </ul>
      )}
      <Buying answer={answer} />
      {take !== undefined && (
        <Allowed to="menu-accepted" otherwise={<RoleNote />}>
          <div className="row">
            <button type="button" className="button main" onClick={() => onAccept(answer.week)}>
              {take}
            </button>
          </div>
        </Allowed>
      )}
    </div>
  );
}

type NoneProps = Pick<MendedWeekProps, "onAccept" | "onAgain"> & {
  readonly mending: Extract<Mending, { kind: "answered" }>;
};

function None({ mending, onAccept, onAgain }: NoneProps): ReactNode {
  const { mended } = useFurther("mended").further;
  const { view } = useKitchen();
  if (view.menu === undefined) return null;
  return (
    <Awaited isQuiet>
      <WhyNone
        week={view.menu.week}
        asked={mending.asked}
        pack={mending.pack}
        take={mended.accept}
        onTake={onAccept}
        onAgain={onAgain}
      />
    </Awaited>
  );
}

function Swap({ swap }: { readonly swap: DishSwap }): ReactNode {
  const { further, formats, words } = useFurther("mended");
  const { view } = useKitchen();
  const names = useNames();
  const { mended } = further;
  const by = swap.byMinor === undefined ? undefined : formats.money(swap.byMinor, view.kitchen.currency);
  const why = swap.why === "dearer" ? by && mended.dearer(by) : swap.why && mended.why[swap.why];
  return (
    <>
      {formats.day(swap.date)}, {words.sittings[swap.sitting]}: <b>{names.dish(swap.to)}</b>
      <div className="small soft">
        {mended.insteadOf(names.dish(swap.from))}
        {why && `; ${why}`}
      </div>
    </>
  );
}

function Buying({ answer }: { readonly answer: Extract<WeekMended, { kind: "planned" }> }): ReactNode {
  const { further, formats } = useFurther("mended");
  const { view } = useKitchen();
  const names = useNames();
  const { mended } = further;
  const money = (minor: number): string => formats.money(minor, view.kitchen.currency);
  return (
    <>
      {answer.buying.length > 0 && (
        <ul className="lines close small">
          {answer.buying.map(({ pack, label, shop, before, after }) => (
            <li key={pack}>
              {after > before ? mended.more(after - before, label) : mended.fewer(before - after, label)}
              <span className="soft"> {names.shop(shop)}</span>
            </li>
          ))}
        </ul>
      )}
      <p className="small soft">{mended.tills(money(answer.tillAfterMinor), money(answer.tillBeforeMinor))}</p>
    </>
  );
}

import type { WeekPlan } from "halfloaf/kitchen";
import type { ReactNode } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useNames } from "../kitchen/useNames.ts";
import { useFurther } from "../words/useFurther.ts";
import type { PackReason, PackWay } from "./reasoning/Told.ts";
import { useWeekAsked } from "./reasoning/useWeekAsked.ts";
import { ShowWeek } from "./ShowWeek.tsx";
import { Thinking } from "./Thinking.tsx";
import { tellExtra } from "./tellExtra.ts";
import { useAnswer } from "./useAnswer.ts";
import { useFocus } from "./useFocus.ts";

interface PackPanelProps {
  readonly week: WeekPlan;
  /** Id of the lot that was touched. */
  readonly lot: string;
  readonly onOffer: (week: WeekPlan) => void;
  readonly onClose: () => void;
}

/** A pack of the week: what it cost, what becomes of it, and why it is this pack. */
export default function PackPanel({ week, lot: id, onOffer, onClose }: PackPanelProps): ReactNode {
  const { words, further, formats } = useFurther("menu");
  const names = useNames();
  const { answering, ask, stop } = useAnswer<PackReason>();
  const { toAsked, isThen } = useWeekAsked(week);
  const panel = useFocus();
  const lot = week.lots.find((each) => each.id === id);
  if (lot === undefined) return null;
  const { food, from, massG, costMinor, keepsUntil, openedOn, leftG, wastedG } = lot;
  const boughtOn = week.trips.find(({ lines }) => lines.some((line) => id.startsWith(line.pack)))?.date;
  const facts = [
    from === "stores" || boughtOn === undefined ? further.week.fromStores : further.week.bought(formats.day(boughtOn)),
    ...(openedOn === undefined ? [] : [further.week.open(formats.day(openedOn))]),
    ...(keepsUntil === undefined ? [] : [further.week.keeps(formats.day(keepsUntil))]),
  ];
  const dishes = week.batches.filter(({ uses }) => uses.some((use) => use.lot === id)).map(({ dish }) => dish);
  const end = wastedG > 0 ? "wasted" : leftG > 0 ? "carried" : "finished";
  return (
    <section ref={panel} tabIndex={-1} className="sheet stack tight panel" aria-label={names.food(food)}>
      <div>
        <p className="small soft">{facts.join(", ")}</p>
        <h2>
          {names.food(food)}, {formats.mass(massG)}
        </h2>
      </div>
      <p>
        {formats.money(costMinor, week.currency)}; {words.menu.ends[end](formats.mass(wastedG > 0 ? wastedG : leftG))}
      </p>
      <p>
        {further.week.feeds}: {[...new Set(dishes)].map((dish) => names.dish(dish)).join(", ")}
      </p>
      <div className="row">
        {from === "bought" && (
          <button
            type="button"
            className="button"
            onClick={() => ask(async (reasoner) => reasoner.whyPack(await toAsked(), food))}
          >
            {further.week.whyPack}
          </button>
        )}
        <button type="button" className="button" onClick={onClose}>
          {further.week.close}
        </button>
      </div>
      <Thinking answering={answering} onStop={stop} />
      {answering.kind === "answered" && answering.answer !== undefined && (
        <>
          {isThen && <p className="small soft">{further.week.asThen}</p>}
          <Reason reason={answering.answer} currency={week.currency} onOffer={onOffer} />
        </>
      )}
    </section>
  );
}

interface ReasonProps {
  readonly reason: PackReason;
  readonly currency: string;
  readonly onOffer: (week: WeekPlan) => void;
}

function Reason({ reason, currency, onOffer }: ReasonProps): ReactNode {
  const { further, formats } = useFurther("menu");
  const { view } = useKitchen();
  const names = useNames();
  const packs = new Map(view.edited.packs.map((pack) => [pack.id, pack]));
  const nameOf = (id: string): string => {
    const pack = packs.get(id);
    return pack === undefined ? id : `${pack.label}, ${names.shop(pack.shop)}`;
  };
  const tell = (way: PackWay): string =>
    [
      way.packs.map(({ pack, count }) => `${count} × ${nameOf(pack)}`).join(" + "),
      further.week.till(formats.money(way.tillMinor, currency)),
      ...(way.leftG >= 1 ? [further.week.left(formats.mass(way.leftG))] : []),
      ...(way.wasteG >= 1 ? [further.week.wasted(formats.mass(way.wasteG))] : []),
      ...(way.extraShops.length > 0
        ? [further.week.alsoShop(way.extraShops.map((shop) => names.shop(shop)).join(", "))]
        : []),
    ].join("; ");
  return (
    <>
      <p>
        {further.week.asPlanned}: {tell(reason.chosen)}.
      </p>
      <h3>{further.week.otherPacks}</h3>
      <ul className="lines">
        {reason.others.map((other) => (
          <li key={JSON.stringify(other.packs)} className="line-with-ways two-ways">
            <span>
              <strong>{tellExtra(other.extraMinor, currency, further, formats)}</strong>: {tell(other)}
            </span>
            <span className="row">
              <ShowWeek week={other.week} onOffer={onOffer} />
            </span>
          </li>
        ))}
        {reason.impossible.map(({ pack, hindrance }) => (
          <li key={pack}>
            {nameOf(pack)}: {further.week.hindrances[hindrance]}
          </li>
        ))}
      </ul>
      <p className="small soft">{further.week.worth}</p>
    </>
  );
}

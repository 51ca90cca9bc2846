import type { WeekPlan } from "halfloaf/kitchen";
import { type ReactNode, useRef, useState } from "react";
import { Link } from "wouter";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useNames } from "../kitchen/useNames.ts";
import { Awaited } from "../loading/Awaited.tsx";
import { lazily } from "../loading/lazily.ts";
import { useFurther } from "../words/useFurther.ts";
import { MoveDish } from "./MoveDish.tsx";
import type { DishReason, Instead } from "./reasoning/Told.ts";
import { useWeekAsked } from "./reasoning/useWeekAsked.ts";
import { ShowWeek } from "./ShowWeek.tsx";
import { Thinking } from "./Thinking.tsx";
import { tellExtra } from "./tellExtra.ts";
import { useAnswer } from "./useAnswer.ts";
import { useFocus } from "./useFocus.ts";

const WantDish = lazily(() => import("./WantDish.tsx"));

/** What is done to the plate: moved to another sitting, or another dish put in its place. */
type Doing = "move" | "want";

interface DishPanelProps {
  readonly week: WeekPlan;
  /** Position of the sitting that was touched. */
  readonly sitting: number;
  /** The sitting that its dish was let go over and can't simply be moved to; absent = none. */
  readonly moveTo?: number | undefined;
  readonly onOffer: (week: WeekPlan) => void;
  readonly onClose: () => void;
}

/** A plate of the week: what it is, why it is there, and where else it could be. */
export default function DishPanel({ week, sitting, moveTo, onOffer, onClose }: DishPanelProps): ReactNode {
  const { words, further, formats } = useFurther("menu");
  const { view } = useKitchen();
  const names = useNames();
  const [doing, setDoing] = useState<Doing | undefined>(moveTo === undefined ? undefined : "move");
  const { answering, ask, stop } = useAnswer<DishReason>();
  const { toAsked, isThen } = useWeekAsked(week);
  const panel = useFocus();
  const buttons = { move: useRef<HTMLButtonElement>(null), want: useRef<HTMLButtonElement>(null) };
  const planned = week.sittings[sitting];
  if (planned === undefined) return null;
  const { date, kind, dish, portions, elapsedMinutes, plateMinor, leftover, eaters } = planned;
  const putBy = week.batches[planned.batch]?.putBy;
  const money = formats.money(
    plateMinor.reduce((sum, each) => sum + each, 0),
    week.currency,
  );
  const leave = (): void => {
    setDoing(undefined);
    // What had the focus goes with the form.
    if (doing !== undefined) buttons[doing].current?.focus();
  };
  const ways = [
    ["move", further.week.move],
    ["want", further.other.want],
  ] as const;
  return (
    <section ref={panel} tabIndex={-1} className="sheet stack tight panel" aria-label={names.dish(dish)}>
      <div>
        <p className="small soft">{further.week.at(formats.longDay(date), words.sittings[kind])}</p>
        <h2>{names.dish(dish)}</h2>
      </div>
      <p>
        {further.week.facts(portions, formats.number(portions), formats.minutes(elapsedMinutes), money)}
        {leftover && ` (${further.week.leftover})`}
        {putBy !== undefined && ` (${putBy === "fridge" ? further.later.fromFridge : further.later.fromFreezer})`}
      </p>
      <p className="small soft">
        {further.week.eaten}: {eaters.map((id) => names.eater(id)).join(", ")}
      </p>
      <div className="row">
        <button
          type="button"
          className="button"
          onClick={() => ask(async (reasoner) => reasoner.whyDish(await toAsked(), sitting))}
        >
          {further.week.why}
        </button>
        {/* What is over can't be changed any more. */}
        {date >= view.day &&
          ways.map(([way, label]) => (
            <button
              key={way}
              ref={buttons[way]}
              type="button"
              className="button"
              aria-pressed={doing === way}
              onClick={() => setDoing(doing === way ? undefined : way)}
            >
              {label}
            </button>
          ))}
        <Link href={`/dishes/${dish}`} className="button way">
          {further.week.toDish}
        </Link>
        <button type="button" className="button" onClick={onClose}>
          {further.week.close}
        </button>
      </div>
      {doing === "move" && <MoveDish week={week} sitting={sitting} to={moveTo} onOffer={onOffer} onLeave={leave} />}
      {doing === "want" && (
        <Awaited>
          <WantDish week={week} sitting={sitting} onOffer={onOffer} onLeave={leave} />
        </Awaited>
      )}
      <Thinking answering={answering} onStop={stop} />
      {answering.kind === "answered" && answering.answer !== undefined && (
        <>
          {isThen && <p className="small soft">{further.week.asThen}</p>}
          <Reason reason={answering.answer} asked={planned} week={week} onOffer={onOffer} />
        </>
      )}
    </section>
  );
}

/** Less than this of a food is not worth a word (g). */
const LEAST_G = 1;

interface ReasonProps {
  readonly reason: DishReason;
  readonly asked: WeekPlan["sittings"][number];
  readonly week: WeekPlan;
  readonly onOffer: (week: WeekPlan) => void;
}

function Reason({ reason, asked, week, onOffer }: ReasonProps): ReactNode {
  const { further, formats } = useFurther("menu");
  const names = useNames();
  const { shares, withoutHere, withoutAnywhere } = reason;
  const perishable = shares.filter(({ isLasting }) => !isLasting);
  const shared = perishable.filter(({ withDishes }) => withDishes.length > 0);
  const finished = perishable.filter(({ finishes }) => finishes).map(({ food }) => names.food(food));
  const groupByDishes = (all: DishReason["shares"]): Map<string, string[]> => {
    const groups = new Map<string, string[]>();
    for (const { food, withDishes } of all) {
      const dishes = withDishes.map((dish) => names.dish(dish)).join(", ");
      groups.set(dishes, [...new Set([...(groups.get(dishes) ?? []), food])]);
    }
    return groups;
  };
  const savedG = new Map<string, number>();
  for (const { food, savedFromWasteG } of perishable) savedG.set(food, (savedG.get(food) ?? 0) + savedFromWasteG);
  const saved = [...savedG]
    .filter(([, massG]) => massG >= LEAST_G)
    .map(([food, massG]) => `${formats.mass(massG)} ${names.food(food)}`);
  return (
    <>
      <ul className="lines close">
        {[...groupByDishes(shared)].map(([dishes, foods]) => (
          <li key={dishes}>{further.week.shares(foods.map((food) => names.food(food)).join(", "), dishes)}</li>
        ))}
        {finished.length > 0 && <li>{further.week.finishes([...new Set(finished)].join(", "))}</li>}
        {saved.length > 0 && <li>{further.week.saves(saved.join(", "))}</li>}
        {shared.length + finished.length + saved.length === 0 && <li>{further.week.nothing}</li>}
      </ul>
      <InsteadLine asked={asked} title={further.week.withoutHere} instead={withoutHere} week={week} onOffer={onOffer} />
      <InsteadLine
        asked={asked}
        title={further.week.withoutAnywhere}
        instead={withoutAnywhere}
        week={week}
        onOffer={onOffer}
      />
      <p className="small soft">{further.week.worth}</p>
    </>
  );
}

/** So many of the plates that change are named. */
const SHOWN = 4;

/** The plates that change, the one that was asked about before the others. */
function listFirst(changed: readonly number[], { sittings }: WeekPlan, asked: WeekPlan["sittings"][number]): number[] {
  const isAsked = (at: number): boolean => sittings[at]?.date === asked.date && sittings[at]?.kind === asked.kind;
  return changed.toSorted((a, b) => Number(isAsked(b)) - Number(isAsked(a)) || a - b).slice(0, SHOWN);
}

interface InsteadLineProps {
  readonly title: string;
  readonly asked: WeekPlan["sittings"][number];
  readonly instead: Instead | undefined;
  readonly week: WeekPlan;
  readonly onOffer: (week: WeekPlan) => void;
}

function InsteadLine({ title, asked, instead, week, onOffer }: InsteadLineProps): ReactNode {
  const { words, further, formats } = useFurther("menu");
  const names = useNames();
  if (instead === undefined)
    return (
      <p>
        {title}: {further.week.noneWithout}
      </p>
    );
  const { extraMinor, changed } = instead;
  return (
    <div className="stack tight">
      <p>
        {title}: <strong>{tellExtra(extraMinor, week.currency, further, formats)}</strong>,{" "}
        {further.week.changes(changed.length)}
      </p>
      <ul className="small">
        {listFirst(changed, instead.week, asked).map((at) => {
          const { date, kind, dish } = instead.week.sittings[at] as WeekPlan["sittings"][number];
          const when = further.week.at(formats.day(date), words.sittings[kind]);
          return <li key={at}>{further.week.instead(when, names.dish(dish))}</li>;
        })}
        {changed.length > SHOWN && <li>…</li>}
      </ul>
      <div>
        <ShowWeek week={instead.week} title={title} onOffer={onOffer} />
      </div>
    </div>
  );
}

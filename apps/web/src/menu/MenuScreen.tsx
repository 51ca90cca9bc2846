import type { WeekPlan } from "halfloaf/kitchen";
import { type ReactNode, useEffect, useState } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useWords } from "../words/WordsContext.tsx";
import { type Lit, Ribbons } from "./Ribbons.tsx";
import { RibbonTable } from "./RibbonTable.tsx";
import { type Planning, usePlanning } from "./usePlanning.ts";

const DAYS = 7;

/** What is eaten these days, and which pack feeds which plate. */
export default function MenuScreen(): ReactNode {
  const { words, formats } = useWords();
  const { session, view } = useKitchen();
  const { planning, plan, stop, forget } = usePlanning();
  useEffect(() => {
    // Whoever comes from making a kitchen has asked for a plan already; once is enough.
    if (!isPlanAsked(history.state)) return;
    history.replaceState(null, "");
    void plan(view.kitchen, view.day, DAYS);
  }, [plan, view]);
  const week = weekOf(planning) ?? view.menu?.week;
  const isBusy = planning.kind === "stating" || planning.kind === "searching";
  const accept = async (planned: WeekPlan): Promise<void> => {
    await session.write((pen) => [pen.write({ kind: "menu-accepted", on: view.day, week: planned })]);
    forget();
  };
  return (
    <div className="stack">
      <div className="row spread">
        <h1>{words.screens.menu}</h1>
        {isBusy ? (
          <button type="button" className="button" onClick={stop}>
            {words.menu.stop}
          </button>
        ) : (
          <button type="button" className="button main" onClick={() => void plan(view.kitchen, view.day, DAYS)}>
            {week === undefined ? words.menu.plan : words.menu.planAnew}
          </button>
        )}
      </div>
      <PlanningLine planning={planning} currency={view.kitchen.currency} />
      {planning.kind === "planned" && (
        <div className="row">
          <button type="button" className="button main" onClick={() => void accept(planning.week)}>
            {words.menu.accept}
          </button>
          <button type="button" className="button" onClick={forget}>
            {words.menu.leave}
          </button>
        </div>
      )}
      {week === undefined ? <p>{words.menu.none}</p> : <Week key={week.from} week={week} />}
      {week !== undefined && (
        <p className="soft">
          {words.menu.till(formats.money(week.accounts.tillMinor, week.currency))}{" "}
          {words.menu.plates(formats.money(week.accounts.platesMinor, week.currency))}
        </p>
      )}
    </div>
  );
}

function Week({ week }: { readonly week: WeekPlan }): ReactNode {
  const { view } = useKitchen();
  const [lit, setLit] = useState<Lit>();
  const { foods, dishes } = view.tables;
  const nameOf = (food: string): string => foods.get(food)?.names[view.kitchen.english][0] ?? titleOf(food);
  const titleOf = (dish: string): string => dishes.find(({ id }) => id === dish)?.title ?? dish;
  const shared = { week, foods, nameOf, titleOf, lit, onLight: setLit };
  return (
    <>
      <Ribbons {...shared} />
      <RibbonTable {...shared} />
    </>
  );
}

function PlanningLine({ planning, currency }: { readonly planning: Planning; readonly currency: string }): ReactNode {
  const { words, formats } = useWords();
  if (planning.kind === "idle") return null;
  const told = tell();
  return (
    <div className="stack tight" role="status">
      {planning.kind === "searching" && <progress max={1} value={planning.share} aria-label={words.menu.progress} />}
      <p>{told}</p>
    </div>
  );

  function tell(): string {
    if (planning.kind === "stating") return words.menu.stating;
    if (planning.kind === "none") return words.menu.impossible;
    if (planning.kind === "failed") return words.menu.failed(planning.reason);
    if (planning.kind === "idle") return "";
    const { gapMinor } = planning;
    const gap = gapMinor === undefined ? "" : words.menu.gap(formats.money(Math.ceil(gapMinor), currency));
    if (planning.kind === "planned") return `${words.menu.planned} ${gap}`;
    if (planning.costMinor === undefined) return words.menu.searching;
    const till = planning.week?.accounts.tillMinor;
    return `${till === undefined ? words.menu.searching : words.menu.best(formats.money(till, currency))} ${gap}`;
  }
}

function isPlanAsked(state: unknown): boolean {
  return typeof state === "object" && state !== null && "plan" in state;
}

function weekOf(planning: Planning): WeekPlan | undefined {
  return planning.kind === "searching" || planning.kind === "planned" ? planning.week : undefined;
}

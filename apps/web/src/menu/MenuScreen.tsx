import type { WeekPlan } from "halfloaf/kitchen";
import { type EditedKitchen, menuToCome } from "halfloaf/kitchen/record";
import { EFFORTS } from "halfloaf/menu";
import { addDays } from "halfloaf/quantity";
import { type ReactNode, useEffect, useMemo, useState } from "react";
import { Awaited } from "../loading/Awaited.tsx";
import { lazily } from "../loading/lazily.ts";
import "../kitchen/fields/fields.css";
import { ChoiceField } from "../kitchen/fields/ChoiceField.tsx";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { LazyFold } from "../kitchen/LazyFold.tsx";
import { Allowed } from "../sharing/Allowed.tsx";
import { RoleNote } from "../sharing/RoleNote.tsx";
import { PrintOrSave } from "../sheets/PrintOrSave.tsx";
import { useSittingTimes } from "../sheets/useSittingTimes.ts";
import type { DaysAsked } from "../thinking/stateAsked.ts";
import { useFurther } from "../words/useFurther.ts";
import { askDays } from "./askDays.ts";
import type { Planning } from "./Planning.ts";
import { PlanningLine } from "./PlanningLine.tsx";
import { AGAINST } from "./reasoning/Told.ts";
import { usePlanning } from "./usePlanning.ts";
import { Week } from "./Week.tsx";
import { Wishes } from "./wishes/Wishes.tsx";

const WeekBehind = lazily(() => import("../thinking/WeekBehind.tsx"));
const WeekSheets = lazily(() => import("../sheets/WeekSheets.tsx"));
const Choices = lazily(() => import("./Choices.tsx"));
const Impossible = lazily(() => import("./Impossible.tsx"));
const LimitPrices = lazily(() => import("./LimitPrices.tsx"));
const WhyAbsent = lazily(() => import("./WhyAbsent.tsx"));
const WishesMet = lazily(() => import("./wishes/WishesMet.tsx"));

/** Seeds of one planning after another are so far apart that the searches of one, each with a seed of its own, share none. */
const SEED_STEP = 100;
/** So many days ahead a plan may begin. */
const MOST_AHEAD = 7;

/** How many days can be planned at once. */
const STRETCHES = [1, 2, 3, 4, 5, 6, 7, 10, 14] as const;
const USUAL_DAYS = 7;

/** What is eaten these days, and which pack feeds which plate. */
export default function MenuScreen(): ReactNode {
  const { words, further, formats } = useFurther("menu");
  const { session, view } = useKitchen();
  const { planning, plan, stop, forget } = usePlanning();
  const [times] = useSittingTimes();
  const [asked, setAsked] = useState<DaysAsked>();
  const [days, setDays] = useState(USUAL_DAYS);
  const [ahead, setAhead] = useState(0);
  const [seed, setSeed] = useState(1);
  const [offered, setOffered] = useState<WeekPlan>();
  useEffect(() => {
    // Whoever comes from making a kitchen has asked for a plan already; once is enough.
    if (!isPlanAsked(history.state)) return;
    history.replaceState(null, "");
    const first = askDays(view.kitchen, view.day, USUAL_DAYS, times);
    setAsked(first);
    void plan(view.kitchen, { ...first, seed: 1, moves: EFFORTS.usual });
  }, [plan, view, times]);
  const kitchen = useMemo(() => ({ ...view.kitchen, startsOn: addDays(view.day, ahead) }), [view, ahead]);
  // A week that was taken for days to come is there to be seen before they begin.
  const toCome = useMemo(() => menuToCome(view.state, view.day), [view]);
  const [isToCome, setToCome] = useState(false);
  const kept = (isToCome ? toCome : undefined) ?? view.menu ?? toCome;
  const week = offered ?? weekOf(planning) ?? kept?.week;
  const isBusy = planning.kind === "stating" || planning.kind === "searching";
  const planAnew = (own = 1, moves: number = EFFORTS.usual): void => {
    setOffered(undefined);
    setSeed(own);
    const now = session.view;
    if (now === undefined) return;
    const anew = askDays(now.kitchen, addDays(now.day, ahead), days, times);
    setAsked(anew);
    void plan(now.kitchen, { ...anew, seed: own, moves });
  };
  const leave = (): void => {
    setOffered(undefined);
    if (offered === undefined) forget();
  };
  const accept = async (planned: WeekPlan): Promise<void> => {
    await session.write((pen) => [pen.write({ kind: "menu-accepted", on: view.day, week: planned })]);
    setToCome(planned.from > view.day);
    setOffered(undefined);
    forget();
  };
  const change = async (turn: (kitchen: EditedKitchen) => EditedKitchen, possible?: WeekPlan): Promise<void> => {
    await session.edit(turn);
    if (possible === undefined) return planAnew();
    forget();
    setOffered(possible);
  };
  const toTake = offered ?? (planning.kind === "planned" ? planning.week : undefined);
  const stretch = !isBusy && (
    <>
      <div className="fields">
        <ChoiceField
          label={further.week.daysFrom(formats.day(kitchen.startsOn))}
          value={String(days)}
          choices={STRETCHES.map((each) => [String(each), further.week.days(each)] as const)}
          onChange={(chosen) => setDays(Number(chosen))}
        />
        <ChoiceField
          label={further.week.first}
          value={String(ahead)}
          choices={Array.from(
            { length: MOST_AHEAD + 1 },
            (_, each) => [String(each), formats.day(addDays(view.day, each))] as const,
          )}
          onChange={(chosen) => setAhead(Number(chosen))}
        />
      </div>
      <Wishes />
    </>
  );
  return (
    <div className="stack">
      <div className="row spread">
        <h1>{words.screens.menu}</h1>
        {isBusy ? (
          <button type="button" className="button" onClick={stop}>
            {words.menu.stop}
          </button>
        ) : (
          <button type="button" className={toTake === undefined ? "button main" : "button"} onClick={() => planAnew()}>
            {week === undefined ? words.menu.plan : words.menu.planAnew}
          </button>
        )}
      </div>
      {toCome !== undefined && view.menu !== undefined && (
        <div className="row">
          <button type="button" className="button" aria-pressed={isToCome} onClick={() => setToCome(!isToCome)}>
            {further.week.toCome(formats.day(toCome.week.from))}
          </button>
        </div>
      )}
      {week === undefined && stretch}
      {!isBusy && toTake === undefined && (
        <Awaited isQuiet>
          <WeekBehind />
        </Awaited>
      )}
      <PlanningLine planning={planning} currency={view.kitchen.currency} />
      {planning.kind !== "idle" && asked !== undefined && asked.over.length > 0 && (
        <p className="small soft">{further.week.over(asked.over.map((kind) => words.sittings[kind]).join(", "))}</p>
      )}
      {planning.kind === "none" && asked !== undefined && offered === undefined && (
        <Awaited>
          <Impossible
            kitchen={planning.kitchen}
            asked={asked}
            onOffer={setOffered}
            onChange={(turn, possible) => void change(turn, possible)}
          />
        </Awaited>
      )}
      {toTake !== undefined && (
        <div className="row">
          <Allowed to="menu-accepted" otherwise={<RoleNote />}>
            <button type="button" className="button main" onClick={() => void accept(toTake)}>
              {words.menu.accept}
            </button>
          </Allowed>
          <button type="button" className="button" onClick={leave}>
            {words.menu.leave}
          </button>
          {offered === undefined && (
            <>
              <button type="button" className="button" onClick={() => planAnew(seed + SEED_STEP)}>
                {further.week.another}
              </button>
              <button type="button" className="button" onClick={() => planAnew(seed, EFFORTS.long)}>
                {further.week.longer}
              </button>
            </>
          )}
        </div>
      )}
      {week !== undefined && (
        <>
          <p className="soft">
            {words.menu.till(formats.money(week.accounts.tillMinor, week.currency))}{" "}
            {words.menu.plates(formats.money(week.accounts.platesMinor, week.currency))}{" "}
            {week.accounts.estimatedMinor > 0 &&
              words.menu.estimated(formats.money(week.accounts.estimatedMinor, week.currency))}
          </p>
          {week.wishes !== undefined && (
            <Awaited isQuiet>
              <WishesMet wishes={week.wishes} currency={week.currency} />
            </Awaited>
          )}
          <Week week={week} onOffer={setOffered} />
          {!isBusy && (
            <LazyFold title={further.other.absent} brief={further.other.absentBrief} className="why-absent">
              <WhyAbsent week={week} onOffer={setOffered} />
            </LazyFold>
          )}
          {!isBusy && (
            <LazyFold title={further.limitPrices.title} brief={further.limitPrices.brief}>
              <LimitPrices week={week} />
            </LazyFold>
          )}
          {!isBusy && (
            <PrintOrSave>
              <WeekSheets key={week.from} week={week} />
            </PrintOrSave>
          )}
        </>
      )}
      {week === undefined && planning.kind === "idle" && <p>{words.menu.none}</p>}
      {week !== undefined && stretch}
      {!isBusy && planning.kind !== "none" && (
        <LazyFold title={further.choices.title} brief={AGAINST.map((each) => further.choices.against[each]).join(", ")}>
          <Choices
            kitchen={kitchen}
            askNow={() => askDays(kitchen, kitchen.startsOn, days, times)}
            shown={offered}
            onOffer={setOffered}
          />
        </LazyFold>
      )}
    </div>
  );
}

function isPlanAsked(state: unknown): boolean {
  return typeof state === "object" && state !== null && "plan" in state;
}

function weekOf(planning: Planning): WeekPlan | undefined {
  return planning.kind === "searching" || planning.kind === "planned" ? planning.week : undefined;
}

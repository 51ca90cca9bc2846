import type { StepLine } from "halfloaf/kitchen";
import type { ReactNode } from "react";
import { Link } from "wouter";
import { TickField } from "../kitchen/fields/TickField.tsx";
import { useNames } from "../kitchen/useNames.ts";
import { Awaited } from "../loading/Awaited.tsx";
import { lazily } from "../loading/lazily.ts";
import { startThinker } from "../thinking/startThinker.ts";
import type { Cooks, StepTold } from "../thinking/Thinker.ts";
import { useFurther } from "../words/useFurther.ts";
import { BeginAt } from "./BeginAt.tsx";
import { cookingRun, minutesSince, type Running, type RunningTimer, timersOf } from "./CookingRun.ts";
import { Makings } from "./Makings.tsx";
import { NextStep } from "./NextStep.tsx";
import { nextSteps } from "./nextSteps.ts";
import { readyToRing } from "./ring.ts";
import { Steps } from "./Steps.tsx";
import { TellSteps } from "./TellSteps.tsx";
import { Timeline } from "./Timeline.tsx";
import { OverTimers, Timers } from "./Timers.tsx";
import { useMeasured } from "./useMeasured.ts";
import { useNow } from "./useNow.ts";
import { useStoveKitchen } from "./useStoveKitchen.ts";
import { useWakeLock } from "./useWakeLock.ts";

const DishesAgainst = lazily(() => import("../thinking/DishesAgainst.tsx"));

const LONGER_MINUTES = 2;

/** A cooking by the stove: the next thing in large type, what goes on beside it, and what comes then. */
export function Stove({ running }: { readonly running: Running }): ReactNode {
  const { words, further, formats } = useFurther("work");
  const kitchen = useStoveKitchen();
  const names = useNames();
  const { begunMs, told } = running;
  const measured = useMeasured(running.sheet);
  const { sheet } = measured;
  const nowMs = useNow(begunMs !== undefined);
  const now = begunMs === undefined ? 0 : minutesSince(begunMs, Math.max(nowMs, begunMs));
  useWakeLock(begunMs !== undefined);
  const steps = sheet.lines.filter((line) => line.kind === "step");
  const isTold = (line: StepLine): StepTold | undefined =>
    told.find(({ dish, step }) => dish === line.dish && step === line.step);
  const open = steps.filter((line) => isTold(line)?.doneMinutes === undefined);
  const timers = timersOf({ ...running, sheet });
  const { cooks = 1 } = running;
  const next = nextSteps(
    open.filter((line) => !timers.some((timer) => timer.line === line)),
    cooks,
  );
  const isOver = ({ endsMs }: RunningTimer): boolean => endsMs <= nowMs;
  const isDone = open.length === 0;
  const ready =
    begunMs === undefined
      ? words.work.readyIn(formats.minutes(sheet.serveMinutes))
      : words.work.readyAt(formats.clock(minutesOfDay(begunMs) + sheet.serveMinutes));
  const begin = (): void => {
    readyToRing();
    cookingRun.set({ ...running, begunMs: Date.now() });
  };
  const warning = (
    <Awaited isQuiet>
      <DishesAgainst dishes={running.wanted.map(({ dish }) => dish)} isBrief={begunMs !== undefined} />
    </Awaited>
  );
  const timing = {
    nowMs,
    onDone: ({ line }: RunningTimer) => void tell(line, "done"),
    onLonger: (timer: RunningTimer) => void giveMore(timer),
  };
  return (
    <div className="stove">
      <p>
        {running.wanted.map(({ dish }) => names.dish(dish)).join(" + ")} — {ready}
      </p>
      {(begunMs === undefined || next.length === 0) && warning}
      {begunMs === undefined ? (
        <>
          <BeginAt serveMinutes={sheet.serveMinutes} />
          <TickField
            label={further.stove.twoCooks}
            isTicked={cooks === 2}
            onChange={(two) => void orderFor(two ? 2 : 1)}
          />
          {kitchen.pace !== undefined && (
            <p className="small soft">
              {further.stove.atPace} <Link href="/kitchen">{words.screens.kitchen}</Link>
            </p>
          )}
          <div className="row">
            <button type="button" className="button main large" onClick={begin}>
              {words.work.begin}
            </button>
            <button type="button" className="button large" onClick={() => cookingRun.set(undefined)}>
              {words.work.other}
            </button>
          </div>
        </>
      ) : (
        <>
          <OverTimers {...timing} timers={timers.filter(isOver)} />
          {next.map(({ cook, line }, at) => (
            <NextStep
              key={cook}
              sheet={sheet}
              line={line}
              taken={measured.takenAt(line)}
              {...(cooks > 1 && { cook })}
              now={now}
              isFirst={told.length === 0 && at === 0}
              warning={at === 0 && warning}
            />
          ))}
          <TellSteps next={next} cooks={cooks} onTell={(line, how) => void tell(line, how)} />
        </>
      )}
      <Timers {...timing} timers={timers.filter((timer) => !isOver(timer))} />
      {isDone && (
        <section className="next-step stack tight">
          <p className="next-text short">{further.stove.allDone}</p>
        </section>
      )}
      {!isDone && <Makings measured={measured} isFolded={begunMs !== undefined} />}
      {!isDone && <Timeline sheet={sheet} now={begunMs === undefined ? undefined : now} />}
      {begunMs !== undefined && (
        <div className="row">
          {!isDone && (
            <button type="button" className="button" onClick={() => void retime(told, now)}>
              {words.work.late}
            </button>
          )}
          <button
            type="button"
            className={isDone ? "button main large" : "button"}
            onClick={() => cookingRun.set({ ...running, isOver: true })}
          >
            {further.stove.toStores}
          </button>
          <button type="button" className="button" onClick={() => cookingRun.set(undefined)}>
            {words.work.end}
          </button>
        </div>
      )}
      <Steps measured={measured} open={open} />
    </div>
  );

  /** The same dishes for another number of cooks. */
  async function orderFor(wanted: Cooks): Promise<void> {
    const answer = await startThinker().order(kitchen, running.wanted, wanted);
    if (answer.kind === "sheet" && cookingRun.running === running)
      cookingRun.set({ ...running, cooks: wanted, sheet: answer.sheet });
  }

  async function tell(line: StepLine, how: "begun" | "done"): Promise<void> {
    readyToRing();
    const at = now;
    const known = isTold(line);
    const begunMinutes = known?.begunMinutes ?? Math.min(at, how === "begun" ? at : line.startMinutes);
    const entry = { dish: line.dish, step: line.step, begunMinutes, ...(how === "done" && { doneMinutes: at }) };
    await retime([...others(line), entry], at);
  }

  /** A step that needs longer counts as begun later. */
  async function giveMore({ line, endsMs }: RunningTimer): Promise<void> {
    const known = isTold(line);
    if (known === undefined || begunMs === undefined) return;
    const late = Math.max(0, now - minutesSince(begunMs, endsMs));
    const entry = { ...known, begunMinutes: Math.min(now, known.begunMinutes + late + LONGER_MINUTES) };
    await retime([...others(line), entry], now);
  }

  function others(line: StepLine): StepTold[] {
    return told.filter(({ dish, step }) => dish !== line.dish || step !== line.step);
  }

  /** What happened is told at once; the rest is timed anew from now on as soon as the worker has it. */
  async function retime(happened: readonly StepTold[], at: number): Promise<void> {
    cookingRun.set({ ...running, told: happened });
    const answer = await startThinker().retime(kitchen, running.wanted, cooks, happened, at);
    const now = cookingRun.running;
    if (answer.kind === "sheet" && now?.told === happened) cookingRun.set({ ...now, sheet: answer.sheet });
  }
}

/** Minutes since midnight where the device is. */
function minutesOfDay(ms: number): number {
  const time = new Date(ms);
  return time.getHours() * 60 + time.getMinutes() + time.getSeconds() / 60;
}

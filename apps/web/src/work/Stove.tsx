import type { StepLine, WorkSheet } from "halfloaf/kitchen";
import { type ReactNode, useEffect, useState } from "react";
import { useNames } from "../kitchen/useNames.ts";
import { startThinker } from "../thinking/startThinker.ts";
import type { StepTold } from "../thinking/Thinker.ts";
import { useWords } from "../words/WordsContext.tsx";
import { cookingRun, minutesSince, type Running } from "./CookingRun.ts";
import { Timeline } from "./Timeline.tsx";
import { useRinging } from "./useRinging.ts";
import { useWakeLock } from "./useWakeLock.ts";

/** A cooking by the stove: the next thing in large type, what goes on beside it, and what comes then. */
export function Stove({ running }: { readonly running: Running }): ReactNode {
  const { words } = useWords();
  const names = useNames();
  const { sheet, begunMs, told } = running;
  const now = useNow(begunMs);
  useWakeLock(begunMs !== undefined);
  const steps = sheet.lines.filter((line) => line.kind === "step");
  const isTold = (line: StepLine): StepTold | undefined =>
    told.find(({ dish, step }) => dish === line.dish && step === line.step);
  const open = steps.filter((line) => isTold(line)?.doneMinutes === undefined);
  const goingOn = open.filter((line) => line.hands !== "full" && isTold(line) !== undefined);
  const next = open.find((line) => !goingOn.includes(line));
  useRinging(begunMs === undefined ? [] : goingOn, begunMs ?? 0);
  return (
    <div className="stack">
      <p>
        {running.wanted.map(({ dish }) => names.dish(dish)).join(" + ")} — {words.work.ready(tellReady(sheet, begunMs))}
      </p>
      {begunMs === undefined ? (
        <div className="row">
          <button
            type="button"
            className="button main"
            onClick={() => cookingRun.set({ ...running, begunMs: Date.now() })}
          >
            {words.work.begin}
          </button>
          <button type="button" className="button" onClick={() => cookingRun.set(undefined)}>
            {words.work.other}
          </button>
        </div>
      ) : (
        next !== undefined && <NextStep line={next} now={now} onTell={(how) => void tell(next, how)} />
      )}
      {goingOn.length > 0 && (
        <section className="stack tight" aria-labelledby="going-on">
          <h2 id="going-on">{words.work.meanwhile}</h2>
          <ul className="lines">
            {goingOn.map((line) => (
              <li key={`${line.dish} ${line.step}`} className="row spread">
                <span>{line.text}</span>
                <b className="figure">{words.work.left(Math.ceil(line.endMinutes - now))}</b>
                <button type="button" className="button" onClick={() => void tell(line, "done")}>
                  {words.work.done}
                </button>
              </li>
            ))}
          </ul>
        </section>
      )}
      <Timeline sheet={sheet} now={begunMs === undefined ? undefined : now} />
      <Steps sheet={sheet} open={open} />
      {begunMs !== undefined && (
        <div className="row">
          <button type="button" className="button" onClick={() => void late()}>
            {words.work.late}
          </button>
          <button type="button" className="button" onClick={() => cookingRun.set(undefined)}>
            {open.length === 0 ? words.work.finish : words.work.end}
          </button>
        </div>
      )}
    </div>
  );

  async function tell(line: StepLine, how: "begun" | "done"): Promise<void> {
    const at = now;
    const known = isTold(line);
    const begunMinutes = known?.begunMinutes ?? Math.min(at, how === "begun" ? at : line.startMinutes);
    const entry = { dish: line.dish, step: line.step, begunMinutes, ...(how === "done" && { doneMinutes: at }) };
    const others = told.filter(({ dish, step }) => dish !== line.dish || step !== line.step);
    await retime([...others, entry], at);
  }

  /** What should have begun by now has not: the rest is timed from now on. */
  async function late(): Promise<void> {
    await retime(told, now);
  }

  async function retime(happened: readonly StepTold[], at: number): Promise<void> {
    cookingRun.set({ ...running, told: happened });
    const answer = await startThinker().retime(running.wanted, happened, at);
    if (answer.kind === "sheet") cookingRun.set({ ...running, told: happened, sheet: answer.sheet });
  }
}

interface NextStepProps {
  readonly line: StepLine;
  readonly now: number;
  readonly onTell: (how: "begun" | "done") => void;
}

function NextStep({ line, now, onTell }: NextStepProps): ReactNode {
  const { words } = useWords();
  const wait = Math.ceil(line.startMinutes - now);
  return (
    <section className="next-step stack tight" aria-live="polite">
      <p className="soft">{wait > 0 ? words.work.nextIn(wait) : words.work.now}</p>
      <p className="next-text">{line.text}</p>
      {line.tempC !== undefined && <p className="figure">{line.tempC} °C</p>}
      {line.cautions.map(({ code, text, authority }) => (
        <p key={code} className="caution">
          {text} <span className="soft">({authority})</span>
        </p>
      ))}
      <div className="row">
        {line.hands !== "full" && (
          <button type="button" className="button main" onClick={() => onTell("begun")}>
            {words.work.started}
          </button>
        )}
        <button
          type="button"
          className={line.hands === "full" ? "button main" : "button"}
          onClick={() => onTell("done")}
        >
          {words.work.done}
        </button>
      </div>
    </section>
  );
}

function Steps({ sheet, open }: { readonly sheet: WorkSheet; readonly open: readonly StepLine[] }): ReactNode {
  const { words, formats } = useWords();
  return (
    <details>
      <summary className="button">{words.work.allSteps}</summary>
      <ol className="lines">
        {sheet.ahead.map(({ dish, step, text }) => (
          <li key={`ahead ${dish} ${step}`}>
            {words.work.ahead} {text}
          </li>
        ))}
        {sheet.lines.map((line) => {
          const isDone = line.kind === "step" && !open.includes(line);
          const what =
            line.kind === "step"
              ? line.text
              : line.kind === "oven"
                ? words.work.oven(line.tempC)
                : words.work.wash(line.part);
          return (
            <li key={`${line.kind} ${line.startMinutes} ${what}`} className={isDone ? "soft" : undefined}>
              <span className="figure small">{formats.minutes(line.startMinutes)}</span> {what}
              {isDone && ` (${words.work.isDone})`}
            </li>
          );
        })}
      </ol>
    </details>
  );
}

function useNow(begunMs: number | undefined): number {
  const [nowMs, setNowMs] = useState(() => Date.now());
  useEffect(() => {
    if (begunMs === undefined) return undefined;
    const timer = setInterval(() => setNowMs(Date.now()), 1000);
    return () => clearInterval(timer);
  }, [begunMs]);
  return begunMs === undefined ? 0 : minutesSince(begunMs, Math.max(nowMs, begunMs));
}

function tellReady(
  { serveMinutes }: WorkSheet,
  begunMs: number | undefined,
): { readonly minutes: number; readonly at?: Date } {
  return begunMs === undefined
    ? { minutes: serveMinutes }
    : { minutes: serveMinutes, at: new Date(begunMs + serveMinutes * 60_000) };
}

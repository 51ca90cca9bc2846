import type { ReactNode } from "react";
import { useFurther } from "../words/useFurther.ts";
import { Cautions } from "./Cautions.tsx";
import type { RunningTimer } from "./CookingRun.ts";
import { useInSight } from "./useInSight.ts";

interface TimersProps {
  readonly timers: readonly RunningTimer[];
  readonly nowMs: number;
  readonly onDone: (timer: RunningTimer) => void;
  /** Gives a step two minutes more. */
  readonly onLonger: (timer: RunningTimer) => void;
}

/** What goes on by itself, each with its own clock. */
export function Timers(props: TimersProps): ReactNode {
  const { words } = useFurther("work");
  if (props.timers.length === 0) return null;
  return (
    <section className="stack tight" aria-labelledby="going-on">
      <h2 id="going-on">{words.work.meanwhile}</h2>
      <TimerList {...props} />
    </section>
  );
}

/** What rings: it stands before all else. */
export function OverTimers(props: TimersProps): ReactNode {
  const { further } = useFurther("work");
  const section = useInSight(props.timers.map(({ line }) => `${line.dish} ${line.step}`).join(", "));
  if (props.timers.length === 0) return null;
  return (
    <section ref={section} aria-label={further.stove.over}>
      <TimerList {...props} />
    </section>
  );
}

function TimerList({ timers, nowMs, onDone, onLonger }: TimersProps): ReactNode {
  const { words, further } = useFurther("work");
  return (
    <ul className="lines">
      {timers.map((timer) => {
        const { line, endsMs } = timer;
        const isOver = endsMs <= nowMs;
        return (
          <li key={`${line.dish} ${line.step}`} className={isOver ? "timer over" : "timer"}>
            <div>
              <b className="clock figure" role="timer">
                {isOver ? further.stove.over : tellLeft(endsMs - nowMs)}
              </b>
              {!isOver && <span className="soft"> {further.stove.minLeft}</span>}
            </div>
            <span>{line.text}</span>
            <div className="row">
              <button type="button" className="button main" onClick={() => onDone(timer)}>
                {words.work.done}
              </button>
              <button type="button" className="button" onClick={() => onLonger(timer)}>
                {further.stove.longer}
              </button>
            </div>
            <Cautions cautions={line.cautions} />
          </li>
        );
      })}
    </ul>
  );
}

/** Minutes and seconds: "7:05". */
function tellLeft(ms: number): string {
  const seconds = Math.ceil(ms / 1000);
  return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, "0")}`;
}

import type { ReactNode } from "react";
import { useFurther } from "../words/useFurther.ts";
import type { Answering } from "./useAnswer.ts";

interface ThinkingProps {
  readonly answering: Answering<unknown>;
  readonly onStop: () => void;
  /** What is said until there is a first answer, where there is more to say than that it searches. */
  readonly said?: string;
}

/** That an answer is being looked for, with a way to stop it, or that there is none. */
export function Thinking({ answering, onStop, said }: ThinkingProps): ReactNode {
  const { words, further } = useFurther("menu");
  if (answering.kind === "thinking") {
    const what = answering.answer === undefined ? (said ?? further.week.thinking) : further.week.onward;
    return (
      <div className="row" role="status">
        <progress aria-label={what} />
        <span>{what}</span>
        <button type="button" className="button" onClick={onStop}>
          {further.week.stop}
        </button>
      </div>
    );
  }
  if (answering.kind === "failed") return <p role="alert">{words.menu.failed(answering.reason)}</p>;
  if (answering.kind === "answered" && answering.answer === undefined)
    return <p role="status">{further.week.strange}</p>;
  return null;
}

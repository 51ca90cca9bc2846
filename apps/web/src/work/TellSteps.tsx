import type { ReactNode } from "react";
import { useFurther } from "../words/useFurther.ts";
import type { NextOfCook } from "./nextSteps.ts";

interface TellStepsProps {
  readonly next: readonly NextOfCook[];
  readonly cooks: number;
  readonly onTell: (line: NextOfCook["line"], how: "begun" | "done") => void;
}

/** Tells the next step of each cook begun or done; on a phone always at the same place at the foot, however long the cautions are. */
export function TellSteps({ next, cooks, onTell }: TellStepsProps): ReactNode {
  const { words, further } = useFurther("work");
  if (next.length === 0) return null;
  return (
    <div className="tell-steps stack tight">
      {next.map(({ cook, line }) => {
        const what = cooks > 1 ? `${further.stove.cook(cook)}: ${line.text}` : line.text;
        return (
          <fieldset key={cook} className="bare row" aria-label={what}>
            {cooks > 1 && (
              <span className="tell-what small soft" aria-hidden="true">
                {what}
              </span>
            )}
            {line.hands !== "full" && (
              <button type="button" className="button main large" onClick={() => onTell(line, "begun")}>
                {words.work.started}
              </button>
            )}
            <button
              type="button"
              className={line.hands === "full" ? "button main large" : "button large"}
              onClick={() => onTell(line, "done")}
            >
              {words.work.done}
            </button>
          </fieldset>
        );
      })}
    </div>
  );
}

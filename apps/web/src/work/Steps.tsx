import type { StepLine } from "halfloaf/kitchen";
import type { ReactNode } from "react";
import { useFurther } from "../words/useFurther.ts";
import { CautionText } from "./CautionText.tsx";
import { Taken } from "./Makings.tsx";
import type { MeasuredSheet } from "./useMeasured.ts";

interface StepsProps {
  readonly measured: MeasuredSheet;
  readonly open: readonly StepLine[];
}

/** Every step in the order of its start, with what it takes, its cautions and whether it is done. */
export function Steps({ measured: { sheet, takenAt }, open }: StepsProps): ReactNode {
  const { words, further, formats } = useFurther("work");
  return (
    <details>
      <summary className="button">{words.work.allSteps}</summary>
      <ol className="lines">
        {sheet.ahead.map(({ dish, step, text }) => (
          <li key={`ahead ${dish} ${step}`}>
            {words.work.ahead} {text}
            <Taken taken={takenAt({ dish, step })} />
          </li>
        ))}
        {sheet.lines.map((line) => {
          const isDone = line.kind === "step" && !open.includes(line);
          const what =
            line.kind === "step"
              ? line.text
              : line.kind === "oven"
                ? words.work.oven(line.tempC)
                : words.work.wash(further.stove.parts[line.part]);
          return (
            <li key={`${line.kind} ${line.startMinutes} ${what}`} className={isDone ? "soft" : undefined}>
              <span className="figure small">{formats.minutes(line.startMinutes)}</span> {what}
              {sheet.cooks > 1 &&
                line.kind !== "oven" &&
                line.cooks.length > 0 &&
                ` – ${line.cooks.map(further.stove.cook).join(" + ")}`}
              {isDone && ` (${words.work.isDone})`}
              {line.kind === "step" && <Taken taken={takenAt(line)} />}
              {line.kind === "step" &&
                line.cautions.map((caution) => (
                  <div key={`${caution.code} ${caution.text}`} className="small caution">
                    <CautionText caution={caution} />
                  </div>
                ))}
            </li>
          );
        })}
      </ol>
    </details>
  );
}

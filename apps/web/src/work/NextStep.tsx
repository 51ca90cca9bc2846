import type { SheetLine, StepLine, WorkSheet } from "halfloaf/kitchen";
import type { ReactNode } from "react";
import { useFurther } from "../words/useFurther.ts";
import { Cautions } from "./Cautions.tsx";
import { Taken } from "./Makings.tsx";
import { useInSight } from "./useInSight.ts";
import type { Measured } from "./useMeasured.ts";

interface NextStepProps {
  readonly sheet: WorkSheet;
  readonly line: StepLine;
  /** What it is the first to take. */
  readonly taken: readonly Measured[];
  /** Whose it is, where two cook. */
  readonly cook?: number;
  /** Minutes since the cooking began. */
  readonly now: number;
  readonly isFirst: boolean;
  /** What must not be missed at any step, and so stands before it. */
  readonly warning: ReactNode;
}

/** A longer text is set smaller, so that it and what goes in stay in sight together. */
const LONG = 60;

/** The next thing for the hands, readable from where the pan stands, with what must be minded just there. */
export function NextStep({ sheet, line, taken, cook, now, isFirst, warning }: NextStepProps): ReactNode {
  const { words, further, formats } = useFurther("work");
  const wait = Math.ceil(line.startMinutes - now);
  const behind = Math.floor(now - line.startMinutes);
  const cautions = isFirst ? [...sheet.before, ...line.cautions] : line.cautions;
  const section = useInSight(`${line.dish} ${line.step}`);
  const besides = sheet.lines
    .filter((each) => each.kind !== "step")
    .filter((each) => isDue(each, line, now) && isFor(each, cook));
  return (
    <section ref={section} className="next-step stack tight" aria-live="polite">
      <p className="soft">
        {cook !== undefined && `${further.stove.cook(cook)}: `}
        {wait > 0 ? words.work.nextIn(wait) : words.work.now}
        {behind >= 2 && `, ${further.stove.behind(behind)}`}
        {cautions.length > 0 && <b> – {further.stove.cautions(cautions.length)}</b>}
      </p>
      {warning}
      <p className={line.text.length > LONG ? "next-text" : "next-text short"}>{line.text}</p>
      <Taken taken={taken} />
      <p className="soft">
        {formats.minutes(Math.max(1, Math.round(line.endMinutes - line.startMinutes)))}
        {line.tempC !== undefined && `, ${formats.number(line.tempC, 0)} °C`}
      </p>
      {besides.map((each) => (
        <p key={`${each.kind} ${each.startMinutes}`} className="besides">
          {further.stove.besides} {each.kind === "oven" ? words.work.oven(each.tempC) : tellWash(each)}
        </p>
      ))}
      <Cautions cautions={cautions} />
    </section>
  );

  function tellWash({ part }: Extract<SheetLine, { kind: "board-wash" | "kit-wash" }>): string {
    return words.work.wash(further.stove.parts[part]);
  }
}

/** True where it is this cook's to do; the oven is the first one's. */
function isFor(line: Exclude<SheetLine, StepLine>, cook: number | undefined): boolean {
  return cook === undefined || (line.kind === "oven" ? cook === 1 : line.cooks.includes(cook));
}

/** What has to be done beside a step: it begins before the step ends, and is not long past. */
function isDue({ startMinutes, endMinutes }: SheetLine, line: StepLine, now: number): boolean {
  return startMinutes <= Math.max(now, line.startMinutes) && endMinutes >= Math.min(now, line.startMinutes) - 1;
}

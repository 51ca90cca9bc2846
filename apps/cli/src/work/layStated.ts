import { tellMinutes, tellPortions } from "@halfloaf/words/en";
import { letterOf } from "halfloaf/sheet";
import { wrapBehind } from "../output/layout.ts";
import type { WorkPage } from "./WorkPage.ts";

/** The times that dishes are stated with, each against the one its steps take by themselves in this kitchen. */
export function layStated({ stated, sheet, width }: WorkPage): string[] {
  return stated.flatMap((time, at) => {
    if (time === undefined) return [];
    const { statedMinutes, computedMinutes, offMinutes } = time;
    const portions = sheet.dishes[at]?.portions === time.portions ? "" : ` for ${tellPortions(time.portions)}`;
    const lead = `${letterOf(at)}: stated with ${tellMinutes(statedMinutes)}${portions}`;
    const by = tellMinutes(Math.abs(offMinutes));
    const told =
      offMinutes > 0
        ? `by itself its steps take ${tellMinutes(computedMinutes)} with this kit, ${by} more.`
        : offMinutes === 0
          ? "and so it is by its steps with this kit."
          : `by its steps ${tellMinutes(computedMinutes)} with this kit, ${by} less.`;
    return wrapBehind("", `${lead}${offMinutes === 0 ? " " : "; "}${told}`, width);
  });
}

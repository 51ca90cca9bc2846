import type { Fault } from "../words/Fault.ts";
import { tellPath } from "../words/valueWords.ts";
import { wrapBehind } from "./layout.ts";
import type { Page } from "./Page.ts";

/** Faults as a numbered list: where each stands, what is wrong, what to do. */
export function layFaults(faults: readonly Fault[], { width, paint }: Page): string[] {
  const lead = `${faults.length}. `.length;
  return faults.flatMap((fault, at) => {
    const number = `${at + 1}. `.padStart(lead);
    const where = tellWhere(fault);
    const blank = " ".repeat(lead);
    return [
      ...(where === "" ? [] : wrapBehind(number, where, width).map(paint.strong)),
      ...wrapBehind(where === "" ? number : blank, fault.sentence, width),
      ...wrapBehind(blank, fault.remedy, width).map(paint.quiet),
    ];
  });
}

function tellWhere({ path, line }: Fault): string {
  return [...(line === undefined ? [] : [`line ${line}`]), ...(path.length === 0 ? [] : [tellPath(path)])].join(", ");
}

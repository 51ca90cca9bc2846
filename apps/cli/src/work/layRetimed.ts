import { tellMoment } from "@halfloaf/words/clock";
import { tellMinutes } from "@halfloaf/words/en";
import { wrap } from "../output/layout.ts";
import type { WorkPage } from "./WorkPage.ts";

/** How a cooking goes on: as planned, or when it is served now. */
export function layRetimed({ sheet, retimed, width, paint }: WorkPage): string[] {
  if (retimed === undefined) return [];
  const now = `Now it is ${sheet.serveAtMinutes === undefined ? "minute " : ""}${tellMoment(sheet, retimed.nowMinutes)}.`;
  const by = sheet.serveMinutes - retimed.wasServeMinutes;
  const served = `Served at ${tellMoment(sheet, sheet.serveMinutes)}`;
  const then =
    by === 0
      ? `${served}, as planned.`
      : `${served}, ${tellMinutes(Math.abs(by))} ${by > 0 ? "later" : "sooner"} than planned.`;
  const how = {
    same: "All goes as planned; nothing changes.",
    timed: `The rest is timed anew. ${then}`,
    shifted: `All that is left is put off as it was; it may wait longer than it should. ${then}`,
  }[retimed.kind];
  const lines = wrap(`${now} ${how}`, width);
  return retimed.kind === "same" ? lines : lines.map(paint.strong);
}

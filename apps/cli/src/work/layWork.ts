import { tellClock, tellMoment } from "@halfloaf/words/clock";
import { CLOSING, counted, tellMinutes, tellPortions } from "@halfloaf/words/en";
import { clockMinutes, type DishCaution } from "halfloaf/kitchen";
import { letterOf } from "halfloaf/sheet";
import { harmless } from "../output/harmless.ts";
import { layTable, wrap, wrapBehind } from "../output/layout.ts";
import { tellTaken } from "../words/takenWords.ts";
import { layMakings } from "./layMakings.ts";
import { layRetimed } from "./layRetimed.ts";
import { layStated } from "./layStated.ts";
import { layCaution, laySteps, tellCaution } from "./laySteps.ts";
import { layTimeline } from "./layTimeline.ts";
import { daysBefore, tellLetters, type WorkPage } from "./WorkPage.ts";

/** An order of work as lines: when to begin, the picture, what is done ahead, the steps, what waits, the cautions. */
export function layWork(page: WorkPage): string[] {
  const parts = [
    layTitle,
    layRetimed,
    layTooLong,
    layMakings,
    layTimeline,
    layAhead,
    laySteps,
    layWaits,
    layBefore,
    layAfter,
    layClosing,
  ];
  const laid = parts.map((part) => part(page)).filter((lines) => lines.length > 0);
  return laid.flatMap((lines, at) => (at === 0 ? lines : ["", ...lines]));
}

function layTitle(page: WorkPage): string[] {
  const { sheet, kitchen, width, paint, pace } = page;
  const { serveMinutes, isProven, dishes, cooks } = sheet;
  const clock =
    sheet.serveAtMinutes === undefined ? "" : `, from ${tellMoment(sheet, 0)} to ${tellMoment(sheet, serveMinutes)}`;
  const best =
    page.retimed === undefined ? "No order of work is quicker with this kit." : "What is left can't be done quicker.";
  const proof = isProven ? best : "A quicker order of work may exist.";
  const who = cooks === 2 ? "two cooks" : "one cook";
  const where = `${tellMinutes(serveMinutes)} from the first step to the plate${clock}; ${who}, kit of ${harmless(kitchen)}. ${proof}`;
  const titles = dishes.flatMap(({ title, portions }) => wrap(`${harmless(title)}, ${tellPortions(portions)}`, width));
  const otherwise = dishes.flatMap((dish, at) => {
    const whose = dishes.length === 1 ? "" : `${letterOf(at)}: `;
    return dish.taken === undefined ? [] : wrap(`${whose}With ${tellTaken(dish, page.names)}.`, width);
  });
  const tooMuch = dishes.flatMap(({ potPortions }, at) =>
    potPortions === undefined
      ? []
      : wrap(`${letterOf(at)}: the largest pot takes ${tellPortions(potPortions)}.`, width),
  );
  const paced = pace.length === 0 ? [] : wrap(`At the pace of this kitchen's cook (see "halfloaf pace").`, width);
  return [
    ...titles.map(paint.strong),
    ...wrap(where, width),
    ...layStated(page),
    ...paced,
    ...otherwise,
    ...tooMuch.map(paint.warning),
  ];
}

function layTooLong({ tooLong, width, paint }: WorkPage): string[] {
  if (tooLong === undefined) return [];
  const told = `Too long by ${tellMinutes(tooLong.byMinutes)} for the minutes at hand.`;
  const best = tooLong.earlier.slice(0, 3).map(({ dish, step, along, savedMinutes }) => {
    const with_ = along.length === 0 ? "" : ` (with ${along.join(", ")} before it)`;
    return `Do "${step}"${with_} of ${letterOf(dish)} earlier in the day, chilled: ${tellMinutes(savedMinutes)} less.`;
  });
  const none = best.length === 0 ? ["No single step that keeps would shorten it if it were done earlier."] : best;
  return [...wrap(told, width), ...none.flatMap((line) => wrapBehind("  - ", harmless(line), width))].map(
    paint.warning,
  );
}

function layAhead({ sheet, width, paint }: WorkPage): string[] {
  if (sheet.ahead.length === 0) return [];
  const rows = sheet.ahead.flatMap(({ dish, text, minutes, latestStartMinutes, cautions }) => [
    [tellAhead(sheet, latestStartMinutes), tellMinutes(minutes), letterOf(dish), harmless(text)],
    ...cautions.map((caution) => ["", "", "", `! ${tellCaution(caution)}`]),
  ]);
  const columns = [{ title: "begun by" }, { title: "", right: true }, { title: "" }, { title: "", wraps: true }];
  return [paint.heading("AHEAD"), "", ...layTable(columns, rows, width, 2)];
}

function tellAhead(sheet: WorkPage["sheet"], minutes: number): string {
  const clock = clockMinutes(sheet, minutes);
  if (clock === undefined) return `${tellMinutes(-minutes)} before`;
  const days = daysBefore(clock);
  return days === 0
    ? tellClock(clock)
    : `${tellClock(clock)}, ${counted(days, { one: "day before", other: `${days} days before` })}`;
}

function layWaits({ sheet, width, paint }: WorkPage): string[] {
  const broken = sheet.brokenHolds.map(
    ({ dish, step, waitMinutes, holdMinutes }) =>
      `${letterOf(dish)}: the holds collide; after "${step}" it waits ${tellMinutes(waitMinutes)} instead of ${tellMinutes(holdMinutes)} at most.`,
  );
  const waits = sheet.dishes.flatMap(({ waitMinutes, readyMinutes }, at) =>
    waitMinutes > 0 && sheet.dishes.length > 1
      ? [`${letterOf(at)} is ready at ${tellMoment(sheet, readyMinutes)} and waits ${tellMinutes(waitMinutes)}.`]
      : [],
  );
  if (broken.length + waits.length === 0) return [];
  return [
    paint.heading("WHAT WAITS"),
    "",
    ...broken.flatMap((line) => wrapBehind("  - ", harmless(line), width)).map(paint.warning),
    ...waits.flatMap((line) => wrapBehind("  - ", line, width)),
  ];
}

function layBefore(page: WorkPage): string[] {
  // That the label comes first is said by the last line of the page.
  return layDishCautions(
    page,
    "BEFORE YOU BEGIN",
    page.sheet.before.filter(({ code }) => code !== "label-first"),
  );
}

function layAfter(page: WorkPage): string[] {
  return layDishCautions(page, "AFTERWARDS", page.sheet.after);
}

function layDishCautions(
  { sheet, width, paint }: WorkPage,
  heading: string,
  cautions: readonly DishCaution[],
): string[] {
  if (cautions.length === 0) return [];
  const lines = cautions.flatMap(({ byMinutes, dishes, ...caution }) => {
    const whose = sheet.dishes.length === 1 ? "" : `${tellLetters(dishes)}: `;
    const by = byMinutes === undefined ? "" : tellBy(sheet, byMinutes);
    return layCaution("  - ", { ...caution, text: `${whose}${caution.text}${by}` }, width);
  });
  return [paint.heading(heading), "", ...lines];
}

function tellBy(sheet: WorkPage["sheet"], minutes: number): string {
  const clock = clockMinutes(sheet, minutes);
  return clock === undefined ? ` That is by minute ${minutes}.` : ` That is by ${tellClock(clock)}.`;
}

function layClosing({ width }: WorkPage): string[] {
  return wrap(CLOSING, width);
}

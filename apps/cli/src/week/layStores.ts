import { tellDayShort, tellMass } from "@halfloaf/words/en";
import { keepTogether, layTable, wrapBehind } from "../output/layout.ts";
import { headingOf, moneyOf, type WeekPage } from "./WeekPage.ts";

/** Less than this is dust, not food (g). */
const DUST_G = 0.05;

/** What is used of the stores, what is used up first, and how much of each other lot is left. */
export function layUsed(page: WeekPage): string[] {
  const used = page.plan.lots.filter(({ from, usedG }) => from === "stores" && usedG > DUST_G);
  if (used.length === 0) return [];
  const isEmpty = ({ leftG, wastedG }: (typeof used)[number]): boolean => leftG + wastedG <= DUST_G;
  const rows = [...used.filter(isEmpty), ...used.filter((lot) => !isEmpty(lot))].map(
    ({ food, usedG, usedMinor, leftG, wastedG }) => [
      page.names.food(food),
      tellMass(usedG),
      moneyOf(page, usedMinor),
      tellRest(leftG, wastedG),
    ],
  );
  const columns = [
    { title: "food", wraps: true },
    { title: "used", right: true },
    { title: "cost", right: true },
    { title: "then" },
  ];
  return [headingOf(page, "Used from the stores"), "", ...layTable(columns, rows, page.width, 2)];
}

function tellRest(leftG: number, wastedG: number): string {
  const parts = [
    ...(leftG > DUST_G ? [`${tellMass(leftG)} left`] : []),
    ...(wastedG > DUST_G ? [`${tellMass(wastedG)} thrown away`] : []),
  ];
  return parts.length === 0 ? "used up" : parts.join(", ");
}

/** What can no longer be eaten within these days, and why. */
export function layWaste(page: WeekPage): string[] {
  const wasted = page.plan.lots.filter(({ wastedG, wastedMinor }) => wastedG > DUST_G || wastedMinor > 0);
  const lines = [
    ...wasted.map(
      (lot) =>
        `${keepTogether(tellMass(lot.wastedG))} of ${page.names.food(lot.food)}, ${moneyOf(page, lot.wastedMinor)}: ${tellWhy(lot)}.`,
    ),
    ...page.goneOff.map(
      (lot) =>
        `${keepTogether(tellMass(lot.massG))} of ${page.names.food(lot.food)}, ${moneyOf(page, lot.costMinor)}: past its time on the first day; not counted in the accounts.`,
    ),
  ];
  const told = lines.length === 0 ? ["Nothing."] : lines.flatMap((line) => wrapBehind("  ", line, page.width));
  return [headingOf(page, "Thrown away"), "", ...told];
}

function tellWhy({ openedOn, keepsUntil }: WeekPage["plan"]["lots"][number]): string {
  const until =
    keepsUntil === undefined
      ? "its keeping time is not known"
      : `keeps until ${keepTogether(tellDayShort(keepsUntil))}`;
  return openedOn === undefined ? until : `opened ${keepTogether(tellDayShort(openedOn))}, ${until}`;
}

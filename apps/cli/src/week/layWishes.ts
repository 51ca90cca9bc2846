import { tellCount, tellDayShort } from "@halfloaf/words/en";
import { type CountedWish, missOfWish } from "halfloaf/kitchen";
import { wrapBehind } from "../output/layout.ts";
import { meantDishes } from "../words/planFaultWords.ts";
import { headingOf, moneyOf, type WeekPage } from "./WeekPage.ts";

/** What was wished for, how often it is served, and what is not met. */
export function layWishes(page: WeekPage): string[] {
  const { wishes = [] } = page.plan;
  if (wishes.length === 0) return [];
  const lines = wishes.flatMap((wish) => wrapBehind("  - ", tellWish(page, wish), page.width));
  return [headingOf(page, "Wishes"), "", ...lines];
}

function tellWish(page: WeekPage, wish: CountedWish): string {
  const { what, from, to, least, most, missMinor, served } = wish;
  const days = from === to ? tellDayShort(from) : `${tellDayShort(from)} to ${tellDayShort(to)}`;
  const bounds = [least === undefined ? "" : `at least ${least}`, most === undefined ? "" : `at most ${most}`];
  const wanted = bounds.filter((each) => each !== "").join(", ");
  const verdict = missOfWish(wish) === 0 ? "met" : `not met${tellPrice(page, missMinor)}`;
  return `${meantDishes(what, page.names)}, ${days}: ${tellCount(served, "serving")}, wanted ${wanted}: ${verdict}`;
}

function tellPrice(page: WeekPage, missMinor: number | undefined): string {
  return missMinor === undefined ? "" : `, it would cost more than ${moneyOf(page, missMinor)} a serving`;
}

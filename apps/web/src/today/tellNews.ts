import type { WeekPlan } from "halfloaf/kitchen";
import type { WeekNews } from "halfloaf/kitchen/record";
import type { Names } from "../kitchen/useNames.ts";
import type { Words } from "../words/en.ts";
import type { Formats } from "../words/Formats.ts";
import type { Further } from "../words/further/Further.ts";

/** What is known to tell news of a week with. */
export interface NewsTelling {
  readonly week: WeekPlan;
  /** What a pack is called. */
  readonly packOf: (id: string) => string;
  readonly names: Names;
  readonly words: Words;
  readonly further: Further<"today">;
  readonly formats: Formats;
}

/** One thing that came out otherwise than a week took it to be, in words. */
export function tellNews(change: WeekNews, { week, packOf, names, words, further, formats }: NewsTelling): string {
  const { news } = further.follow;
  switch (change.kind) {
    case "price":
      return news.price(packOf(change.pack), formats.money(change.priceMinor, week.currency));
    case "gone":
      return news.gone(packOf(change.pack));
    case "skip":
      return change.at.eater === undefined
        ? news.nobody(tellAt(change))
        : news.without(tellAt(change), names.eater(change.at.eater));
    case "guest":
      return news.guests(tellAt(change), change.portions, formats.number(change.portions));
    case "short":
      return news.without(tellAt(change), names.dish(change.dish));
    case "off":
      return tellLoss(change);
    case "came":
      return news.came(names.food(change.stock.food), formats.mass(change.stock.massG));
    case "refuse":
      return names.dish(change.dish);
  }

  function tellAt({ at: { date, kind } }: Extract<WeekNews, { kind: "skip" | "guest" | "short" }>): string {
    return `${formats.day(date)}, ${words.sittings[kind]}`;
  }

  function tellLoss({ lot, massG, lastDate }: Extract<WeekNews, { kind: "off" }>): string {
    const food = week.lots.find(({ id }) => id === lot)?.food;
    const what = food === undefined ? lot : names.food(food);
    if (lastDate !== undefined) return news.ends(what, formats.day(lastDate));
    return massG === undefined ? news.never(what) : news.lost(what, formats.mass(massG));
  }
}

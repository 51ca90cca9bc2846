import type { CivilDate } from "../../quantity/index.ts";
import { splitByLargestRemainder } from "../../quantity/index.ts";
import { purchaseOf } from "../lotFacts.ts";
import { splitBothWays } from "../splitBothWays.ts";
import type { WeekSource } from "../WeekSource.ts";
import type { PriceSource } from "./DaySheet.ts";

/**
 * Where the costs of a day's plates come from: prices by place and day, estimates, stores at hand. Each batch's cost goes
 * to the plates of the day and to all others as it was split over plates, so the sources add up to the plates.
 */
export function priceSources(source: WeekSource, date: CivilDate): PriceSource[] {
  const { week, names } = source;
  const found = new Map<
    string,
    { facts: Omit<PriceSource, "foods" | "costMinor">; foods: Set<string>; costMinor: number }
  >();
  for (const [at, batch] of week.batches.entries()) {
    const platesMinor = week.sittings
      .filter((sitting) => sitting.batch === at && sitting.date === date)
      .flatMap(({ plateMinor }) => plateMinor)
      .reduce((sum, minor) => sum + minor, 0);
    if (!week.sittings.some((sitting) => sitting.batch === at && sitting.date === date)) continue;
    const columns = batch.uses.map(({ costMinor }) => costMinor);
    const [parts = []] =
      batch.costMinor === 0
        ? [splitByLargestRemainder(0, columns)]
        : splitBothWays([platesMinor, batch.costMinor - platesMinor], columns);
    for (const [use, costMinor] of parts.entries()) {
      const { lot, food } = batch.uses[use] as (typeof batch.uses)[number];
      const facts = priceOfLot(source, lot);
      const key = `${facts.kind} ${facts.at} ${facts.on}`;
      const group = found.get(key) ?? { facts, foods: new Set(), costMinor: 0 };
      group.foods.add(names.food(food));
      group.costMinor += costMinor;
      found.set(key, group);
    }
  }
  const order = ["seen", "estimate", "stock"];
  return [...found.values()]
    .map(({ facts, foods, costMinor }) => ({ ...facts, foods: [...foods].sort(), costMinor }))
    .sort((a, b) => order.indexOf(a.kind) - order.indexOf(b.kind) || b.costMinor - a.costMinor);
}

/** Where the price of a lot of the week comes from. */
export function priceOfLot({ week, kitchen, names }: WeekSource, id: string): Pick<PriceSource, "kind" | "at" | "on"> {
  const lot = week.lots.find((one) => one.id === id);
  const bought = lot && purchaseOf(week, lot);
  if (bought === undefined) return { kind: "stock" };
  const { trip, line } = bought;
  const at = kitchen.packs.find((pack) => pack.id === line.pack)?.seen?.at ?? names.shop(trip.shop);
  if (line.estimate || line.seenOn === undefined) return { kind: "estimate", at: names.shop(trip.shop) };
  return { kind: "seen", at, on: line.seenOn };
}

import type { FoodTable } from "../../../food/index.ts";
import { massOfPack, type Offer, type Pack, priceOfCount } from "../../../price/index.ts";
import { type CivilDate, type Issue, type Parsed, splitByLargestRemainder } from "../../../quantity/index.ts";
import { foodLife, placesOf } from "../../foodLife.ts";
import type { Kitchen } from "../../kitchen.ts";
import type { RecordEvent } from "../event.ts";
import type { Pen } from "../Pen.ts";

/** Packs of one kind as they were found and paid for. */
export interface TickedPacks {
  readonly pack: string;
  readonly count: number;
  /** Price of one pack at the shelf, in minor units; by default what the kitchen knows. */
  readonly priceMinor?: number;
  /** Offer at the shelf; by default the one the kitchen knows, where no other price was found. */
  readonly offer?: Offer;
  /** What the till said for all of them; by default price and offer make it. */
  readonly tillMinor?: number;
  /** What one pack holds in g as purchased, where that is not what the kitchen has. */
  readonly massG?: number;
  readonly useBy?: CivilDate;
  readonly bestBefore?: CivilDate;
  /** Ids of the lots that these packs are in the accepted week, one a pack. */
  readonly planned?: readonly string[];
}

/** One visit to a shop. */
export interface ShoppingDone {
  readonly on: CivilDate;
  readonly shop: string;
  readonly lines: readonly TickedPacks[];
  /** First day of the accepted week whose lots `planned` names; without it nothing is noted as planned. */
  readonly week?: CivilDate;
  /** What the way cost, in minor units. */
  readonly fareMinor?: number;
}

/**
 * A visit to a shop as events: each pack becomes a lot where its food keeps, at its part of what the till said, and each
 * price is noted as seen that day. `kitchen` has the packs at their latest prices (`toKitchen`). Packs that it does not have,
 * or that this shop does not sell, whose mass can't be known, or of no whole number are issues, and nothing is then written.
 */
export function tickPacks(
  kitchen: Pick<Kitchen, "packs" | "shops" | "kit">,
  foods: FoodTable,
  { on, shop, lines, week, fareMinor }: ShoppingDone,
  pen: Pen,
): Parsed<readonly RecordEvent[]> {
  const name = kitchen.shops.find(({ id }) => id === shop)?.name;
  const found = lines.map((line, at) => findPack(kitchen, foods, shop, line, at));
  const issues = found.flatMap((one) => ("issue" in one ? [one.issue] : []));
  if (name === undefined) issues.unshift(toIssue("shop-unknown", ["shop"], "a shop of the kitchen", shop));
  if (name === undefined || issues.length > 0) return { ok: false, issues };
  const events = found.flatMap((one) =>
    "issue" in one ? [] : writeLine(kitchen, foods, { on, shop, name, week }, one, pen),
  );
  if (fareMinor !== undefined && fareMinor > 0) events.push(pen.write({ kind: "trip", on, shop, fareMinor }));
  return { ok: true, value: events };
}

interface FoundPack {
  readonly line: TickedPacks;
  readonly pack: Pack;
  readonly massG: number;
}

function findPack(
  { packs }: Pick<Kitchen, "packs">,
  foods: FoodTable,
  shop: string,
  line: TickedPacks,
  at: number,
): FoundPack | { readonly issue: Issue } {
  const pack = packs.find(({ id }) => id === line.pack);
  if (pack === undefined || pack.shop !== shop)
    return { issue: toIssue("pack-unknown", ["lines", at, "pack"], `a pack of ${shop}`, line.pack) };
  if (!Number.isSafeInteger(line.count) || line.count < 1)
    return { issue: toIssue("count", ["lines", at, "count"], "a whole number from 1 on", `${line.count}`) };
  const food = foods.get(pack.food);
  if (food === undefined)
    return { issue: toIssue("food-unknown", ["lines", at, "pack"], "a food of the table", pack.food) };
  const mass = line.massG === undefined ? massOfPack(pack, food) : ({ ok: true, massG: line.massG } as const);
  if (!mass.ok) return { issue: toIssue(mass.reason, ["lines", at, "massG"], "a mass in g", "nothing") };
  return { line, pack, massG: mass.massG };
}

interface Visit extends Pick<ShoppingDone, "on" | "shop"> {
  readonly name: string;
  readonly week: CivilDate | undefined;
}

function writeLine(
  { kit }: Pick<Kitchen, "kit">,
  foods: FoodTable,
  { on, shop, name, week }: Visit,
  { line, pack, massG }: FoundPack,
  pen: Pen,
): RecordEvent[] {
  const food = foods.get(pack.food);
  const priceMinor = line.priceMinor ?? pack.priceMinor;
  const isAsKnown = priceMinor === pack.priceMinor;
  const offer = line.offer ?? (isAsKnown ? pack.offer : undefined);
  const till = line.tillMinor ?? priceOfCount({ priceMinor, offer }, line.count);
  const costs = splitByLargestRemainder(
    till,
    Array.from({ length: line.count }, () => 1),
  );
  const useBy = line.useBy ?? pack.reduced?.until;
  const bought = costs.map((costMinor, copy) => {
    const planned = line.planned?.[copy];
    return pen.write({
      kind: "bought",
      on,
      lot: pen.nameLot(pack.food),
      food: pack.food,
      place: food === undefined ? "dry-store" : foodLife(food, placesOf(kit)).place,
      massG,
      costMinor,
      pack: pack.id,
      shop,
      ...(pack.loose && { loose: true as const }),
      ...(useBy !== undefined && { useBy }),
      ...(line.bestBefore !== undefined && { bestBefore: line.bestBefore }),
      ...(week !== undefined && planned !== undefined && { planned: { week, lot: planned } }),
    });
  });
  const seen = pen.write({
    kind: "price-seen",
    on,
    pack: pack.id,
    priceMinor,
    at: name,
    ...(offer !== undefined && { offer }),
    ...(line.massG !== undefined && { massG: line.massG }),
  });
  return [...bought, seen];
}

function toIssue(code: string, path: Issue["path"], expected: string, received: string): Issue {
  return { code, path, expected, received };
}

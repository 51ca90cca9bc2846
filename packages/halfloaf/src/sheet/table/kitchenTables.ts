import type { FoodTable } from "../../food/index.ts";
import { type AccountLine, type EditedKitchen, priceHistory, type RecordState } from "../../kitchen/record/index.ts";
import { type CivilDate, toDecimalText } from "../../quantity/index.ts";
import { firstExpiredFirstOut, type LotState } from "../../stores/index.ts";
import type { SheetNames } from "../WeekSource.ts";
import { type Cell, toCsvText } from "./toCsvText.ts";

/** What the tables of a kept kitchen are made from. */
export interface KeptSource {
  readonly edited: EditedKitchen;
  readonly state: RecordState;
  readonly foods: FoodTable;
  readonly names: SheetNames;
}

/** Money as a decimal number with the currency's own decimals. */
function moneyOf(currency: string): (minor: number) => number {
  return (minor) => Number(toDecimalText({ minor, currency }));
}

/** Every look at a price, by food, shop, pack and day. Titles are English words for programs; money is in `currency`. */
export function pricesCsv({ edited, state, foods, names }: KeptSource): string {
  const money = moneyOf(edited.currency);
  const rows = priceHistory(edited, state, foods).flatMap(({ food, shop, pack, label, points }) =>
    points.map(({ on, priceMinor, massG, perKgMinor }): Cell[] => [
      names.food(food),
      names.shop(shop),
      label,
      on,
      money(priceMinor),
      massG,
      perKgMinor === undefined ? undefined : money(Math.round(perKgMinor)),
      edited.currency,
      pack,
    ]),
  );
  return toCsvText(
    ["food", "shop", "label", "seen_on", "price", "mass_g", "price_per_kg", "currency", "pack_id"],
    rows,
  );
}

/** What is in the stores on a day, in the order in which to use it. */
export function storesCsv({ edited, state, names }: KeptSource, day: CivilDate): string {
  const money = moneyOf(edited.currency);
  const lots = firstExpiredFirstOut(state.lots.values()).filter(({ since }) => since <= day);
  const rows = lots.map((lot): Cell[] => [
    nameOf(lot, names),
    lot.place,
    lot.since,
    lot.openedOn,
    lot.keeps?.ok ? lot.keeps.on : undefined,
    toGrams(lot.leftG),
    money(lot.leftMinor),
    edited.currency,
    lot.id,
  ]);
  return toCsvText(["what", "place", "since", "opened_on", "until", "mass_g", "worth", "currency", "lot_id"], rows);
}

/**
 * What came into each lot and what left it, by day; what left is negative. For each lot the costs add up to what is left of
 * it, and so do the masses with what counting found.
 */
export function movementsCsv({ edited, state, names }: KeptSource): string {
  const money = moneyOf(edited.currency);
  const rows = [...state.lots.values()].flatMap((lot) => {
    const what = nameOf(lot, names);
    const row = (on: CivilDate, kind: string, massG: number, minor: number): Cell[] => [
      on,
      kind,
      what,
      toGrams(massG),
      money(minor),
      edited.currency,
      lot.id,
    ];
    return [
      row(lot.since, lot.origin, lot.broughtG, lot.broughtMinor),
      ...(lot.foundG > 0 ? [row(lot.since, "found", lot.foundG, 0)] : []),
      ...lot.outflows.map(({ on, kind, massG, costMinor }) => row(on, kind, -massG, costMinor === 0 ? 0 : -costMinor)),
    ];
  });
  rows.sort((a, b) => (String(a[0]) < String(b[0]) ? -1 : String(a[0]) > String(b[0]) ? 1 : 0));
  return toCsvText(["on", "kind", "what", "mass_g", "cost", "currency", "lot_id"], rows);
}

/** The accounts: in each row opening + entered + till = plates + waste + carry_over. */
export function accountsCsv({ currency }: Pick<EditedKitchen, "currency">, lines: readonly AccountLine[]): string {
  const money = moneyOf(currency);
  const rows = lines.map((line): Cell[] => [
    line.name,
    line.from,
    line.to,
    ...[line.openingMinor, line.enteredMinor, line.tillMinor, line.platesMinor, line.wasteMinor].map(money),
    ...[line.carryOverMinor, line.faresMinor, line.ateOutMinor].map(money),
    line.planned === undefined ? undefined : money(line.planned.tillMinor),
    currency,
  ]);
  const titles = [
    "name",
    "from",
    "to",
    "opening",
    "entered",
    "till",
    "plates",
    "waste",
    "carry_over",
    "fares",
    "ate_out",
  ];
  return toCsvText([...titles, "planned_till", "currency"], rows);
}

function nameOf({ food, cooked }: LotState, names: SheetNames): string {
  return cooked === undefined ? names.food(food ?? "") : names.dish(cooked.dish);
}

function toGrams(massG: number): number {
  return Math.round(massG * 1000) / 1000;
}

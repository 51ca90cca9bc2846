import type { FoodTable } from "../../../food/index.ts";
import { massOfPack, type Pack } from "../../../price/index.ts";
import type { CivilDate } from "../../../quantity/index.ts";
import { keepingOf, type LotState } from "../../../stores/index.ts";
import type { Kitchen } from "../../kitchen.ts";
import type { RecordState } from "../recordState.ts";

/** What would have saved a loss. */
export type Saving =
  /** Less bought: so many packs of that kind would have held what was used, and cost so much less. */
  | { readonly kind: "smaller-pack"; readonly pack: string; readonly count: number; readonly savesMinor: number }
  /** The rest frozen on that day at the latest. */
  | { readonly kind: "freeze"; readonly by: CivilDate }
  /** The rest eaten on that day at the latest. */
  | { readonly kind: "eat"; readonly by: CivilDate };

/** What was lost of one lot, in g and in minor units. */
export interface LotLoss {
  readonly lot: string;
  readonly on: CivilDate;
  readonly massG: number;
  readonly costMinor: number;
  /** Part of it that was found missing. */
  readonly missingG: number;
  readonly savings: readonly Saving[];
}

/** What was lost of one food, or of one dish. */
export interface FoodLoss {
  readonly food?: string;
  readonly dish?: string;
  readonly massG: number;
  readonly costMinor: number;
  readonly lots: readonly LotLoss[];
}

/**
 * The waste from one day to another by food and dish, the dearest first, each with what would have saved it: packs that
 * the kitchen knows at their latest prices, and the freezer where it has one and the food keeps there. A lot that was
 * lost while it was still good, or whose last day nobody knows, has no day to freeze or to eat it by.
 */
export function wasteBy(
  kitchen: Pick<Kitchen, "packs" | "kit">,
  state: RecordState,
  foods: FoodTable,
  from: CivilDate,
  to: CivilDate,
): FoodLoss[] {
  const byFood = new Map<string, LotLoss[]>();
  const names = new Map<string, Pick<FoodLoss, "food" | "dish">>();
  for (const lot of state.lots.values()) {
    const loss = toLoss(lot, kitchen, foods, from, to);
    if (loss === undefined) continue;
    const { food, cooked } = lot;
    const key = cooked === undefined ? `food ${food}` : `dish ${cooked.dish}`;
    names.set(key, cooked === undefined ? { ...(food !== undefined && { food }) } : { dish: cooked.dish });
    byFood.set(key, [...(byFood.get(key) ?? []), loss]);
  }
  const add = (lots: readonly LotLoss[], key: "massG" | "costMinor") => lots.reduce((sum, lot) => sum + lot[key], 0);
  const losses = [...byFood].map(([key, lots]) => {
    return { ...names.get(key), massG: add(lots, "massG"), costMinor: add(lots, "costMinor"), lots };
  });
  return losses.sort((a, b) => b.costMinor - a.costMinor);
}

function toLoss(
  lot: LotState,
  kitchen: Pick<Kitchen, "packs" | "kit">,
  foods: FoodTable,
  from: CivilDate,
  to: CivilDate,
): LotLoss | undefined {
  const lost = lot.outflows.filter(
    ({ kind, on }) => (kind === "wasted" || kind === "missing") && from <= on && on <= to,
  );
  const last = lost.at(-1);
  if (last === undefined) return undefined;
  const massOf = (flows: typeof lost) => flows.reduce((sum, { massG }) => sum + massG, 0);
  const missing = lost.filter(({ kind }) => kind === "missing");
  return {
    lot: lot.id,
    on: last.on,
    massG: massOf(lost),
    costMinor: lost.reduce((sum, { costMinor }) => sum + costMinor, 0),
    missingG: massOf(missing),
    savings: [...findDays(lot, kitchen, foods, last.on), ...findSmallerPack(lot, kitchen, foods)],
  };
}

/** Days that were missed: only where it was lost because its time was over. */
function findDays(lot: LotState, { kit }: Pick<Kitchen, "kit">, foods: FoodTable, lostOn: CivilDate): Saving[] {
  const { keeps } = lot;
  if (!keeps?.ok || keeps.on >= lostOn) return [];
  const keeping = keepingOf(lot, foods)?.keeping;
  const life = lot.openedOn === undefined ? keeping?.unopened : keeping?.opened;
  const isFreezable = kit.freezerLitres > 0 && life?.freezer !== undefined;
  const mayFreeze = isFreezable && lot.place !== "freezer" && lot.thawedOn === undefined;
  return [...(mayFreeze ? [{ kind: "freeze" as const, by: keeps.on }] : []), { kind: "eat", by: keeps.on }];
}

/** The cheapest packs of the food, smaller than the lot, that would have held all that was used of it for less. */
function findSmallerPack(lot: LotState, { packs }: Pick<Kitchen, "packs">, foods: FoodTable): Saving[] {
  const food = lot.food === undefined ? undefined : foods.get(lot.food);
  if (food === undefined || lot.origin !== "bought") return [];
  const usedG = lot.outflows.reduce(
    (sum, { kind, massG }) => (kind === "wasted" || kind === "missing" ? sum : sum + massG),
    lot.leftG,
  );
  const offers = packs.flatMap((pack) => priceFor(pack, lot, food, usedG));
  const best = offers.sort((a, b) => b.savesMinor - a.savesMinor)[0];
  return best === undefined ? [] : [best];
}

function priceFor(
  pack: Pack,
  lot: LotState,
  food: Parameters<typeof massOfPack>[1],
  usedG: number,
): Extract<Saving, { kind: "smaller-pack" }>[] {
  if (pack.food !== lot.food || pack.reduced !== undefined || !(usedG > 0)) return [];
  const mass = massOfPack(pack, food);
  if (!mass.ok || mass.massG >= lot.broughtG) return [];
  const count = Math.ceil(usedG / mass.massG - 1e-9);
  const savesMinor = lot.broughtMinor - count * pack.priceMinor;
  return savesMinor > 0 ? [{ kind: "smaller-pack", pack: pack.id, count, savesMinor }] : [];
}

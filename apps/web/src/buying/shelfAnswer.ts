import type { FoodTable } from "halfloaf/food";
import type { WeekPlan } from "halfloaf/kitchen";
import { massOfPack, type Pack, priceOfCount } from "halfloaf/price";

/** What stands at the shelf in place of what the list says. */
export type ShelfNews =
  | { readonly kind: "price"; readonly priceMinor: number }
  | { readonly kind: "size"; readonly priceMinor: number; readonly massG: number }
  | { readonly kind: "gone" };

/** So many packs of a kind that hold what is wanted, and what the till says for them. */
interface Enough {
  readonly pack: Pack;
  readonly count: number;
  readonly massG: number;
  readonly costMinor: number;
}

/** What can be said at once, before the week is planned again. Money in minor units. */
export interface ShelfAnswer {
  /** Grams that the plan takes of these packs. */
  readonly neededG: number;
  /** What stands there, as many as hold what is wanted; absent where there is nothing. */
  readonly found?: Enough;
  /** By how much that is dearer than the list says; absent with `found`. */
  readonly dearerMinor?: number;
  /** Another pack of the same food in the same shop that costs least for what is wanted; absent where there is none. */
  readonly other?: Enough;
  /** True where taking what stands there costs no more than the other pack does. */
  readonly isWorthIt: boolean;
}

type Line = WeekPlan["trips"][number]["lines"][number];

/**
 * Answers for one line of a buying list, by what its lots are used for in the week (`lots`) and by the packs of the shop. A
 * pack of unknown mass is no other pack. Nothing is said of dishes: the planner answers that.
 */
export function shelfAnswer(
  line: Line,
  news: ShelfNews,
  { week, lots, packs, foods }: { week: WeekPlan; lots: readonly string[]; packs: readonly Pack[]; foods: FoodTable },
): ShelfAnswer {
  const pack = packs.find(({ id }) => id === line.pack);
  const used = week.lots.filter(({ id }) => lots.includes(id)).reduce((sum, { usedG }) => sum + usedG, 0);
  const neededG = used > 0 ? used : line.massG;
  const others = packs
    .filter(({ id, food, shop }) => id !== line.pack && food === line.food && shop === pack?.shop)
    .flatMap((each) => enough(each, neededG, foods) ?? [])
    .sort((a, b) => a.costMinor - b.costMinor || a.massG - b.massG);
  const [other] = others;
  const found = pack && findAtShelf(pack, line, news, neededG);
  const isWorthIt = found !== undefined && (other === undefined || found.costMinor <= other.costMinor);
  return {
    neededG,
    ...(found && { found, dearerMinor: found.costMinor - line.priceMinor }),
    ...(other && { other }),
    isWorthIt,
  };
}

/** What stands at the shelf: at another price as many as planned, of another size as many as hold what is wanted. */
function findAtShelf(pack: Pack, line: Line, news: ShelfNews, neededG: number): Enough | undefined {
  if (news.kind === "gone") return undefined;
  const { offer: _offer, ...single } = pack;
  const seen = { ...single, priceMinor: news.priceMinor };
  const [massG, count] =
    news.kind === "size"
      ? [news.massG, Math.max(1, Math.ceil(neededG / news.massG - 1e-9))]
      : [line.massG / line.count, line.count];
  return { pack: seen, count, massG: massG * count, costMinor: priceOfCount(seen, count) };
}

function enough(pack: Pack, neededG: number, foods: FoodTable): Enough | undefined {
  const food = foods.get(pack.food);
  const mass = food === undefined ? undefined : massOfPack(pack, food);
  if (!mass?.ok) return undefined;
  const count = Math.max(1, Math.ceil(neededG / mass.massG - 1e-9));
  if (pack.limit !== undefined && count > pack.limit) return undefined;
  return { pack, count, massG: mass.massG * count, costMinor: priceOfCount(pack, count) };
}

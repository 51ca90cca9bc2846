import type { FoodTable } from "../../../food/index.ts";
import { massOfPack, type Offer } from "../../../price/index.ts";
import type { CivilDate } from "../../../quantity/index.ts";
import type { EditedKitchen } from "../kitchenRecord.ts";
import type { RecordState } from "../recordState.ts";

/** One look at the price of a pack. */
export interface PricePoint {
  readonly on: CivilDate;
  /** Price of one pack in minor units. */
  readonly priceMinor: number;
  readonly offer?: Offer;
  /** What the pack held, in g as purchased; absent where it is not known. */
  readonly massG?: number;
  /** Unit price of a single pack, in minor units that need not be whole; absent with the mass. */
  readonly perKgMinor?: number;
  /** Change of the unit price against the look before, in percent; absent where either is not known, or was 0. */
  readonly changePct?: number;
}

/** The prices of one pack over time, by day, the earliest first. */
export interface PriceHistory {
  readonly food: string;
  readonly shop: string;
  readonly pack: string;
  readonly label: string;
  /** Never empty but for a pack whose price is an estimate and was never seen. */
  readonly points: readonly PricePoint[];
}

/** What of the history is asked for; absent = all. */
export interface PriceQuestion {
  readonly food?: string;
  readonly shop?: string;
}

/** The prices seen of the kitchen's packs, by food, then shop, then pack. What a pack itself says it was seen at counts too. */
export function priceHistory(
  edited: Pick<EditedKitchen, "packs">,
  state: Pick<RecordState, "prices">,
  foods: FoodTable,
  { food, shop }: PriceQuestion = {},
): PriceHistory[] {
  const asked = edited.packs.filter(
    (pack) => (food === undefined || pack.food === food) && (shop === undefined || pack.shop === shop),
  );
  const histories = asked.map((pack): PriceHistory => {
    const facts = foods.get(pack.food);
    const known = facts === undefined ? undefined : massOfPack(pack, facts);
    const packG = known?.ok ? known.massG : undefined;
    const own = pack.seen === undefined ? [] : [{ ...toLook(pack, packG), on: pack.seen.on }];
    const seen = state.prices.filter((price) => price.pack === pack.id);
    const looks = seen.map((price) => ({ ...toLook(price, price.massG ?? packG), on: price.seen.on }));
    const inTurn = [...own, ...looks].sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0));
    const points = inTurn.map((point, at) => withChange(point, inTurn[at - 1]));
    return { food: pack.food, shop: pack.shop, pack: pack.id, label: pack.label, points };
  });
  const keyOf = (one: PriceHistory) => `${one.food} ${one.shop} ${one.pack}`;
  return histories.sort((a, b) => (keyOf(a) < keyOf(b) ? -1 : 1));
}

function toLook(
  { priceMinor, offer }: { readonly priceMinor: number; readonly offer?: Offer | undefined },
  massG: number | undefined,
): Omit<PricePoint, "on"> {
  const unit = massG === undefined ? {} : { massG, perKgMinor: (priceMinor / massG) * 1000 };
  return { priceMinor, ...(offer !== undefined && { offer }), ...unit };
}

function withChange(point: PricePoint, before: PricePoint | undefined): PricePoint {
  const [now, then] = [point.perKgMinor, before?.perKgMinor];
  if (now === undefined || then === undefined || then === 0) return point;
  return { ...point, changePct: (100 * (now - then)) / then };
}

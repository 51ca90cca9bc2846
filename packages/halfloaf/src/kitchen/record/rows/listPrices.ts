import type { FoodTable } from "../../../food/index.ts";
import type { CivilDate } from "../../../quantity/index.ts";
import { type PriceQuestion, priceHistory } from "../account/priceHistory.ts";
import type { EditedKitchen } from "../kitchenRecord.ts";
import type { RecordState } from "../recordState.ts";

/** One look at the price of one pack; money in minor units. */
export interface PriceRow {
  readonly on: CivilDate;
  readonly food: string;
  readonly shop: string;
  readonly pack: string;
  readonly label: string;
  readonly priceMinor: number;
  /** So many packs for so much; absent without an offer. */
  readonly offerCount?: number;
  readonly offerMinor?: number;
  /** What the pack held, in g as purchased; absent where it is not known, and so is the unit price. */
  readonly massG?: number;
  /** Need not be whole. */
  readonly perKgMinor?: number;
  /** Change of the unit price against the look before, in percent; absent for the first. */
  readonly changePct?: number;
}

/** All prices that were seen, as plain rows by food, shop, pack and day; estimates that nobody saw are left out. */
export function listPrices(
  edited: Pick<EditedKitchen, "packs">,
  state: Pick<RecordState, "prices">,
  foods: FoodTable,
  question: PriceQuestion = {},
): PriceRow[] {
  return priceHistory(edited, state, foods, question).flatMap(({ points, food, shop, pack, label }) =>
    points.map(({ on, priceMinor, offer, massG, perKgMinor, changePct }): PriceRow => {
      return {
        on,
        food,
        shop,
        pack,
        label,
        priceMinor,
        ...(offer !== undefined && { offerCount: offer.count, offerMinor: offer.priceMinor }),
        ...(massG !== undefined && { massG }),
        ...(perKgMinor !== undefined && { perKgMinor }),
        ...(changePct !== undefined && { changePct }),
      };
    }),
  );
}

import type { Observation, Offer, Pack, Shop } from "halfloaf/price";
import { toMassG } from "halfloaf/quantity";
import { type PackCandidate, toObservation } from "./PackCandidate.ts";
import type { Receipt, ReceiptItem } from "./Receipt.ts";

/** Why an item of a receipt tells no price of a known pack. */
export type NoObservation = "pack-open" | "day-unknown" | "shop-unknown" | "price-not-whole" | "content-unlike";

/** The looks at prices that a receipt is, and the items that are none with the reason. */
export interface ReceiptPrices {
  readonly observations: readonly Observation[];
  readonly without: readonly { readonly item: ReceiptItem; readonly reason: NoObservation }[];
}

/**
 * Takes from a receipt what each known pack cost, where and when. Of several on one line with a discount that is an offer
 * for so many; a discount of a single one leaves the price on the shelf as it is. Goods sold by mass tell the price of as
 * much as the pack holds, to the nearest minor unit.
 */
export function observeReceipt(receipt: Receipt, shops: readonly Pick<Shop, "id" | "name">[]): ReceiptPrices {
  const observations: Observation[] = [];
  const without: { item: ReceiptItem; reason: NoObservation }[] = [];
  const shop = shops.find(({ id }) => id === receipt.shop);
  for (const item of receipt.items) {
    const seen = receipt.date === undefined || !shop ? undefined : { on: receipt.date, at: shop.name };
    const priceMinor = item.match.kind === "known" ? packPriceMinor(item, item.match.pack) : "pack-open";
    if (item.match.kind === "open") without.push({ item, reason: "pack-open" });
    else if (typeof priceMinor === "string") without.push({ item, reason: priceMinor });
    else if (seen === undefined) without.push({ item, reason: shop ? "day-unknown" : "shop-unknown" });
    else {
      const offer = toOffer(item, priceMinor);
      observations.push(toObservation(item.match.pack, { priceMinor, ...(offer && { offer }), seen }) as Observation);
    }
  }
  return { observations, without };
}

/** What an open item tells of a new pack: its label as printed, price, place and day; content and food are not on receipts. */
export function toCandidate(
  item: ReceiptItem,
  { date, shop: id }: Receipt,
  shops: readonly Pick<Shop, "id" | "name">[],
): PackCandidate | undefined {
  const shop = shops.find((each) => each.id === id);
  const mass = item.measured?.kind === "mass" ? item.measured : undefined;
  const content: Pack["content"] | undefined = mass && { massG: toMassG(mass.per.value, mass.per.unit) as number };
  const priceMinor = mass ? mass.rateMinor : pieceMinor(item);
  if (typeof priceMinor === "string") return undefined;
  return {
    label: item.name,
    ...(shop && { shop: shop.id }),
    ...(content && { content }),
    priceMinor,
    ...(item.gtin !== undefined && { gtin: item.gtin }),
    ...(date !== undefined && shop && { seen: { on: date, at: shop.name } }),
  };
}

function packPriceMinor(item: ReceiptItem, { content }: Pick<Pack, "content">): number | NoObservation {
  if (item.measured?.kind !== "mass") return pieceMinor(item);
  if (!("massG" in content)) return "content-unlike";
  const { per, rateMinor } = item.measured;
  return Math.round((content.massG * rateMinor) / (toMassG(per.value, per.unit) as number));
}

function pieceMinor({ measured, priceMinor }: ReceiptItem): number | NoObservation {
  if (measured?.kind !== "count") return priceMinor;
  const each = measured.eachMinor ?? priceMinor / measured.count;
  return Number.isSafeInteger(each) ? each : "price-not-whole";
}

function toOffer({ measured, priceMinor, discountMinor }: ReceiptItem, eachMinor: number): Offer | undefined {
  if (measured?.kind !== "count" || measured.count < 2 || discountMinor === 0) return undefined;
  const together = priceMinor + discountMinor;
  const isOffer = together >= 0 && together <= measured.count * eachMinor;
  return isOffer ? { kind: "several", count: measured.count, priceMinor: together } : undefined;
}

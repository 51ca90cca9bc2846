import { gtinCheckDigit, type Pack } from "halfloaf/price";

/** Shops of an invented town. */
export const SHOPS = [
  { id: "tally-store", name: "Tally Store" },
  { id: "quay-market", name: "Quay Market" },
];

/** A number with its check digit. */
export function gtinOf(digits: string): string {
  return digits + gtinCheckDigit(digits);
}

/** A pack of half a kilogram of oats, with what is given put in its place. */
export function makePack(over: Partial<Pack> = {}): Pack {
  return {
    id: "oats-500",
    shop: "tally-store",
    food: "oats-rolled",
    label: "Rolled oats, 500 g",
    content: { massG: 500 },
    priceMinor: 79,
    seen: { on: "2026-11-20", at: "Tally Store" },
    section: "dry goods",
    ...over,
  };
}

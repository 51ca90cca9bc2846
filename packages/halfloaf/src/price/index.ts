export { Gtin, gtinCheckDigit, isGtin, toGtin14 } from "./gtin.ts";
export { AGED_AFTER_DAYS, judgePriceAge, type PriceSureness } from "./judgePriceAge.ts";
export { priceOfCount, type UnitPriceOfPack, unitPrice } from "./offer.ts";
export { limitOfPack, type MassOfPack, massOfPack, Offer, Pack, Seen } from "./pack.ts";
export {
  type CheapestPrices,
  cheapestByFood,
  latestPrices,
  Observation,
  type PricedPack,
  type UnitPrice,
} from "./priceBook.ts";
export { Shop } from "./shop.ts";

export { guessPriceList, type PriceListGuess, toPriceListMapping } from "./guessPriceList.ts";
export { type NoObservation, observeReceipt, type ReceiptPrices, toCandidate } from "./observeReceipt.ts";
export { type PackCandidate, toObservation, toPack } from "./PackCandidate.ts";
export {
  type Goods,
  type NearPack,
  PackIndex,
  type PackMatch,
  rememberMatch,
  type SaidMatch,
} from "./PackIndex.ts";
export {
  contentOfLabel,
  linesOfList,
  linesOfReceipt,
  type NewPackSaid,
  newObservations,
  newPackOf,
  type PricedLine,
} from "./PricedLine.ts";
export { type Customary, parseContent, type ReadContent } from "./parseContent.ts";
export { PriceListMapping, parsePriceListMapping } from "./priceListMapping.ts";
export type { PriceColumn } from "./priceListWords.ts";
export type { Receipt, ReceiptBalance, ReceiptExtra, ReceiptItem } from "./Receipt.ts";
export type { Measured, Rate } from "./ReceiptLexer.ts";
export { type Barcode, type EmbeddedValue, type RestrictedLayout, readBarcode } from "./readBarcode.ts";
export { type DateOrder, type ReadDay, readDay } from "./readDay.ts";
export {
  type PriceListContext,
  type PriceListReading,
  type PriceRow,
  readPriceList,
  rematch,
} from "./readPriceList.ts";
export { type ReceiptContext, readReceipt } from "./readReceipt.ts";
export { ENGLISH_RECEIPT, GERMAN_RECEIPT, type ReceiptWords } from "./receiptWords.ts";

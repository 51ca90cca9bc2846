export type { BrokenClaim, Claim, Printed } from "./claim/Claim.ts";
export { MONEY_CLAIMS } from "./claim/Claim.ts";
export { checkClaims } from "./claim/checkClaims.ts";
export { unitWordOfCommonCode } from "./commonCodes.ts";
export type {
  DayFlow,
  DayIntake,
  DayLeft,
  DayPlate,
  DayPurchase,
  DayRest,
  DaySheet,
  DaySittingLine,
  DayTrip,
  DayWaiting,
  IntakeCell,
  Named,
  PriceSource,
  SheetCaution,
} from "./day/DaySheet.ts";
export { dayHtml, type SheetOptions } from "./day/dayHtml.ts";
export { toDaySheet } from "./day/toDaySheet.ts";
export { dishToJsonLd, type JsonLdOptions, toJsonLdText } from "./dishToJsonLd.ts";
export { PAPERS, type Paper } from "./html/sheetCss.ts";
export { type JsonLd, type JsonLdValue, OWN_PREFIX } from "./ownProperty.ts";
export { FOOD_KINDS, type FoodKind, foodKindOf } from "./ribbons/foodKindOf.ts";
export {
  type Bead,
  layRibbons,
  RIBBON_SIZES,
  type Ribbon,
  type RibbonPicture,
  type RibbonSizes,
  type Station,
  type Stretch,
} from "./ribbons/layRibbons.ts";
export { letterOf, listTicks, type TimelineWords, timelineSvg } from "./timelineSvg.ts";
export type { SheetNames, WeekSource } from "./WeekSource.ts";
export { toWeekSheet } from "./week/toWeekSheet.ts";
export type { WeekSheet } from "./week/WeekSheet.ts";
export { weekHtml } from "./week/weekHtml.ts";
export type { DayWords } from "./words/DayWords.ts";
export type { FigureWords, SheetWords } from "./words/SheetWords.ts";

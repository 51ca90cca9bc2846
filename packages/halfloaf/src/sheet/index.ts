export type { Calendar, CalendarEntry } from "./calendar/CalendarEntry.ts";
export { CalendarTemplates, fromCalendarTemplates, toCalendarTemplates } from "./calendar/calendarTemplates.ts";
export { type CalendarSpeech, type SittingTimes, toCalendar } from "./calendar/toCalendar.ts";
export { writeCalendar } from "./calendar/writeCalendar.ts";
export { zoneClock } from "./calendar/zonedTime.ts";
export type {
  CardAllergens,
  CardDeclarationLine,
  CardLine,
  CardSheet,
  ShopCost,
} from "./card/CardSheet.ts";
export { type CardOptions, cardHtml } from "./card/cardHtml.ts";
export { type CardSource, toCardSheet } from "./card/toCardSheet.ts";
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
export { toIngredient } from "./jsonLdSupply.ts";
export type { LessonCooking, LessonPack, LessonPlate, LessonSheet } from "./lesson/LessonSheet.ts";
export { lessonHtml } from "./lesson/lessonHtml.ts";
export { dayLesson, dishLesson } from "./lesson/toLessonSheet.ts";
export { type JsonLd, type JsonLdValue, OWN_PREFIX } from "./ownProperty.ts";
export {
  ACCOUNT_BARS,
  type AccountBar,
  type AccountsWords,
  accountsSvg,
} from "./picture/accountsSvg.ts";
export { costDriversSvg } from "./picture/costDriversSvg.ts";
export { type FrontierPoint, type FrontierWords, frontierSvg } from "./picture/frontierSvg.ts";
export { niceStep, niceTicks } from "./picture/niceTicks.ts";
export { type PriceHistoryWords, priceHistorySvg } from "./picture/priceHistorySvg.ts";
export { type RibbonWords, ribbonsSvg } from "./picture/ribbonsSvg.ts";
export type { PictureWords } from "./picture/svgFrame.ts";
export { countPacks, type PackCounts } from "./ribbons/countPacks.ts";
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
export { accountsCsv, type KeptSource, movementsCsv, pricesCsv, storesCsv } from "./table/kitchenTables.ts";
export { type Cell, toCsvText } from "./table/toCsvText.ts";
export { letterOf, listTicks, type TimelineWords, timelineSvg } from "./timelineSvg.ts";
export type { SheetNames, WeekSource } from "./WeekSource.ts";
export { toWeekSheet } from "./week/toWeekSheet.ts";
export type { WeekSheet } from "./week/WeekSheet.ts";
export { weekHtml } from "./week/weekHtml.ts";
export type { CalendarWords } from "./words/CalendarWords.ts";
export type { CardWords } from "./words/CardWords.ts";
export type { CautionWords } from "./words/CautionWords.ts";
export type { DayWords } from "./words/DayWords.ts";
export type { LessonWords } from "./words/LessonWords.ts";
export type { SheetPictureWords } from "./words/SheetPictureWords.ts";
export type { FigureWords, SheetWords } from "./words/SheetWords.ts";

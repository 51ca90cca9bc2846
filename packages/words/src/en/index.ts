export {
  counted,
  tellCount,
  tellEnergy,
  tellMass,
  tellMinutes,
  tellMoney,
  tellNumber,
  tellPercent,
  tellPortions,
} from "./amountWords.ts";
export { tellDay, tellDayShort, tellWeekday, tellYear } from "./calendarWords.ts";
export { CLOSING, tellReferral } from "./careWords.ts";
export { tellAmountOf, tellComponent, tellFigureOf } from "./componentWords.ts";
export { ROW_NAMES, SITTING_NAMES } from "./nameWords.ts";
export { nameRow } from "./sheet/timelineWords.ts";

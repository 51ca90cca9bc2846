export { Amount } from "./amount.ts";
export { type AmountBounds, amountBounds } from "./amountBounds.ts";
export { addDays, CivilDate, daysBetween, isCivilDate, weekday } from "./civilDate.ts";
export { fromMassG, fromVolumeMl, toMassG, toVolumeMl } from "./convertUnit.ts";
export { KJ_PER_KCAL, toKcal, toKj } from "./energy.ts";
export { holdsMoreThan } from "./holdsMoreThan.ts";
export { type Issue, type Parsed, parseWith, toIssues } from "./issue.ts";
export {
  addMoney,
  CURRENCY_EXPONENTS,
  Currency,
  formatMoney,
  Money,
  parseMoney,
  sumMoney,
  toDecimalText,
} from "./money.ts";
export { moveDates } from "./moveDates.ts";
export { createRandomSource, type RandomSource } from "./RandomSource.ts";
export { splitByLargestRemainder } from "./splitByLargestRemainder.ts";
export { toCelsius, toFahrenheit } from "./temperature.ts";
export { UNIT_CODES, UNITS, type UnitCode } from "./unit.ts";

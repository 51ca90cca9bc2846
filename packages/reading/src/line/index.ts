export type {
  EmptyLine,
  HeadingLine,
  MakingsAmount,
  MakingsChoice,
  MakingsLine,
  Measure,
  MeasurePart,
  ReadLine,
} from "./makingsLine.ts";
export { MOST_CHARACTERS, readMakingsLine } from "./readMakingsLine.ts";
export { type ConvertedAmount, type English, toAmount } from "./toAmount.ts";
export type { Span, Sureness, Told } from "./told.ts";
export { findUnitWord, UNIT_WORDS, type UnitKind, type UnitWord } from "./unitWords.ts";

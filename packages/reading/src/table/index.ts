export {
  type ComponentChange,
  compareFood,
  type FoodComparison,
  type Replacing,
  type ReplacingChoice,
  replaceFigures,
  type SourcedFigure,
} from "./compareFood.ts";
export { CsvForm } from "./csvForm.ts";
export { type FileSource, type ReadingProgress, type ReadingWatch, sourceOf } from "./FileSource.ts";
export { findOfficialFoods, type OfficialCandidate } from "./findOfficialFoods.ts";
export {
  type OfficialFood,
  type OfficialPortion,
  type OfficialTable,
  sourceOfFigure,
  type TableCounts,
  type TableReading,
} from "./OfficialTable.ts";
export { type FoodDataFiles, readFoodDataCsv } from "./readFoodDataCsv.ts";
export { readFoodDataJson } from "./readFoodDataJson.ts";
export { readMappedTable } from "./readMappedTable.ts";
export { ENCODINGS, type Encoding } from "./TextDecoding.ts";
export { parseTableMapping, TableMapping } from "./tableMapping.ts";

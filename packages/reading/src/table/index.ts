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
export { changesOf, type FigureChange } from "./figureChanges.ts";
export { findNumberedFoods, type NumberedFood } from "./findNumberedFoods.ts";
export { findOfficialFoods, type OfficialCandidate } from "./findOfficialFoods.ts";
export { fitOwnFoods, type OwnFoodsBeside } from "./fitOwnFoods.ts";
export { foodDataFiles, NEEDED_DOWNLOAD_FILES } from "./foodDataFiles.ts";
export { figureColumn, guessTable, SODIUM_PER_SALT, type TableGuess, toTableMapping } from "./guessTable.ts";
export {
  type OfficialFood,
  type OfficialPortion,
  type OfficialTable,
  sourceOfFigure,
  type TableCounts,
  type TableReading,
} from "./OfficialTable.ts";
export { composeDerived } from "./RawFigures.ts";
export { type FoodDataFiles, readFoodDataCsv } from "./readFoodDataCsv.ts";
export { readFoodDataJson } from "./readFoodDataJson.ts";
export { readMappedTable } from "./readMappedTable.ts";
export { ENCODINGS, type Encoding } from "./TextDecoding.ts";
export { type FigureColumn, parseTableMapping, TableMapping } from "./tableMapping.ts";
export type { TableColumn } from "./tableWords.ts";

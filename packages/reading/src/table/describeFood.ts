import { type CivilDate, isCivilDate } from "halfloaf/quantity";

/** The kinds of food that are read, by what the download calls them in `data_type` and `dataType`, in lower case. */
export const TITLES: ReadonlyMap<string, string> = new Map([
  ["sr_legacy_food", "USDA FoodData Central SR Legacy"],
  ["sr legacy", "USDA FoodData Central SR Legacy"],
  ["foundation_food", "USDA FoodData Central Foundation"],
  ["foundation", "USDA FoodData Central Foundation"],
]);

/** Where the figures of a food come from: table, number and the date the file gives it; without the latter it says so. */
export function describeFood(title: string, id: string, publishedOn: CivilDate | undefined): string {
  return `${title}, FDC ID ${id}, ${publishedOn === undefined ? "without a date" : `as of ${publishedOn}`}`;
}

/** A publication date as the CSV files (2019-04-01) and the JSON files (4/1/2019) write it; undefined for anything else. */
export function toPublicationDate(text: string): CivilDate | undefined {
  const trimmed = text.trim();
  const american = /^(\d{1,2})\/(\d{1,2})\/(\d{4})$/.exec(trimmed);
  const [, month = "", day = "", year = ""] = american ?? [];
  const date = american === null ? trimmed : `${year}-${month.padStart(2, "0")}-${day.padStart(2, "0")}`;
  return isCivilDate(date) ? date : undefined;
}

/** What a portion measures, of the unit's name and what is said of it; a unit that is not determined says nothing. */
export function describeMeasure(unit: string | undefined, modifier: string): string {
  return [unit === "undetermined" ? "" : (unit ?? ""), modifier.trim()].filter((word) => word !== "").join(", ");
}

import { type Issue, parseWith } from "halfloaf/quantity";
import * as v from "valibot";
import { describeFood, describeMeasure, TITLES, toPublicationDate } from "./describeFood.ts";
import { type FileSource, type ReadingWatch, readText } from "./FileSource.ts";
import { quote } from "./IssueLog.ts";
import { type JsonItem, JsonItems } from "./JsonItems.ts";
import type { OfficialPortion, TableReading } from "./OfficialTable.ts";
import { RawFigures } from "./RawFigures.ts";
import { TableBuilder } from "./TableBuilder.ts";

type Path = Issue["path"];

const LISTS = ["SRLegacyFoods", "FoundationFoods"];

const text = v.pipe(v.string(), v.trim(), v.nonEmpty());
const number = v.pipe(v.number(), v.finite(), v.minValue(0));

/** A food as the download writes it; its lists are read element by element, so that a faulty one loses only itself. */
const DownloadedFood = v.object({
  fdcId: v.pipe(v.number(), v.safeInteger(), v.minValue(0)),
  dataType: text,
  description: text,
  publicationDate: v.optional(v.string(), ""),
  ndbNumber: v.optional(v.union([v.number(), text])),
  foodNutrients: v.optional(v.array(v.unknown()), []),
  foodPortions: v.optional(v.array(v.unknown()), []),
});
type DownloadedFood = v.InferOutput<typeof DownloadedFood>;

const DownloadedNutrient = v.object({
  nutrient: v.object({ number: text, unitName: text }),
  /** Absent where nothing but the median or a bound is known. */
  amount: v.optional(number),
});

const DownloadedPortion = v.object({
  /** `amount` in SR Legacy, `value` in some of Foundation. */
  amount: v.optional(number),
  value: v.optional(number),
  gramWeight: v.pipe(number, v.gtValue(0)),
  modifier: v.optional(v.string(), ""),
  measureUnit: v.optional(v.object({ name: v.optional(v.string(), "") })),
});

/**
 * Reads a JSON download of USDA FoodData Central, SR Legacy or Foundation, one food at a time: memory grows with the
 * figures kept, not with the file. Amounts are per 100 g edible portion as published; what is absent is unknown.
 * **Source**: USDA FoodData Central, JSON downloads `{"SRLegacyFoods": [...]}` and `{"FoundationFoods": [...]}` (field
 * names from memory).
 */
export async function readFoodDataJson(source: FileSource, watch: ReadingWatch = {}): Promise<TableReading> {
  const reader = new JsonReader(source.name);
  const { builder } = reader;
  const items = new JsonItems(LISTS);
  for await (const { text: piece, size } of readText(source, undefined, builder.log.tell)) {
    if (watch.signal?.aborted) return builder.end("stopped");
    for (const item of items.push(piece)) reader.addItem(item);
    watch.onProgress?.({ file: source.name, items: reader.items, size });
  }
  const list = `a list of foods under ${LISTS.map(quote).join(" or ")}`;
  if (!items.isFound) builder.fault("json", [source.name], list, "no such list");
  else if (items.depth !== 0) builder.fault("json", [source.name], "a whole JSON text", "one that is cut off");
  return builder.finish();
}

class JsonReader {
  readonly builder = new TableBuilder();
  items = 0;
  private readonly file: string;

  constructor(file: string) {
    this.file = file;
  }

  addItem({ line, column, text: json }: JsonItem): undefined {
    this.items++;
    const path = [this.file, line, column];
    const { builder } = this;
    if (json === undefined) {
      return builder.fault("json", path, "a food of moderate length and depth", "a longer or deeper one");
    }
    let content: unknown;
    try {
      content = JSON.parse(json);
    } catch {
      return builder.fault("json", path, "a food in JSON", quote(json));
    }
    const parsed = parseWith(DownloadedFood, content);
    if (parsed.ok) this.addFood(parsed.value, path);
    else builder.tellAll(parsed.issues, path);
  }

  private addFood(food: DownloadedFood, path: Path): undefined {
    const { builder } = this;
    const id = String(food.fdcId);
    const title = TITLES.get(food.dataType.toLowerCase());
    if (title === undefined) {
      builder.otherRows++;
      return;
    }
    if (builder.foods.has(id)) return builder.fault("unique", [...path, "fdcId"], "a number not used before", id);
    const publishedOn = toPublicationDate(food.publicationDate);
    if (food.publicationDate.trim() !== "" && publishedOn === undefined) {
      builder.fault("date", [...path, "publicationDate"], "a day, M/D/YYYY", quote(food.publicationDate));
    }
    const source = describeFood(title, id, publishedOn);
    const former = food.ndbNumber === undefined ? {} : { formerNumber: String(food.ndbNumber) };
    const raw = this.readFigures(food.foodNutrients, path);
    const portions = this.readPortions(food.foodPortions, path);
    builder.addFood(title, { id, ...former, name: food.description, source, ...raw.compose(source), portions });
  }

  private readFigures(nutrients: readonly unknown[], path: Path): RawFigures {
    const raw = new RawFigures();
    for (const [at, each] of nutrients.entries()) {
      const here = [...path, "foodNutrients", at];
      const parsed = parseWith(DownloadedNutrient, each);
      if (!parsed.ok) this.builder.tellAll(parsed.issues, here);
      else if (parsed.value.amount !== undefined) {
        const { nutrient, amount } = parsed.value;
        this.builder.addFigure(raw, nutrient.number, nutrient.unitName, amount, [...here, "amount"]);
      }
    }
    return raw;
  }

  private readPortions(portions: readonly unknown[], path: Path): OfficialPortion[] {
    return portions.flatMap((each, at) => {
      const parsed = parseWith(DownloadedPortion, each);
      if (!parsed.ok) {
        this.builder.tellAll(parsed.issues, [...path, "foodPortions", at]);
        return [];
      }
      const { amount = parsed.value.value, gramWeight, modifier, measureUnit } = parsed.value;
      // Some portions are published without an amount, which leaves nothing to measure by.
      return amount ? [{ amount, measure: describeMeasure(measureUnit?.name, modifier), massG: gramWeight }] : [];
    });
  }
}

/**
 * How a reading of a line is held against its labels. The three sources label in three ways; the reading is written
 * down in the way of the source and then compared exactly.
 *
 * - All: numbers as values, number words as numbers. Units in the singular, abbreviations as the unit they stand for; a
 *   dozen in the unit multiplies. An article ("a pinch") counts as 1 or as unsaid.
 * - nyt: quantity and unit are those of the first telling's first part, `quantity_max` the end of a range; of packs, their
 *   count ("1 (14-ounce) can" is 1 can). The name is that of the first food.
 * - tasteset: quantity and unit are lists of every amount in the line (packs, what each holds, tellings in brackets,
 *   alternatives), in any order. A word in the quantity ("splash", "to taste") must stand in the reading, as a unit or
 *   as "to taste". The name is that of all foods.
 * - bbc: all tellings one after the other ("150 5", "g oz"), a count of packs before what each holds ("2x 400 14",
 *   "g oz tin"), units with what is said of them ("heaped tbsp"), in any order. Where the line tells one amount twice, a
 *   label with either of them in full is matched. The name is that of all foods.
 *
 * Names are compared as sets of words in the singular; `nameF1` is the F1 of the words in common.
 */
import type { MakingsAmount, MakingsLine, Measure, MeasurePart, ReadLine } from "@halfloaf/reading";
import type { LabelledLine } from "./loadLines.ts";
import { overlapF1, toNameWords, toNumbers, toUnits, writeNumber } from "./normalise.ts";

/** What of a line was read as labelled; `nameF1` from 0 to 1. */
export interface LineScore {
  readonly quantity: boolean;
  readonly unit: boolean;
  readonly nameF1: number;
}

/** Quantity and unit in the writing of a source: numbers and unit words. */
interface Writing {
  readonly numbers: readonly string[];
  readonly units: readonly string[];
}

/** Holds a reading against the labels of its line. */
export function scoreLine(read: ReadLine, label: LabelledLine): LineScore {
  if (read.kind !== "making") {
    return { quantity: label.quantity === "", unit: label.unit === "", nameF1: label.name === "" ? 1 : 0 };
  }
  const ways = WRITINGS[label.source as keyof typeof WRITINGS](read);
  const wanted = takeDozen(label.source === "tasteset" ? labelOfTasteset(read, label) : labelOf(label));
  const names = label.source === "nyt" ? read.choices.slice(0, 1) : read.choices;
  return {
    quantity:
      ways.some(({ numbers }) => same(numbers, wanted.numbers)) || (unsaid(read) && wanted.numbers.length === 0),
    unit: ways.some(({ units }) => same([...units].sort(), [...wanted.units].sort())),
    nameF1: overlapF1(toNameWords(names.map(({ name }) => name.text).join(" ")), toNameWords(label.name)),
  };
}

const WRITINGS = { nyt: writeNyt, tasteset: writeTasteset, bbc: writeBbc };

const same = (one: readonly string[], other: readonly string[]) => one.join(" ") === other.join(" ");

function unsaid(read: MakingsLine): boolean {
  const measure = read.choices[0].amount?.told[0];
  return measure === undefined || (measure.inWords && measure.parts[0]?.value === 1);
}

function labelOf({ quantity, quantityMax, unit }: LabelledLine): Writing {
  const numbers = quantityMax === "" ? toNumbers(quantity) : [...toNumbers(quantity), "-", ...toNumbers(quantityMax)];
  return { numbers, units: toUnits(unit) };
}

/** Lists are sorted; words in the quantity become units, or go where the reading says "to taste" as well. */
function labelOfTasteset(read: MakingsLine, { quantity, unit }: LabelledLine): Writing {
  const units = toUnits(unit.replaceAll(" | ", " "));
  const numbers: string[] = [];
  for (const entity of quantity.split(" | ").filter((each) => each !== "")) {
    const tokens = toNumbers(entity);
    if (tokens.some((token) => /\d/.test(token))) numbers.push(tokens.join(" "));
    else if (!(tokens.join(" ").endsWith("taste") && read.toTaste)) units.push(...toUnits(tokens.join(" ")));
  }
  return { numbers: numbers.sort(), units };
}

/** "1 dozen" is 12 pieces, whether the source calls the dozen a unit or not. */
function takeDozen({ numbers, units }: Writing): Writing {
  if (!units.includes("dozen")) return { numbers, units };
  return { numbers: writeNumber(Number(numbers[0] ?? 1) * 12), units: units.filter((unit) => unit !== "dozen") };
}

function writeNyt(read: MakingsLine): Writing[] {
  const { amount } = read.choices[0];
  const measure =
    amount && amount.told[0]?.parts[0]?.value === undefined ? (amount.each[0] ?? amount.told[0]) : amount?.told[0];
  const first = measure && {
    ...measure,
    parts: measure.parts.slice(0, 1),
    ...(measure.upTo ? { upTo: measure.upTo.slice(0, 1) } : {}),
  };
  return [first ? { numbers: writeMeasure(first), units: unitsOf(first.parts) } : { numbers: [], units: [] }];
}

function writeTasteset(read: MakingsLine): Writing[] {
  const measures = read.choices.flatMap(({ amount }) => (amount ? [...amount.told, ...amount.each] : []));
  const numbers = measures.flatMap((measure) =>
    measure.upTo ? [writeMeasure(measure).join(" ")] : measure.parts.map(({ value }) => writeValue(value).join(" ")),
  );
  return [
    { numbers: numbers.filter((text) => text !== "").sort(), units: measures.flatMap(({ parts }) => unitsOf(parts)) },
  ];
}

function writeBbc(read: MakingsLine): Writing[] {
  const { amount } = read.choices[0];
  if (!amount) return [{ numbers: [], units: [] }];
  const { told, each } = amount;
  if (each.length === 0) return [write(told), ...told.map((telling) => write([telling]))];
  const [count, ...again] = told as [Measure, ...Measure[]];
  const sizes = [each, ...each.map((size) => [size])];
  return [
    ...sizes.map((size) => write([...(isImplied(amount) ? [] : [count]), ...size, ...again], count)),
    write([count]),
  ];
}

// "400g tin" names no count, only the pack.
const isImplied = (amount: MakingsAmount) => amount.told[0]?.parts[0]?.value === undefined;

function write(measures: readonly Measure[], pack?: Measure): Writing {
  const units = (measure: Measure) => [...measure.manner, ...unitsOf(measure.parts)];
  const packed = pack && !measures.includes(pack) ? units(pack) : [];
  return { numbers: measures.flatMap(writeMeasure), units: [...measures.flatMap(units), ...packed] };
}

function writeMeasure({ parts, upTo }: Measure): string[] {
  const low = parts.flatMap(({ value }) => writeValue(value));
  return upTo ? [...low, "-", ...upTo.flatMap(({ value }) => writeValue(value))] : low;
}

const writeValue = (value: number | undefined) => (value === undefined ? [] : writeNumber(value));
const unitsOf = (parts: readonly MeasurePart[]) => parts.flatMap(({ unit }) => (unit === undefined ? [] : [unit]));

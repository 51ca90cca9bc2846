import type { Pack } from "halfloaf/price";
import { toMassG, toVolumeMl, type UnitCode } from "halfloaf/quantity";

/** What stands on a pack about its content: the whole of it, and of how many parts it is made. */
export interface ReadContent {
  readonly content: Pack["content"];
  /** 6 in "6 x 1.5 L"; absent where the pack is one whole. */
  readonly parts?: number;
}

/** Which measure an ounce of fluid, a pint, a quart or a gallon is; without it they are not read. */
export type Customary = "us" | "british";

const UNIT_WORDS = new Map<string, UnitCode>([
  ["mg", "mg"],
  ...["g", "gr", "gm", "gram", "grams", "gramme", "grammes"].map((word) => [word, "g"] as const),
  ...["kg", "kilo", "kilos", "kilogram", "kilograms"].map((word) => [word, "kg"] as const),
  ...["oz", "ounce", "ounces"].map((word) => [word, "[oz_av]"] as const),
  ...["lb", "lbs", "pound", "pounds"].map((word) => [word, "[lb_av]"] as const),
  ...["ml", "millilitre", "millilitres", "milliliter", "milliliters"].map((word) => [word, "mL"] as const),
  ["cl", "cL"],
  ["dl", "dL"],
  ...["l", "lt", "ltr", "litre", "litres", "liter", "liters"].map((word) => [word, "L"] as const),
]);

const CUSTOMARY_WORDS = new Map<string, Readonly<Record<Customary, UnitCode>>>([
  ...["floz", "fluidounce", "fluidounces"].map((word) => [word, { us: "[foz_us]", british: "[foz_br]" }] as const),
  ...["pt", "pint", "pints"].map((word) => [word, { us: "[pt_us]", british: "[pt_br]" }] as const),
  ...["qt", "quart", "quarts"].map((word) => [word, { us: "[qt_us]", british: "[qt_br]" }] as const),
  ...["gal", "gallon", "gallons"].map((word) => [word, { us: "[gal_us]", british: "[gal_br]" }] as const),
]);

const PIECE_WORDS = new Set([
  "",
  "pc",
  "pcs",
  "piece",
  "pieces",
  "ct",
  "count",
  "each",
  "ea",
  "pk",
  "pack",
  "st",
  "stk",
  "stück",
  "stueck",
]);

const FORM = /^(?:(\d{1,4})\s*[x×*]\s*)?(\d{1,7}(?:[.,]\d{1,4})?)\s*([\p{L}. ]{0,14})$/u;

/**
 * Reads the content of a pack: "500 g", "1,5 kg", "6 x 1.5 L", "12 pcs", "6 x 4". A point or comma starts decimals.
 * Undefined where any part of the text is not understood, where pieces are not whole, for customary measures of volume
 * without `customary`, and for "1.500 g", which is a kilogram and a half where a point parts thousands.
 */
export function parseContent(text: string, customary?: Customary): ReadContent | undefined {
  const plain = text
    .replace(/[\u2009\u00a0\u202f]/g, " ")
    .replace("\u212e", "")
    .trim()
    .toLowerCase();
  const [, partsText, valueText = "", word = ""] = FORM.exec(plain) ?? [];
  const value = Number(valueText.replace(",", "."));
  const parts = partsText === undefined ? 1 : Number(partsText);
  if (!(value > 0 && parts > 0)) return undefined;
  if (/^[1-9]\d{0,2}[.,]\d{3}$/.test(valueText) && /^(?:mg|g|gr|gm|gram.*|ml|millilit.*)$/.test(word.trim()))
    return undefined;
  const content = toContent(value, parts, word.replace(/[. ]/g, ""), customary);
  return content && (partsText === undefined ? { content } : { content, parts });
}

function toContent(value: number, parts: number, word: string, customary?: Customary): Pack["content"] | undefined {
  const unit = UNIT_WORDS.get(word) ?? (customary && CUSTOMARY_WORDS.get(word)?.[customary]);
  if (unit !== undefined) {
    const [massG, volumeMl] = [toMassG(value, unit), toVolumeMl(value, unit)];
    // Without this 6 x 1.1 kg would weigh 6600.000000000001 g.
    if (massG !== undefined) return { massG: Number((parts * massG).toPrecision(12)) };
    return volumeMl === undefined ? undefined : { volumeMl: Number((parts * volumeMl).toPrecision(12)) };
  }
  return PIECE_WORDS.has(word) && Number.isInteger(value) ? { pieces: parts * value } : undefined;
}

/** True where two contents are the same kind and size within one in a thousand; pieces must be equal. */
export function isSameContent(a: Pack["content"], b: Pack["content"]): boolean {
  if ("massG" in a && "massG" in b) return isNear(a.massG, b.massG);
  if ("volumeMl" in a && "volumeMl" in b) return isNear(a.volumeMl, b.volumeMl);
  return "pieces" in a && "pieces" in b && a.pieces === b.pieces;
}

function isNear(a: number, b: number): boolean {
  return Math.abs(a - b) <= Math.max(a, b) / 1000;
}

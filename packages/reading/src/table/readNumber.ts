import type { CsvForm } from "./csvForm.ts";

const DIGITS = /^\d+(?:\.\d+)?(?:[eE][+-]?\d{1,3})?$/;

/**
 * The number that a cell holds, not negative; undefined where it holds none. A mark of thousands must stand before every
 * three digits; a decimal mark other than the stated one is no part of a number, so "1.234" is none where commas are
 * stated and thousands are not.
 */
export function readNumber(
  cell: string,
  { decimal, thousands }: Pick<CsvForm, "decimal" | "thousands">,
): number | undefined {
  let text = cell.trim();
  if (thousands !== undefined && thousands !== decimal) {
    // Some tables part thousands by spaces that do not break.
    if (thousands === " ") text = text.replace(/[\u00a0\u202f]/g, " ");
    const [whole = "", ...rest] = text.split(decimal);
    const groups = whole.split(thousands);
    const isGrouped = groups.slice(1).every((group) => /^\d{3}$/.test(group)) && /^\d{1,3}$/.test(groups[0] as string);
    if (groups.length > 1 && !isGrouped) return undefined;
    text = [groups.join(""), ...rest].join(decimal);
  }
  if (decimal === ",") text = text.includes(".") ? "" : text.replace(",", ".");
  if (text.startsWith(".")) text = `0${text}`;
  const number = DIGITS.test(text) ? Number(text) : Number.NaN;
  return Number.isFinite(number) ? number : undefined;
}

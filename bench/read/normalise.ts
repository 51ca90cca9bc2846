import { findUnitWord } from "@halfloaf/reading";

const NUMBER_WORDS = new Map<string, number>([
  ["a", 1],
  ["an", 1],
  ["half", 0.5],
  ["quarter", 0.25],
  ["couple", 2],
  ["dozen", 12],
  ..."zero one two three four five six seven eight nine ten eleven twelve"
    .split(" ")
    .map((word, value): [string, number] => [word, value]),
]);

/**
 * The numbers of a label in one writing: whole and broken part of each apart, a range with "-" between, other words as
 * they are. "5 1/2", "5½" and "5.5" all become ["5", "0.5"]; so does "5" beside "1/2", which labels cannot tell apart.
 */
export function toNumbers(label: string): string[] {
  const text = label.normalize("NFKC").replaceAll("⁄", "/").replace(/[–—]/g, "-").toLowerCase();
  return (text.match(/\d+\s*\/\s*\d+|\d*\.?\d+|\d+|-|[a-z]+/g) ?? []).flatMap((token) => {
    const [above, below] = token.split("/").map(Number);
    if (below !== undefined) return writeNumber((above as number) / below);
    const word = NUMBER_WORDS.get(token);
    if (word !== undefined) return writeNumber(word);
    if (/\d/.test(token)) return writeNumber(Number(token));
    return token === "x" ? [] : [token];
  });
}

/** A number in the writing of `toNumbers`, to a thousandth. */
export function writeNumber(value: number): string[] {
  const whole = Math.floor(value + 0.0005);
  const broken = Math.round((value - whole) * 1000) / 1000;
  return [...(whole > 0 || broken === 0 ? [String(whole)] : []), ...(broken > 0 ? [String(broken)] : [])];
}

/** The units of a label, each as the unit it stands for or, where the reader knows none such, its word in the singular. */
export function toUnits(label: string): string[] {
  const text = label.toLowerCase().replace(/\b(fl|fluid)\.? *(oz|ounces?)\b/g, "floz");
  return (text.match(/[^\s.|,]+/g) ?? []).map(
    (word) => findUnitWord(word) ?? (word === "in" ? "inch" : toSingular(word)),
  );
}

/** A word without its plural ending, roughly; both sides of a comparison go through it. */
function toSingular(word: string): string {
  if (/(ss|us|is)$/.test(word) || word.length < 4) return word;
  if (word.endsWith("ies")) return `${word.slice(0, -3)}y`;
  if (word.endsWith("ves")) return `${word.slice(0, -3)}f`;
  if (/(ch|sh|x|ss|o)es$/.test(word)) return word.slice(0, -2);
  return word.endsWith("s") ? word.slice(0, -1) : word;
}

/** The words of a name, lower case and in the singular, without marks and accents. */
export function toNameWords(name: string): Set<string> {
  const plain = name
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/['’]s\b|['’]/g, "");
  return new Set((plain.match(/[\p{L}\p{N}]+/gu) ?? []).map(toSingular));
}

/** F1 of the words two names have in common; 1 where both have none. */
export function overlapF1(one: ReadonlySet<string>, other: ReadonlySet<string>): number {
  if (one.size + other.size === 0) return 1;
  return (2 * [...one].filter((word) => other.has(word)).length) / (one.size + other.size);
}

/** How a food is kept, told as the English names tell it; stems as `foldWordsDe` makes them. */
const KEPT: ReadonlyMap<string, string> = new Map([
  ["frisch", "fresh"],
  ["tiefgekuhlt", "frozen"],
  ["gefror", "frozen"],
  ["tk", "frozen"],
  ["getrocknet", "dried"],
  ["trock", "dried"],
  ["dose", "tinned"],
  ["dos", "tinned"],
  ["konserv", "tinned"],
  ["gemahl", "ground"],
  ["roh", "raw"],
  ["gekocht", "cooked"],
]);

const LEAST_STEM = 3;

/**
 * The words of a German name in one writing: lower case, without marks, umlauts spelt out and Swiss ss as the letters they stand for,
 * without the endings of number and case, so that "Möhren", "Moehre" and "MÖHRE" agree.
 */
export function foldWordsDe(name: string): string[] {
  const plain = name
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replaceAll("ß", "ss")
    .replace(/([aou])e/g, "$1");
  return (plain.match(/[\p{L}\p{N}%]+/gu) ?? []).map((word) => {
    const stem = toStem(word);
    return KEPT.get(word) ?? KEPT.get(stem) ?? stem;
  });
}

/** A word without its endings; two may stand behind each other, as in "gemahlene" and "gemahlen". */
function toStem(word: string): string {
  const once = word.replace(/(?:en|er|es|em|e|n|s)$/, "");
  const stem = once.length < LEAST_STEM ? word : once;
  const twice = stem.replace(/(?:en|er|e|n)$/, "");
  return twice.length < LEAST_STEM + 1 ? stem : twice;
}

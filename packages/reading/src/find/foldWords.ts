import { SAME_WORDS } from "./foodWords.ts";

/**
 * The words of a name in one writing: lower case, without accents and marks, in the singular, American and British
 * spellings as one. Splits at hyphens, so that "self-raising" and "self raising" agree.
 */
export function foldWords(name: string): string[] {
  const plain = name
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/['’]s\b|['’]/g, "");
  return (plain.match(/[\p{L}\p{N}%]+/gu) ?? []).map(foldWord);
}

/** One word in the writing of `foldWords`. */
function foldWord(word: string): string {
  const singular = toSingular(word);
  return SAME_WORDS.get(singular) ?? singular;
}

/** The singular of an English noun by its ending; a word that only looks plural comes out the same each time. */
function toSingular(word: string): string {
  if (word.length < 4 || /(ss|us|is)$/.test(word)) return word;
  if (word.endsWith("ies") && word.length > 5) return `${word.slice(0, -3)}y`;
  if (/(ea|oa|al|el)ves$/.test(word)) return `${word.slice(0, -3)}f`;
  if (/(ch|sh|x|ss|to|zo|go)es$/.test(word)) return word.slice(0, -2);
  return word.endsWith("s") ? word.slice(0, -1) : word;
}

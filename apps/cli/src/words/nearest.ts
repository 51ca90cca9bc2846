/**
 * The words of a list that are spelled most like a word, the nearest first and earlier ones first among equals: at most
 * `count`, and none that shares less than half of its spelling.
 *
 * Likeness is the share of letter pairs that both have (Dice 1945, Ecology 26, 297-302), so that words in another order
 * are still found; equal beginnings count a little on top, and more where all of the word's own words stand in the other whole.
 */
export function findNearest(word: string, list: Iterable<string>, count: number, least = 0.3): string[] {
  const wanted = letterPairs(word);
  return [...list]
    .map((each) => ({
      each,
      likeness:
        likeness(wanted, letterPairs(each)) + (each.startsWith(word) ? 0.2 : 0) + (hasWords(each, word) ? 0.3 : 0),
    }))
    .filter((one) => one.likeness >= least)
    .sort((a, b) => b.likeness - a.likeness)
    .slice(0, count)
    .map(({ each }) => each);
}

/** The words of a text. */
function wordsOf(text: string): string[] {
  return text
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter((each) => each !== "");
}

function hasWords(text: string, wanted: string): boolean {
  const has = new Set(wordsOf(text));
  const words = wordsOf(wanted);
  return words.length > 0 && words.every((each) => has.has(each));
}

/** Pairs of letters that stand together in a word, each with how often. */
function letterPairs(text: string): Map<string, number> {
  const pairs = new Map<string, number>();
  for (const word of wordsOf(text)) {
    const signs = Array.from(` ${word} `);
    for (let at = 0; at + 1 < signs.length; at++) {
      const pair = `${signs[at]}${signs[at + 1]}`;
      pairs.set(pair, (pairs.get(pair) ?? 0) + 1);
    }
  }
  return pairs;
}

function likeness(a: ReadonlyMap<string, number>, b: ReadonlyMap<string, number>): number {
  let shared = 0;
  for (const [pair, count] of a) shared += Math.min(count, b.get(pair) ?? 0);
  const sum = (pairs: ReadonlyMap<string, number>) => [...pairs.values()].reduce((total, count) => total + count, 0);
  const all = sum(a) + sum(b);
  return all === 0 ? 0 : (2 * shared) / all;
}

const SPELT: readonly (readonly [RegExp, string])[] = [
  [/ä/g, "ae"],
  [/ö/g, "oe"],
  [/ü/g, "ue"],
];

/**
 * A text as it is searched in: lower case, without marks on letters, ß as ss. Where it has umlauts it stands there twice, the second
 * time spelt with an e, so that "Möhre", "moehre" and "mohre" are all found.
 */
export function toSearchText(text: string): string {
  return spellingsOf(text).join(" ");
}

/** True where every word that is asked for stands in a text as `toSearchText` writes it; nothing asked is found everywhere. */
export function isFound(searchText: string, asked: string): boolean {
  return unmark(toLower(asked))
    .split(/\s+/)
    .every((word) => searchText.includes(word));
}

/** True where a text is the one asked for, spelt in one of the ways in which it is found. */
export function isSameText(text: string, asked: string): boolean {
  return spellingsOf(text).includes(unmark(toLower(asked)));
}

function spellingsOf(text: string): string[] {
  const lower = toLower(text);
  const spelt = SPELT.reduce((told, [umlaut, letters]) => told.replace(umlaut, letters), lower);
  return [...new Set([unmark(lower), unmark(spelt)])];
}

function toLower(text: string): string {
  return text.normalize("NFC").toLowerCase().replaceAll("ß", "ss");
}

function unmark(text: string): string {
  return text.normalize("NFKD").replace(/\p{M}/gu, "");
}

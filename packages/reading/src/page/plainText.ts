import { textOf } from "./PageElement.ts";
import { readTree } from "./readTree.ts";

/** What shows nothing or turns the reading order: controls, zero-width characters, marks of direction, tags, lone halves of a pair. */
const UNSEEN = /[^\P{C}\n\t\r]|\p{Variation_Selector}|\u034f|[\u115f\u1160\u17b4\u17b5\u2800\u3164\uffa0\ufffc]/gu;
const BREAK = /\r\n?|[\u0085\u2028\u2029\v\f]/g;
/** What a page could take for a tag or a comment. */
const TAG = /<[a-z/!?]/i;
const ENTITY = /&(?:#|[a-z])/i;
/** Texts are often encoded twice, seldom three times. */
const MAX_ROUNDS = 4;

/**
 * A text without what cannot be seen: no controls, no zero-width characters, no marks that turn the reading order. Composed
 * letters (NFC), blanks as one blank each, lines without blanks at their ends, never two empty lines on end.
 */
export function tidyText(text: string): string {
  return text
    .replace(BREAK, "\n")
    .replace(UNSEEN, "")
    .normalize("NFC")
    .replace(/[^\S\n]+/g, " ")
    .replace(/ ?\n ?/g, "\n")
    .replace(/\n{3,}/g, "\n\n")
    .trim();
}

/**
 * A clean text without markup from one that may hold some: elements are read as a page shows them, entities become their
 * characters, also where they were encoded more than once. "<" stays only where no tag could begin with it ("< 5 g").
 */
export function toPlainText(text: string): string {
  let plain = tidyText(text);
  for (let round = 0; round < MAX_ROUNDS && (TAG.test(plain) || ENTITY.test(plain)); round++) {
    const before = plain;
    plain = tidyText(textOf(readTree(plain.replace(/\n/g, "<br>")).root));
    if (plain === before) break;
  }
  // One sign of a run is enough, and a run would have to be read again from each of its signs.
  return tidyText(plain.replace(/<+/g, "<").replace(/<(?=[a-z/!?])/gi, ""));
}

import { escapeXml } from "../escapeXml.ts";

/** A piece of HTML: what was text in it is escaped already. */
export interface Html {
  readonly html: string;
}

/** What may stand in a piece: text and numbers, which are escaped; pieces; lists of these; nothing. */
export type Piece = Html | string | number | false | undefined | readonly Piece[];

/**
 * Puts a piece of HTML together: whatever is put in is escaped, between tags and in quoted attributes alike, unless it is a
 * piece itself. `false` and `undefined` put in nothing.
 */
export function html(texts: TemplateStringsArray, ...pieces: readonly Piece[]): Html {
  return { html: texts.map((text, at) => (at === 0 ? text : toMarkup(pieces[at - 1]) + text)).join("") };
}

/** Markup that is safe already, such as a picture or a style of our own. */
export function asMarkup(markup: string): Html {
  return { html: markup };
}

function toMarkup(piece: Piece): string {
  if (piece === undefined || piece === false) return "";
  if (typeof piece === "string") return escapeXml(piece);
  if (typeof piece === "number") return String(piece);
  return "html" in piece ? piece.html : piece.map(toMarkup).join("");
}

import type { Issue } from "halfloaf/quantity";
import { type Token, Tokenizer, TokenizerMode } from "parse5";
import { cutBulk } from "./cutBulk.ts";
import type { PageElement } from "./PageElement.ts";

/** Longest page that is looked at, in UTF-16 units. */
const MAX_LENGTH = 8_000_000;
/** Most of it that is read: what is left without its scripts, styles, comments and pictures. */
export const MAX_READ_LENGTH = 1_000_000;
/** Deepest nesting that is kept; what lies deeper counts as lying here. */
const MAX_DEPTH = 200;
/** Most elements that are kept. */
const MAX_ELEMENTS = 50_000;
/** How far up an end that was left out is looked for; keeps a hostile page from costing depth for each tag. */
const MAX_REACH = 32;

const VOID = new Set("area base br col embed hr img input link meta source track wbr".split(" "));
const FORMATTING = new Set("a abbr b big code em font i label mark s small span strike strong sub sup tt u".split(" "));
const RAW = new Set(["style", "xmp", "iframe", "noembed", "noframes"]);

/** Attributes that carry data. All others, the handlers of scripts among them, are not kept at all. */
const KEPT = new Set(
  "itemscope itemtype itemprop itemid itemref id vocab typeof property resource prefix content datetime href src value type lang".split(
    " ",
  ),
);

const BLOCKS =
  "address article aside blockquote div dl fieldset figure footer form h1 h2 h3 h4 h5 h6 header hr main nav ol p pre section table ul";
/** For each element the open ones that it ends, and those beyond which it ends nothing. **Source**: WHATWG HTML, optional tags. */
const ENDS = new Map<string, { readonly ended: ReadonlySet<string>; readonly walls: ReadonlySet<string> }>([
  ["li", { ended: new Set(["li"]), walls: new Set(["ul", "ol", "menu"]) }],
  ...["dt", "dd"].map((name) => [name, { ended: new Set(["dt", "dd"]), walls: new Set(["dl"]) }] as const),
  ...["td", "th"].map((name) => [name, { ended: new Set(["td", "th"]), walls: new Set(["tr", "table"]) }] as const),
  ["tr", { ended: new Set(["tr"]), walls: new Set(["table"]) }],
  ["option", { ended: new Set(["option"]), walls: new Set(["select"]) }],
  ...BLOCKS.split(" ").map(
    (name) => [name, { ended: new Set(["p"]), walls: new Set(["li", "td", "th", "dd", "div", "table"]) }] as const,
  ),
]);

const NONE: ReadonlyMap<string, string> = new Map();

interface OpenElement extends PageElement {
  readonly children: (PageElement | string)[];
}

/**
 * The elements of a page and what of it was passed over.
 *
 * Tags, attributes, entities and raw text are those of the HTML standard; the tree is a plain one, built in time linear in
 * the page: the standard's own way of mending wrong nesting takes time and room that grow with the square of it.
 * Nothing is run and nothing is fetched; scripts that hold no data aren't even kept. Issues: `page-too-long`, `page-too-deep`, `page-too-large`.
 */
export function readTree(html: string): { readonly root: PageElement; readonly issues: readonly Issue[] } {
  const builder = new TreeBuilder();
  if (html.length > MAX_LENGTH) builder.note("page-too-long", `at most ${MAX_LENGTH} characters`, html.length);
  const text = cutBulk(html.slice(0, MAX_LENGTH));
  if (text.length > MAX_READ_LENGTH)
    builder.note("page-too-long", `at most ${MAX_READ_LENGTH} characters`, text.length);
  builder.read(text.slice(0, MAX_READ_LENGTH));
  return { root: builder.root, issues: [...builder.issues.values()] };
}

class TreeBuilder {
  readonly root: OpenElement = { name: "#page", attributes: NONE, children: [] };
  readonly issues = new Map<string, Issue>();
  readonly #open: OpenElement[] = [this.root];
  /** How many of each name are open, and how many of each were not opened for being too deep. */
  readonly #counts = new Map<string, number>();
  readonly #skipped = new Map<string, number>();
  #elements = 0;

  note(code: string, expected: string, received: number): void {
    if (!this.issues.has(code)) this.issues.set(code, { code, path: [], expected, received: String(received) });
  }

  read(html: string): void {
    const tokenizer = new Tokenizer(
      {},
      {
        onComment() {},
        onDoctype() {},
        onEof() {},
        onNullCharacter() {},
        onStartTag: (token) => {
          tokenizer.state = modeWithin(token.tagName, tokenizer.state);
          this.#start(token);
        },
        onEndTag: (token) => this.#end(token.tagName),
        onCharacter: ({ chars }) => this.#text(chars),
        onWhitespaceCharacter: ({ chars }) => this.#text(chars),
      },
    );
    tokenizer.write(html, true);
  }

  get #top(): OpenElement {
    return this.#open.at(-1) as OpenElement;
  }

  #text(chars: string): void {
    const { children } = this.#top;
    const last = children.length - 1;
    if (typeof children[last] === "string") children[last] += chars;
    else children.push(chars);
  }

  #start({ tagName: name, attrs, selfClosing }: Token.TagToken): void {
    if (this.#elements++ >= MAX_ELEMENTS) {
      this.note("page-too-large", `at most ${MAX_ELEMENTS} elements`, MAX_ELEMENTS);
      return;
    }
    const rule = ENDS.get(name);
    if (rule !== undefined) this.#closeNearest(rule.ended, (open) => rule.walls.has(open));
    const kept = attrs.filter((each) => KEPT.has(each.name)).map((each) => [each.name, each.value] as const);
    const element: OpenElement = { name, attributes: kept.length > 0 ? new Map(kept) : NONE, children: [] };
    this.#top.children.push(element);
    // Only in drawings and formulas does a slash end an element.
    if (VOID.has(name) || (selfClosing && (this.#isOpen("svg") || this.#isOpen("math")))) return;
    if (this.#open.length > MAX_DEPTH) {
      this.note("page-too-deep", `at most ${MAX_DEPTH} elements within each other`, this.#open.length);
      this.#skipped.set(name, (this.#skipped.get(name) ?? 0) + 1);
      return;
    }
    this.#open.push(element);
    this.#counts.set(name, (this.#counts.get(name) ?? 0) + 1);
  }

  #end(name: string): void {
    const skipped = this.#skipped.get(name) ?? 0;
    if (skipped > 0) this.#skipped.set(name, skipped - 1);
    else if (!this.#isOpen(name)) return;
    // The end of a bold stretch does not end the blocks that were opened within it.
    else if (FORMATTING.has(name)) this.#closeNearest(new Set([name]), (open) => !FORMATTING.has(open));
    else {
      let at = this.#open.length - 1;
      while ((this.#open[at] as OpenElement).name !== name) at--;
      this.#closeTo(at);
    }
  }

  #isOpen(name: string): boolean {
    return (this.#counts.get(name) ?? 0) > 0;
  }

  /** Closes the nearest open element of one of these names, if no wall and not too many others stand before it. */
  #closeNearest(names: ReadonlySet<string>, isWall: (name: string) => boolean): void {
    const lowest = Math.max(1, this.#open.length - MAX_REACH);
    for (let at = this.#open.length - 1; at >= lowest; at--) {
      const { name } = this.#open[at] as OpenElement;
      if (names.has(name)) this.#closeTo(at);
      if (names.has(name) || isWall(name)) return;
    }
  }

  #closeTo(at: number): void {
    for (const { name } of this.#open.splice(at)) this.#counts.set(name, (this.#counts.get(name) ?? 1) - 1);
  }
}

/** How the tokenizer reads on after a start tag: the content of some elements holds no tags. */
function modeWithin(name: string, mode: Tokenizer["state"]): Tokenizer["state"] {
  if (name === "script") return TokenizerMode.SCRIPT_DATA;
  if (RAW.has(name)) return TokenizerMode.RAWTEXT;
  if (name === "textarea" || name === "title") return TokenizerMode.RCDATA;
  return mode;
}

/** An element of a page: its name in lower case, the attributes that carry meaning, its children in order. */
export interface PageElement {
  readonly name: string;
  readonly attributes: ReadonlyMap<string, string>;
  readonly children: readonly (PageElement | string)[];
}

/** Elements whose content is never shown as text: programs, looks, drawings, what waits to be used. */
const SILENT = new Set([
  "script",
  "style",
  "template",
  "svg",
  "math",
  "head",
  "iframe",
  "object",
  "select",
  "noscript",
]);

/** Elements that stand within a line; any other begins and ends one. */
const INLINE = new Set(
  "a abbr b bdi bdo big cite code data dfn em font i img input ins kbd label mark meta link q rp rt ruby s samp small span strike strong sub sup td th time tt u var wbr".split(
    " ",
  ),
);

/** The text of an element as it is read: no markup, a line break around each block. It is not yet cleaned. */
export function textOf(element: PageElement): string {
  const parts: string[] = [];
  collect(element, parts);
  return parts.join("");
}

function collect(element: PageElement, parts: string[]): void {
  if (SILENT.has(element.name)) return;
  if (element.name === "br") return void parts.push("\n");
  const isInline = INLINE.has(element.name);
  if (!isInline && parts.at(-1) !== "\n") parts.push("\n");
  for (const child of element.children) {
    // A line break in the source is a blank; only elements break lines.
    if (typeof child === "string") parts.push(element.name === "pre" ? child : child.replace(/\s+/g, " "));
    else collect(child, parts);
  }
  if (element.name === "td" || element.name === "th") parts.push(" ");
  else if (!isInline && parts.at(-1) !== "\n") parts.push("\n");
}

/** Every element below and including this one, from the outside in and in the order of the page. */
export function* elementsOf(element: PageElement): Generator<PageElement> {
  const waiting: PageElement[] = [element];
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    yield next;
    for (let at = next.children.length - 1; at >= 0; at--) {
      const child = next.children[at];
      if (typeof child === "object") waiting.push(child);
    }
  }
}

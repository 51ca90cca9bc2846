import { addValues, type Item, type ItemValue, MAX_ITEM_DEPTH, toName } from "./Item.ts";
import { elementsOf, type PageElement, textOf } from "./PageElement.ts";
import { MAX_READ_LENGTH } from "./readTree.ts";

/** How elements state items and properties in one of the two markups. */
interface Markup {
  readonly name: "microdata" | "rdfa";
  readonly property: "itemprop" | "property";
  readonly isItem: (element: PageElement) => boolean;
  readonly types: string;
  readonly id: string;
}

const MICRODATA: Markup = {
  name: "microdata",
  property: "itemprop",
  isItem: ({ attributes }) => attributes.has("itemscope") || attributes.has("itemtype"),
  types: "itemtype",
  id: "itemid",
};

const RDFA: Markup = {
  name: "rdfa",
  property: "property",
  isItem: ({ attributes }) => attributes.has("typeof"),
  types: "typeof",
  id: "resource",
};

/** Most elements that are looked at; elements that `itemref` names are looked at once for each that names them. */
const MAX_LOOKS = 60_000;
/** Most characters that are taken as values; properties within properties are taken once for each. */
const MAX_VALUE_LENGTH = 2 * MAX_READ_LENGTH;
/** Most elements that one item may name by `itemref`. */
const MAX_REFERENCES = 20;

/** The outermost items that a page marks up in microdata. **Source**: WHATWG HTML, microdata. */
export function microdataItems(root: PageElement): readonly Item[] {
  return new MarkedReader(root, MICRODATA).readOutermost(root);
}

/** The outermost items that a page marks up in RDFa Lite; any vocabulary is taken for schema.org's. **Source**: W3C RDFa Lite 1.1. */
export function rdfaItems(root: PageElement): readonly Item[] {
  return new MarkedReader(root, RDFA).readOutermost(root);
}

class MarkedReader {
  readonly #markup: Markup;
  readonly #byId = new Map<string, PageElement>();
  /** The items being read now, from the outermost in; one that names another around it by `itemref` does not hold it. */
  readonly #within = new Set<PageElement>();
  #looks = 0;
  #valueLength = 0;

  constructor(root: PageElement, markup: Markup) {
    this.#markup = markup;
    for (const element of elementsOf(root)) {
      const id = element.attributes.get("id");
      if (id !== undefined && !this.#byId.has(id)) this.#byId.set(id, element);
    }
  }

  readOutermost(root: PageElement): Item[] {
    const items: Item[] = [];
    const visit = (element: PageElement): void => {
      if (this.#markup.isItem(element)) items.push(this.#toItem(element, [this.#markup.name, items.length]));
      else for (const child of element.children) if (typeof child === "object") visit(child);
    };
    visit(root);
    return items;
  }

  #toItem(element: PageElement, path: Item["path"]): Item {
    const properties = new Map<string, ItemValue[]>();
    this.#within.add(element);
    const add = (child: PageElement, isItem: boolean, name: string) => {
      const place = [...path, name, properties.get(name)?.length ?? 0];
      addValues(properties, name, [isItem ? this.#toItem(child, place) : this.#valueOf(child)]);
    };
    const visit = (child: PageElement): void => {
      if (this.#within.has(child) || this.#looks++ > MAX_LOOKS) return;
      const isItem = this.#markup.isItem(child);
      if (isItem && this.#within.size > MAX_ITEM_DEPTH) return;
      const names = namesOf(child, this.#markup.property);
      // An item that is said to be nothing of the one around it is still a part of what is read.
      for (const name of isItem && names.length === 0 ? ["haspart"] : names) add(child, isItem, name);
      if (!isItem) visitAll(child);
    };
    const visitAll = ({ children }: PageElement): void => {
      for (const child of children) if (typeof child === "object") visit(child);
    };
    visitAll(element);
    for (const part of this.#partsNamed(element)) visit(part);
    this.#within.delete(element);
    const types = wordsOf(element, this.#markup.types).map(toName);
    const item: Item = { types, properties, text: () => textOf(element), path };
    const id = element.attributes.get(this.#markup.id);
    return id === undefined ? item : { ...item, id };
  }

  #valueOf(element: PageElement): string {
    if (this.#valueLength > MAX_VALUE_LENGTH) return "";
    const value = statedBy(element);
    this.#valueLength += value.length;
    return value;
  }

  #partsNamed(element: PageElement): PageElement[] {
    const ids = wordsOf(element, "itemref").slice(0, MAX_REFERENCES);
    return ids.flatMap((id) => this.#byId.get(id) ?? []);
  }
}

function namesOf(element: PageElement, property: Markup["property"]): string[] {
  return [...new Set(wordsOf(element, property).map(toName))];
}

function wordsOf({ attributes }: PageElement, attribute: string): string[] {
  return (attributes.get(attribute) ?? "").split(/\s+/).filter((word) => word !== "");
}

/** What a property says: what stands in an attribute made for that, else the text that is shown. */
function statedBy(element: PageElement): string {
  const { name, attributes } = element;
  const stated = attributes.get("content") ?? (name === "time" ? attributes.get("datetime") : undefined);
  if (stated !== undefined) return stated;
  if (name === "meta") return "";
  if (name === "data" || name === "meter") return attributes.get("value") ?? textOf(element);
  const shown = textOf(element);
  return shown.trim() !== "" ? shown : (attributes.get("href") ?? attributes.get("src") ?? "");
}

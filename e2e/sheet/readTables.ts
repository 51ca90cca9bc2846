import { type DefaultTreeAdapterTypes, parse } from "parse5";

type Node = DefaultTreeAdapterTypes.Node;

/** A table of a page as texts: the rows of its body, and those of its sums. */
export interface ReadTable {
  readonly rows: readonly (readonly string[])[];
  readonly sums: readonly (readonly string[])[];
}

/** All tables of a page that have sums, read back from its text. */
export function readTables(page: string): ReadTable[] {
  return findAll(parse(page), "table").flatMap((table) => {
    const rowsIn = (name: string) =>
      findAll(table, name).flatMap((part) =>
        findAll(part, "tr").map((row) => [...findAll(row, "th", "td")].map((cell) => textOf(cell).trim())),
      );
    const sums = rowsIn("tfoot");
    return sums.length === 0 ? [] : [{ rows: rowsIn("tbody"), sums }];
  });
}

/** What a cell says as a number: money, or whole minutes; undefined for anything else. */
export function toNumber(text: string): number | undefined {
  if (/^-?\d+\.\d\d$/.test(text)) return Math.round(Number(text) * 100);
  const time = /^(?:(\d+) h ?)?(?:(\d+) min)?$/.exec(text);
  return text === "" || time === null ? undefined : Number(time[1] ?? 0) * 60 + Number(time[2] ?? 0);
}

function findAll(node: Node, ...names: string[]): Node[] {
  const children = "childNodes" in node ? node.childNodes : [];
  return children.flatMap((child) => [...(names.includes(child.nodeName) ? [child] : []), ...findAll(child, ...names)]);
}

function textOf(node: Node): string {
  if (node.nodeName === "#text" && "value" in node) return node.value;
  return "childNodes" in node ? node.childNodes.map(textOf).join("") : "";
}

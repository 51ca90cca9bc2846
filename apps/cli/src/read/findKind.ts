import { type ContentKind, findContentKind } from "@halfloaf/reading";
import { type Fault, type Found, refuse } from "../words/Fault.ts";
import { quote, valueAt } from "../words/valueWords.ts";
import { READ_KINDS, type ReadKind } from "./ReadWish.ts";

/** What a file is read as. `download` is a table of FoodData Central, which needs no mapping. */
export type FileKind = ReadKind | ContentKind;

/**
 * What the beginning of a file shows it to be. The mapping says it where there is one; a table without a mapping and
 * whatever could be several things are refused, with the words by which a person says it.
 */
export function findKind(name: string, head: string, mapping: unknown, asked: ReadKind | undefined): Found<FileKind> {
  const mapped = valueAt(mapping, ["format"]);
  if (mapped === "halfloaf-table-mapping") return { ok: true, value: "table" };
  if (mapped === "halfloaf-price-list-mapping") return { ok: true, value: "prices" };
  const found = findContentKind(head);
  const isDownload = found === "download-csv" || found === "download-json";
  if (isDownload && (asked === undefined || asked === "table")) return { ok: true, value: found };
  if (asked === "table" || asked === "prices") return refuse(tellUnmapped(name));
  if (asked !== undefined) return { ok: true, value: asked };
  const ours = findOurs(name, head);
  if (ours !== undefined) return ours;
  // Lines of a table may look like makings to whoever does not know its name.
  if (found !== "page" && /\.(?:csv|tsv)$/i.test(name)) return refuse(tellUnmapped(name));
  return found === undefined ? refuse(tellUnsure(name)) : { ok: true, value: found };
}

/** A file of ours that is read in, or why it is not; undefined for what is not of ours. */
function findOurs(name: string, head: string): Found<ReadKind> | undefined {
  const format = /^\s*\{/.test(head) ? /"format"\s*:\s*"(halfloaf-[a-z-]+)"/.exec(head)?.[1] : undefined;
  if (format === undefined) return undefined;
  return format === "halfloaf-foods" ? { ok: true, value: "foods" } : refuse(tellOurs(name, format));
}

function tellUnsure(name: string): Fault {
  return {
    code: "kind-unsure",
    path: [],
    value: quote(name),
    sentence: `It is not plain from what stands in ${quote(name)} what it holds.`,
    remedy: `Say it with --as and one of ${READ_KINDS.join(", ")}.`,
  };
}

function tellUnmapped(name: string): Fault {
  return {
    code: "mapping-unsaid",
    path: [],
    value: quote(name),
    sentence: `${quote(name)} is a table or a list whose columns are not known.`,
    remedy: "Name a mapping file with --mapping; docs/reading.md shows how one is written.",
  };
}

function tellOurs(name: string, format: string): Fault {
  return {
    code: "format-ours",
    path: ["format"],
    value: quote(format),
    sentence: `${quote(name)} holds a ${format} of Halfloaf, which is not read in.`,
    remedy:
      format === "halfloaf-kitchen"
        ? 'Check it with "halfloaf check", plan it with "halfloaf week".'
        : "Name another file.",
  };
}

import { readMakingsLine, readPastedText } from "@halfloaf/reading";
import { type Fault, type Found, refuse } from "../words/Fault.ts";
import { quote, valueAt } from "../words/valueWords.ts";
import { READ_KINDS, type ReadKind } from "./ReadWish.ts";

/** What a file holds, by what stands in it. `download` is a table of FoodData Central, which needs no mapping. */
export type ContentKind = ReadKind | "download-csv" | "download-json";

const MONEY_AT_END = /\d[.,]\d{2}\s*(?:€|£|\$|[A-Z]{1,3})?\s*-?$/;
const SUM_WORD = /^\s*\W*(?:grand\s+)?(?:total|sum|balance due|to pay|amount due)\b/im;
const TAG_AHEAD = /^\s*<(?:!doctype|!--|\/?[a-z])/i;
/** Of lines that end in money, the share from which a text is taken for a receipt. */
const RECEIPT_SHARE = 0.3;
const MAKINGS_SHARE = 0.5;
const MOST_LINES = 200;

/**
 * What the beginning of a file shows it to be. The mapping says it where there is one; a table without a mapping and
 * whatever could be several things are refused, with the words by which a person says it.
 */
export function findKind(
  name: string,
  head: string,
  mapping: unknown,
  asked: ReadKind | undefined,
): Found<ContentKind> {
  const mapped = valueAt(mapping, ["format"]);
  if (mapped === "halfloaf-table-mapping") return { ok: true, value: "table" };
  if (mapped === "halfloaf-price-list-mapping") return { ok: true, value: "prices" };
  const download = findDownloadKind(head);
  if (download !== undefined && (asked === undefined || asked === "table")) return { ok: true, value: download };
  if (asked === "table" || asked === "prices") return refuse(tellUnmapped(name));
  if (asked !== undefined) return { ok: true, value: asked };
  if (/^\s*[{[]/.test(head)) return findJsonKind(name, head);
  if (TAG_AHEAD.test(head)) return { ok: true, value: "page" };
  if (/\.(?:csv|tsv)$/i.test(name)) return refuse(tellUnmapped(name));
  return findTextKind(name, head);
}

function findDownloadKind(head: string): ContentKind | undefined {
  const firstLine = head.split(/\r?\n/, 1)[0] ?? "";
  if (/^\W*fdc_id\W+data_type\W+description/i.test(firstLine)) return "download-csv";
  return /^\s*\{\s*"(?:SRLegacyFoods|FoundationFoods)"/.test(head) ? "download-json" : undefined;
}

function findJsonKind(name: string, head: string): Found<ContentKind> {
  const format = /"format"\s*:\s*"(halfloaf-[a-z-]+)"/.exec(head)?.[1];
  if (format === "halfloaf-foods") return { ok: true, value: "foods" };
  if (format !== undefined) return refuse(tellOurs(name, format));
  if (/"@(?:type|context|graph)"|schema\.org/i.test(head)) return { ok: true, value: "page" };
  return refuse(tellUnsure(name));
}

function findTextKind(name: string, head: string): Found<ContentKind> {
  const lines = head
    .split(/\r?\n/)
    .map((line) => line.trim())
    .filter((line) => line !== "")
    .slice(0, MOST_LINES);
  const priced = lines.filter((line) => MONEY_AT_END.test(line)).length;
  if (priced >= 2 && priced >= lines.length * RECEIPT_SHARE && (SUM_WORD.test(head) || priced > lines.length / 2)) {
    return { ok: true, value: "receipt" };
  }
  if (readPastedText(head) !== undefined) return { ok: true, value: "dish" };
  const amounts = lines
    .map(readMakingsLine)
    .filter((line) => line.kind === "making" && line.choices[0].amount !== undefined);
  if (lines.length > 0 && amounts.length >= lines.length * MAKINGS_SHARE) return { ok: true, value: "makings" };
  return refuse(tellUnsure(name));
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

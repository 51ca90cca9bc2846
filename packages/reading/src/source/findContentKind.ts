import { readPastedText } from "../dish/readPastedText.ts";
import { readMakingsLine } from "../line/readMakingsLine.ts";

/** What a text may be, by what stands in it: a table of FoodData Central in one of its forms, a page or JSON-LD, a receipt, a dish, lines of makings. */
export type ContentKind = "download-csv" | "download-json" | "page" | "receipt" | "dish" | "makings";

// Blanks are bounded wherever two kinds of them meet: else thousands of them would be parted in every way there is.
const MONEY_AT_END = /\d[.,]\d{2}\s{0,4}(?:€|£|\$|[A-Z]{1,3})?\s{0,4}-?$/;
const SUM_WORD = /^\W{0,20}(?:grand\s{1,4})?(?:total|sum|balance due|to pay|amount due)\b/i;
const TAG_AHEAD = /^\s*<(?:!doctype|!--|\/?[a-z])/i;
/** Of lines that end in money, the share from which a text is taken for a receipt. */
const RECEIPT_SHARE = 0.3;
const MAKINGS_SHARE = 0.5;
const MOST_LINES = 200;

/** What the beginning of a text shows it to be; undefined where it could be several things or none. Never guesses by a name. */
export function findContentKind(head: string): ContentKind | undefined {
  const firstLine = head.split(/\r?\n/, 1)[0] ?? "";
  if (/^\W*fdc_id\W+data_type\W+description/i.test(firstLine)) return "download-csv";
  if (/^\s*\{\s*"(?:SRLegacyFoods|FoundationFoods)"/.test(head)) return "download-json";
  if (/^\s*[{[]/.test(head)) return /"@(?:type|context|graph)"|schema\.org/i.test(head) ? "page" : undefined;
  return TAG_AHEAD.test(head) ? "page" : findTextKind(head);
}

function findTextKind(head: string): ContentKind | undefined {
  const all = head
    .split(/\r?\n/)
    .map((line) => line.trim())
    .filter((line) => line !== "");
  const lines = all.slice(0, MOST_LINES);
  const priced = lines.filter((line) => MONEY_AT_END.test(line)).length;
  const isPriced = priced >= 2 && priced >= lines.length * RECEIPT_SHARE;
  if (isPriced && (all.some((line) => SUM_WORD.test(line)) || priced > lines.length / 2)) return "receipt";
  if (readPastedText(head) !== undefined) return "dish";
  const amounts = lines
    .map(readMakingsLine)
    .filter((line) => line.kind === "making" && line.choices[0].amount !== undefined);
  return lines.length > 0 && amounts.length >= lines.length * MAKINGS_SHARE ? "makings" : undefined;
}

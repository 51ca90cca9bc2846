import {
  linesOfList,
  linesOfReceipt,
  type Measured,
  NO_FINDINGS,
  newPackOf,
  type PackCandidate,
  PackIndex,
  type PackMatch,
  type PricedLine,
  type PriceListMapping,
  parseContent,
  type ReadingWatch,
  type Receipt,
  readPriceList,
  readReceipt,
  rememberMatch,
  type SaidMatch,
  toId,
} from "@halfloaf/reading";
import type { FoodTable } from "halfloaf/food";
import type { Kitchen } from "halfloaf/kitchen";
import type { Pack } from "halfloaf/price";
import { type Fault, type Found, refuse } from "../../words/Fault.ts";
import { tellMisfit } from "../../words/readWords.ts";
import { findFoodNamed } from "../dish/settleDish.ts";
import type { FileReading } from "../FileReading.ts";
import type { Input } from "../openInput.ts";
import type { PartOf, ReadPrice } from "../ReadReport.ts";
import type { ReadWish } from "../ReadWish.ts";
import { tellStopped } from "../table/readTables.ts";
import {
  tellApart,
  tellForeign,
  tellNewPack,
  tellNoPack,
  tellNoPriced,
  tellNoShop,
  tellOtherShop,
  tellShopUnsaid,
} from "./priceFaults.ts";

/** The kitchen whose packs prices are matched to, by what was said before as well. */
export interface PriceContext {
  readonly kitchen: Kitchen;
  readonly foods: FoodTable;
  readonly watch: ReadingWatch;
}

/** A price list by its mapping, with the packs of the kitchen that its rows are. */
export async function readPriceFile(
  input: Extract<Input, { kind: "file" }>,
  mapping: PriceListMapping,
  wish: ReadWish,
  context: PriceContext,
): Promise<Found<FileReading>> {
  const { kitchen, watch } = context;
  const list = {
    ...mapping,
    ...(wish.shop !== undefined && { shop: wish.shop }),
    ...(wish.on !== undefined && { on: wish.on }),
  };
  const read = (packs: readonly Pack[]) =>
    readPriceList(input.source(), { mapping: list, shops: kitchen.shops, index: new PackIndex(packs) }, watch);
  const first = await read(kitchen.packs);
  if (first.outcome === "stopped") return refuse(tellStopped(input.name));
  if (first.outcome === "failed") {
    const faults = first.issues.map(
      (issue): Fault => ({
        code: issue.code,
        path: [],
        sentence: tellMisfit(issue),
        remedy: "Check the mapping against the header of the list.",
      }),
    );
    return { ok: false, faults };
  }
  const matches = matchesOf(
    wish,
    linesOfList(first.rows),
    (line) => first.rows.find((row) => row.line === line)?.candidate.shop,
    kitchen,
  );
  if (!matches.ok) return matches;
  const again =
    matches.value.length === 0 ? first : await read(matches.value.reduce(rememberMatch, [...kitchen.packs]));
  const lines = linesOfList(again.rows);
  const { issues, issueCount } = again;
  const part = (rows: readonly ReadPrice[]): PartOf<"prices"> => ({
    kind: "prices",
    file: input.name,
    currency: mapping.currency,
    rows: [...rows],
    issueCount,
    issues: issues.map(({ code, path, expected, received }) => ({ code, path: [...path], expected, received })),
  });
  const finished = finish(
    { lines, toRow: (priced) => toReadPrice(priced, priced.candidate) },
    matches.value,
    wish,
    context,
    part,
    mapping.customary,
  );
  if (!finished.ok || mapping.currency === kitchen.currency) return finished;
  return { ok: true, value: { ...finished.value, open: [tellForeign(input.name, kitchen.currency)] } };
}

/** A receipt as text, with the packs of the kitchen that its lines are. */
export function readReceiptFile(name: string, text: string, wish: ReadWish, context: PriceContext): Found<FileReading> {
  const { kitchen } = context;
  if (wish.shop !== undefined && !kitchen.shops.some(({ id }) => id === wish.shop))
    return refuse(tellNoShop(wish.shop, kitchen));
  const readWith = (packs: readonly Pack[]): Receipt => {
    const { currency, shops } = kitchen;
    const asked = {
      ...(wish.shop !== undefined && { shop: wish.shop }),
      ...(wish.dateOrder && { dateOrder: wish.dateOrder }),
    };
    const receipt = readReceipt(text, { currency, shops, packs, ...asked });
    return wish.on === undefined ? receipt : { ...receipt, date: wish.on };
  };
  const first = readWith(kitchen.packs);
  const matches = matchesOf(wish, linesOfReceipt(first, kitchen.shops), () => first.shop, kitchen);
  if (!matches.ok) return matches;
  const receipt = readWith(matches.value.reduce(rememberMatch, [...kitchen.packs]));
  const { shop, shopText, date, totalMinor, balance } = receipt;
  const part = (rows: readonly ReadPrice[]): PartOf<"receipt"> => ({
    kind: "receipt",
    file: name,
    currency: kitchen.currency,
    ...(shop !== undefined && { shop }),
    ...(shopText !== undefined && { shopText }),
    ...(date !== undefined && { date }),
    rows: [...rows],
    extras: receipt.extras.map((extra) => ({ ...extra })),
    ...(totalMinor !== undefined && { totalMinor }),
    balance: { ...balance },
    unread: receipt.unread.map((line) => ({ ...line })),
    issues: receipt.issues.map(({ code, path, expected, received }) => ({ code, path: [...path], expected, received })),
  });
  const toRow = (priced: PricedLine): ReadPrice => {
    const { offer, seen } = priced.observation ?? {};
    return toReadPrice(priced, { ...(shop !== undefined && { shop }), ...(offer && { offer }), ...(seen && { seen }) });
  };
  const read = finish(
    { lines: linesOfReceipt(receipt, kitchen.shops), toRow },
    matches.value,
    wish,
    context,
    part,
    undefined,
  );
  if (!read.ok) return read;
  const isForeign = receipt.issues.some(({ code }) => code === "currency");
  const open = [
    ...(isForeign ? [tellForeign(name, kitchen.currency)] : []),
    ...(balance.kind === "apart" ? [tellApart(name)] : []),
  ];
  return { ok: true, value: { ...read.value, open } };
}

/** What is shown of a line: a list tells of goods that are not known what a receipt tells of those that are. */
function toReadPrice(priced: PricedLine, told: Partial<PackCandidate> | undefined): ReadPrice {
  const { line, text, priceMinor, discountMinor, measured, gtin, match, fate } = priced;
  const { shop, content, offer, seen } = told ?? {};
  return {
    line,
    label: text,
    priceMinor,
    ...(discountMinor !== undefined && { discountMinor }),
    ...(measured && { measure: tellMeasured(measured) }),
    ...(shop !== undefined && { shop }),
    ...(content && { content }),
    ...(gtin !== undefined && { gtin }),
    ...(offer && { offer }),
    ...(seen && { seen }),
    ...toMatched(match),
    outcome: fate,
  };
}

function tellMeasured(measured: Measured): string {
  return measured.kind === "count"
    ? `${measured.count} x`
    : `${measured.value} ${measured.unit.replace(/[[\]]|_av/g, "")}`;
}

function toMatched(match: PackMatch): Pick<ReadPrice, "pack" | "nearest"> {
  if (match.kind === "open")
    return { nearest: match.nearest.map(({ pack }) => ({ pack: pack.id, label: pack.label })) };
  return { pack: { id: match.pack.id, by: match.by, wasMinor: match.pack.priceMinor }, nearest: [] };
}

/** What `--pack "LINE=PACK"` says, as matches to be remembered. */
function matchesOf(
  wish: ReadWish,
  lines: readonly PricedLine[],
  shopOf: (line: number) => string | undefined,
  { packs, shops }: Kitchen,
): Found<SaidMatch[]> {
  const faults: Fault[] = [];
  const matches: SaidMatch[] = [];
  for (const { of, value } of wish.packs) {
    const line = lines.find((each) => String(each.line) === of);
    const pack = packs.find(({ id }) => id === value);
    const shop = line && shopOf(line.line);
    if (line === undefined) faults.push(tellNoPriced(of, lines));
    if (pack === undefined) faults.push(tellNoPack(value, packs));
    if (line !== undefined && shop === undefined) faults.push(tellShopUnsaid());
    if (line === undefined || pack === undefined || shop === undefined) continue;
    if (pack.shop === shop) matches.push({ text: line.text, pack: pack.id });
    else faults.push(tellOtherShop(pack, shop, shops));
  }
  return faults.length > 0 ? { ok: false, faults } : { ok: true, value: matches };
}

/** Makes the new packs that `--food "LINE=ID"` says, and gathers what can be kept. */
function finish(
  { lines, toRow }: { readonly lines: readonly PricedLine[]; readonly toRow: (line: PricedLine) => ReadPrice },
  matches: readonly SaidMatch[],
  wish: ReadWish,
  { kitchen, foods }: PriceContext,
  toPart: (rows: readonly ReadPrice[]) => FileReading["part"],
  customary: PriceListMapping["customary"],
): Found<FileReading> {
  const faults: Fault[] = [];
  const newPacks = new Map<number, Pack>();
  const taken = new Set(kitchen.packs.map(({ id }) => id));
  for (const { of, value } of wish.foods) {
    const line = lines.find((each) => String(each.line) === of);
    const food = findFoodNamed(value, { foods });
    if (line === undefined) faults.push(tellNoPriced(of, lines));
    if (!food.ok) faults.push(...food.faults);
    if (line?.candidate === undefined || !food.ok) continue;
    const amount = wish.amounts.find((each) => each.of === of)?.value ?? "";
    const said = {
      id: toFreeId(line.text, taken),
      food: food.value.food,
      content: parseContent(amount, customary)?.content,
    };
    const made = newPackOf({ text: line.text, candidate: line.candidate }, said, customary);
    if (made.ok) newPacks.set(line.line, made.value);
    else faults.push(...made.issues.map((issue) => tellNewPack(line, issue)));
  }
  if (faults.length > 0) return { ok: false, faults };
  const rows = lines.map((line) => ({
    ...toRow(line),
    ...(newPacks.has(line.line) && { outcome: "new-pack" as const }),
  }));
  const observations = lines.flatMap(({ observation }) => observation ?? []);
  const findings = { ...NO_FINDINGS, observations, newPacks: [...newPacks.values()], matches };
  return { ok: true, value: { part: toPart(rows), findings, open: [] } };
}

function toFreeId(label: string, taken: Set<string>): string {
  const id = toId(label);
  const free = [id, ...Array.from({ length: taken.size + 1 }, (_, at) => `${id}-${at + 2}`)].find(
    (each) => !taken.has(each),
  ) as string;
  taken.add(free);
  return free;
}

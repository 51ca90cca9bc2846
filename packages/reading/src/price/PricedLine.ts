import type { Observation, Offer, Pack, Shop } from "halfloaf/price";
import { type NoObservation, observeReceipt, toCandidate } from "./observeReceipt.ts";
import { type PackCandidate, toPack } from "./PackCandidate.ts";
import type { PackMatch } from "./PackIndex.ts";
import { type Customary, parseContent } from "./parseContent.ts";
import type { Receipt } from "./Receipt.ts";
import type { Measured } from "./ReceiptLexer.ts";
import type { PriceRow } from "./readPriceList.ts";

/** A line of a receipt or a row of a list, whichever it is: what it names, which pack that is, and what becomes of its price. */
export interface PricedLine {
  /** Counted from 1. */
  readonly line: number;
  /** What it calls the goods. */
  readonly text: string;
  /** In minor units, for all that the line is of, before discounts. */
  readonly priceMinor: number;
  /** What discounts add: less than 0; absent where there is none. */
  readonly discountMinor?: number;
  /** How many or how much a receipt says it is. */
  readonly measured?: Measured;
  readonly gtin?: string;
  readonly match: PackMatch;
  /** "price" where it is a look at the price of a known pack, else why it is none. */
  readonly fate: "price" | NoObservation;
  /** The look at the price; there where the fate is "price". */
  readonly observation?: Observation;
  /** What it tells of a new pack; absent where the price of one is no whole number. */
  readonly candidate?: PackCandidate;
}

/** The items of a receipt as priced lines. */
export function linesOfReceipt(receipt: Receipt, shops: readonly Pick<Shop, "id" | "name">[]): PricedLine[] {
  const { observations, without } = observeReceipt(receipt, shops);
  let next = 0;
  return receipt.items.map((item): PricedLine => {
    const { line, name, gtin, measured, priceMinor, discountMinor, match } = item;
    const reason = without.find((each) => each.item === item)?.reason;
    const observation = reason === undefined ? observations[next++] : undefined;
    const candidate = toCandidate(item, receipt, shops);
    return {
      line,
      text: name,
      priceMinor,
      ...(discountMinor !== 0 && { discountMinor }),
      ...(measured && { measured }),
      ...(gtin !== undefined && { gtin }),
      match,
      fate: reason ?? "price",
      ...(observation && { observation }),
      ...(candidate && { candidate }),
    };
  });
}

/** The rows of a price list as priced lines. */
export function linesOfList(rows: readonly PriceRow[]): PricedLine[] {
  return rows.map(({ line, candidate, match, isOtherContent, observation }): PricedLine => {
    const { label, priceMinor, gtin, shop } = candidate;
    const without = isOtherContent ? "content-unlike" : shop === undefined ? "shop-unknown" : "day-unknown";
    return {
      line,
      text: label,
      priceMinor,
      ...(gtin !== undefined && { gtin }),
      match,
      fate: match.kind === "open" ? "pack-open" : observation === undefined ? without : "price",
      ...(observation && { observation }),
      candidate,
    };
  });
}

/** What a person adds to a line so that it becomes a new pack; the content is needed where neither line nor label tells it. */
export interface NewPackSaid {
  readonly id: string;
  readonly food: string;
  readonly content?: Pack["content"] | undefined;
}

/** A line as a new pack, with its content as said, as the line tells it, or as it stands at the end of the label. */
export function newPackOf(
  { text, candidate }: Pick<PricedLine, "text"> & { readonly candidate: PackCandidate },
  { id, food, content }: NewPackSaid,
  customary?: Customary,
): ReturnType<typeof toPack> {
  const told = content ?? candidate.content ?? contentOfLabel(text, customary);
  const section = candidate.section ?? "other";
  return toPack(candidate, { id, food, section, ...(told && { content: told }) });
}

/** The content that stands at the end of a label: "OATS 500G"; undefined where none does. */
export function contentOfLabel(label: string, customary?: Customary): Pack["content"] | undefined {
  const at = /(?:\d+ ?x ?)?\d+(?:[.,]\d+)? ?(?:g|kg|ml|cl|l|lb|oz|pcs|pk)\b.*$/i.exec(label.slice(0, 500))?.[0];
  return at === undefined ? undefined : parseContent(at, customary)?.content;
}

/** Those looks at prices that are not known yet, by record or by the packs themselves; of equal ones the first. */
export function newObservations(
  observations: readonly Observation[],
  known: readonly Observation[],
  packs: readonly Pack[],
): Observation[] {
  const there = new Set(
    [
      ...known,
      ...packs.flatMap(({ id, priceMinor, offer, seen }) =>
        seen === undefined ? [] : [{ pack: id, priceMinor, ...(offer && { offer }), seen }],
      ),
    ].map(keyOf),
  );
  return observations.filter((observation) => {
    const key = keyOf(observation);
    if (there.has(key)) return false;
    there.add(key);
    return true;
  });
}

function keyOf({
  pack,
  priceMinor,
  offer,
  seen,
}: Pick<Observation, "pack" | "priceMinor" | "seen"> & { offer?: Offer | undefined }): string {
  return JSON.stringify([pack, priceMinor, offer?.count, offer?.priceMinor, seen.on, seen.at]);
}

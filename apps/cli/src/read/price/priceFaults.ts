import type { Kitchen } from "halfloaf/kitchen";
import type { Pack } from "halfloaf/price";
import type { Fault } from "../../words/Fault.ts";
import type { tellIssue } from "../../words/issueWords.ts";
import { findNearest } from "../../words/nearest.ts";
import { quote } from "../../words/valueWords.ts";

/** A line with a price, and what it calls the goods. */
interface PricedText {
  readonly line: number;
  readonly text: string;
}

/** A line that can't be made a new pack, and what of it is missing. */
export function tellNewPack({ line, text }: PricedText, issue: Parameters<typeof tellIssue>[0]): Fault {
  const key = String(issue.path[0] ?? "");
  const remedies: Readonly<Record<string, string>> = {
    content: `Say what it holds with --amount "${line}=500 g".`,
    shop: "Say with --shop which shop of the kitchen it is.",
  };
  return {
    code: `new-pack-${key || issue.code}`,
    path: [],
    line,
    sentence: `${quote(text)} can't be a new pack yet: its ${key || "price"} is not known or not sound.`,
    remedy: remedies[key] ?? `Asked for is ${quote(issue.message ?? issue.expected)}.`,
  };
}

/** A line that is settled and holds no price. */
export function tellNoPriced(of: string, lines: readonly Pick<PricedText, "line">[]): Fault {
  return {
    code: "line-unknown",
    path: [],
    value: quote(of),
    sentence: `No price stands in line ${quote(of)}.`,
    remedy: `Lines with prices: ${lines
      .slice(0, 20)
      .map(({ line }) => line)
      .join(", ")}.`,
  };
}

/** A pack that the kitchen has not, with those of names near to it. */
export function tellNoPack(id: string, packs: readonly Pack[]): Fault {
  const near = findNearest(
    id,
    packs.map((pack) => pack.id),
    3,
  );
  return {
    code: "pack-unknown",
    path: [],
    value: quote(id),
    sentence: `The kitchen has no pack ${quote(id)}.`,
    remedy: near.length === 0 ? "Write the id of a pack of the kitchen." : `Near to it: ${near.join(", ")}.`,
  };
}

/** A pack that another shop sells than the one a text is of. */
export function tellOtherShop({ id, shop: sells }: Pack, shop: string, shops: Kitchen["shops"]): Fault {
  const name = (of: string) => quote(shops.find((each) => each.id === of)?.name ?? of);
  return {
    code: "pack-other-shop",
    path: [],
    value: quote(id),
    sentence: `The pack ${quote(id)} is sold at ${name(sells)}, and this is of ${name(shop)}.`,
    remedy: `Name a pack of ${name(shop)}, or make a new one of the line with --food "LINE=ID".`,
  };
}

/** A shop that the kitchen has not. */
export function tellNoShop(id: string, { shops }: Kitchen): Fault {
  return {
    code: "shop-unknown",
    path: [],
    value: quote(id),
    sentence: `The kitchen has no shop ${quote(id)}.`,
    remedy: `Its shops are ${shops.map((shop) => shop.id).join(", ")}.`,
  };
}

/** A match that can't be remembered, since no shop is known. */
export function tellShopUnsaid(): Fault {
  return {
    code: "shop-unsaid",
    path: [],
    sentence: "It is not known which shop this is from, so no match can be remembered.",
    remedy: "Say with --shop which shop of the kitchen it is.",
  };
}

/** A receipt whose lines and total do not agree, so that none of its prices is kept. */
export function tellApart(name: string): Fault {
  return {
    code: "receipt-apart",
    path: [],
    value: quote(name),
    sentence: `The lines of ${quote(name)} do not add up to its total, so one of them may be misread and none is kept.`,
    remedy: "Put the line right in the file; where the lines are right, take the total out of it.",
  };
}

/** A receipt in another currency than the kitchen's, so that none of its prices is kept. */
export function tellForeign(name: string, currency: string): Fault {
  return {
    code: "receipt-currency",
    path: [],
    value: quote(name),
    sentence: `${quote(name)} tells money in another currency than the kitchen, which reckons in ${currency}.`,
    remedy: `Write its amounts in ${currency} in the file.`,
  };
}

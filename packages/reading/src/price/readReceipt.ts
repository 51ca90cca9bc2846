import { isGtin, type Pack, type Shop } from "halfloaf/price";
import { type CivilDate, CURRENCY_EXPONENTS, type Issue, toMassG } from "halfloaf/quantity";
import { quote } from "../table/IssueLog.ts";
import { foldText } from "../table/nearness.ts";
import { findShop } from "./findShop.ts";
import { PackIndex } from "./PackIndex.ts";
import type { Receipt, ReceiptBalance, ReceiptExtra, ReceiptItem } from "./Receipt.ts";
import { type LexedLine, type Measured, ReceiptLexer } from "./ReceiptLexer.ts";
import { type DateOrder, readDay } from "./readDay.ts";
import { findOtherMoney } from "./readPrice.ts";
import { ENGLISH_RECEIPT, judgeWords, type ReceiptWords } from "./receiptWords.ts";

/** What a receipt is read with. */
export interface ReceiptContext {
  /** Code of ISO 4217; the decimals of amounts follow from it. */
  readonly currency: string;
  readonly shops: readonly Pick<Shop, "id" | "name">[];
  readonly packs: readonly Pack[];
  /** The shop where the person says it; absent = the head of the receipt tells. */
  readonly shop?: string;
  readonly dateOrder?: DateOrder;
  /** Absent = English. */
  readonly words?: ReceiptWords;
}

/**
 * Reads the lines of a receipt that was pasted as text. Items are what stands before the total and ends in money; a line
 * without money names the item that the next line measures. A discount belongs to the line above unless its words or the
 * subtotal before it say otherwise. What does not add up is told with by how much, and nothing is left out silently.
 * Throws for a currency that is none.
 */
export function readReceipt(text: string, context: ReceiptContext): Receipt {
  const reader = new ReceiptReader(text, context);
  const lines = text.split(/\r\n|\n|\r|\u2028|\u2029/, MOST_LINES + 1);
  for (const [at, line] of lines.slice(0, MOST_LINES).entries()) reader.addLine(line, at + 1);
  if (lines.length > MOST_LINES) reader.tellLength();
  return reader.finish();
}

const MOST_LINES = 5000;

type OpenItem = Omit<ReceiptItem, "match">;

class ReceiptReader {
  private readonly context: ReceiptContext;
  private readonly words: ReceiptWords;
  private readonly lexer: ReceiptLexer;
  private readonly items: OpenItem[] = [];
  private readonly extras: ReceiptExtra[] = [];
  private readonly unread: { line: number; text: string }[] = [];
  private readonly issues: Issue[] = [];
  /** Lines that named something without money so far: the head, then a name waiting for its measure. */
  private names: LexedLine[] = [];
  /** A measure that stands above the item it belongs to. */
  private measureAhead: LexedLine | undefined;
  /** The lines without money above the first item, one of which may name the shop. */
  private head: LexedLine[] = [];
  private date: CivilDate | undefined;
  private taxMinor: number | undefined;
  private total: LexedLine | undefined;
  private isAfterSubtotal = false;

  constructor(text: string, context: ReceiptContext) {
    this.context = context;
    this.words = context.words ?? ENGLISH_RECEIPT;
    this.lexer = new ReceiptLexer(text, context.currency);
  }

  addLine(raw: string, at: number): undefined {
    const line = this.lexer.lex(raw, at);
    if (line === undefined || this.takeDate(line)) return;
    const { amountMinor } = line;
    if (this.total !== undefined) return this.leave(line);
    this.checkCurrency(line);
    if (amountMinor === undefined) return this.addName(line);
    const kind = judgeWords(foldText(line.name), this.otherCode(line) ?? this.context.currency, this.words);
    if (kind === "item" && amountMinor >= 0) return this.addItem(line, amountMinor);
    this.leaveAhead();
    this.leaveNames();
    if (kind === "total") this.total = line;
    else if (kind === "subtotal") this.checkSubtotal(line, amountMinor);
    else if (kind === "tax") this.taxMinor = amountMinor + (this.taxMinor ?? 0);
    else if (kind === "payment" || kind === "note") this.leave(line);
    else if (kind === "deposit") this.addExtra(line, "deposit", amountMinor);
    else if (kind === "rounding") this.addExtra(line, "rounding", amountMinor);
    else if (kind === "wholeDiscount") this.addExtra(line, "whole-discount", -Math.abs(amountMinor));
    else this.addDiscount(line, kind === "item" ? amountMinor : -Math.abs(amountMinor), kind === "cancelled");
  }

  private takeDate(line: LexedLine): boolean {
    const read = readDay(line.text, this.context.dateOrder);
    if (read === undefined) return false;
    if (read.kind === "day" && this.date === undefined) {
      this.date = read.day;
      return true;
    }
    if (read.kind !== "day")
      this.tell("date", line, `one of ${read.days.join(" and ")}, by the order of day and month`, line.text);
    this.leave(line);
    return true;
  }

  private addName(line: LexedLine): undefined {
    if (line.name !== "" || line.measured === undefined) {
      this.leaveAhead();
      const product = line.measured === undefined ? undefined : productMinor(line.measured);
      if (product !== undefined) return this.addItem(line, product);
      if (this.items.length > 0) this.leaveNames();
      else this.head.push(line);
      this.names.push(line);
      return;
    }
    // A measure alone, without its product: it explains the item above if it makes its price, else the one below.
    const above = this.items.at(-1);
    if (this.names.length > 0 && this.items.length > 0) this.leaveNames();
    if (above !== undefined && above.measured === undefined && productMinor(line.measured) === above.priceMinor) {
      this.items[this.items.length - 1] = { ...above, measured: line.measured };
    } else {
      this.leaveAhead();
      this.measureAhead = line;
    }
  }

  private addItem(line: LexedLine, priceMinor: number): undefined {
    if (line.name === "") return this.addMeasuredItem(line, priceMinor);
    const ahead = this.measureAhead;
    this.measureAhead = undefined;
    this.leaveNames();
    const measured = line.measured ?? ahead?.measured;
    if (ahead !== undefined && line.measured !== undefined) this.leave(ahead);
    this.pushItem(
      { line: line.line, name: line.name, priceMinor, discountMinor: 0, ...(measured && { measured }) },
      line,
    );
  }

  /** A line of measure and money: the item named on the line above, or what the item above is made of. */
  private addMeasuredItem(line: LexedLine, priceMinor: number): undefined {
    this.leaveAhead();
    const name = this.names.pop();
    const { measured } = line;
    const above = this.items.at(-1);
    if (name !== undefined) {
      this.leaveNames();
      this.head = this.head.filter((each) => each !== name);
      const part = measured && { measured };
      this.pushItem({ line: name.line, name: name.name, priceMinor, discountMinor: 0, ...part }, line);
    } else if (above !== undefined && measured !== undefined && above.priceMinor === priceMinor && !above.measured) {
      this.items[this.items.length - 1] = { ...above, measured };
    } else this.tell("name", line, "a name for what this line measures", line.text);
  }

  private pushItem(item: OpenItem, line: LexedLine): void {
    const product = item.measured === undefined ? undefined : productMinor(item.measured);
    if (product !== undefined && Math.abs(product - item.priceMinor) > (item.measured?.kind === "mass" ? 1 : 0)) {
      this.tell("product", line, `${product} minor units`, `${item.priceMinor}`);
    }
    this.items.push({ ...item, ...takeNumber(item.name) });
  }

  /** A discount of the line above, of the line it takes back, or of the whole where there is none it can belong to. */
  private addDiscount(line: LexedLine, amountMinor: number, isCancelled: boolean): void {
    const isOpen = ({ priceMinor, discountMinor }: OpenItem): boolean => priceMinor + discountMinor + amountMinor >= 0;
    const at = isCancelled
      ? this.items.findLastIndex(({ priceMinor, discountMinor }) => priceMinor + discountMinor === -amountMinor)
      : this.items.length - 1;
    const item = this.items[at];
    if (item === undefined || this.isAfterSubtotal || !isOpen(item)) {
      this.addExtra(line, "whole-discount", amountMinor);
    } else this.items[at] = { ...item, discountMinor: item.discountMinor + amountMinor };
  }

  private addExtra({ line, name }: LexedLine, kind: ReceiptExtra["kind"], amountMinor: number): void {
    this.extras.push({ line, name, kind, amountMinor });
  }

  /** Tells an amount of another currency, by its sign or, beside the total, by its code. */
  private checkCurrency(line: LexedLine): void {
    const { currency } = this.context;
    const other = findOtherMoney(line.text, currency) ?? this.otherCode(line);
    if (other !== undefined) this.tell("currency", line, `money in ${currency}`, other);
  }

  /** The code of another currency on a line of the total; elsewhere three letters may be goods ("CUP", "MOP", "GEL"). */
  private otherCode({ name, amountMinor }: LexedLine): string | undefined {
    const { currency } = this.context;
    const codes = name.split(" ").filter((word) => word !== currency && CURRENCY_EXPONENTS.has(word));
    if (amountMinor === undefined) return undefined;
    return codes.find((code) => judgeWords(foldText(name), code, this.words) === "total");
  }

  private checkSubtotal(line: LexedLine, amountMinor: number): void {
    this.isAfterSubtotal = true;
    const sum = this.sumMinor();
    if (sum !== amountMinor)
      this.tell("subtotal", line, `${sum} minor units, the sum of the lines above`, `${amountMinor}`);
  }

  private sumMinor(): number {
    const items = this.items.reduce((sum, { priceMinor, discountMinor }) => sum + priceMinor + discountMinor, 0);
    return this.extras.reduce((sum, { amountMinor }) => sum + amountMinor, items);
  }

  tellLength(): void {
    const expected = `a receipt of at most ${MOST_LINES} lines`;
    this.issues.push({ code: "length", path: [MOST_LINES + 1], expected, received: "more" });
  }

  finish(): Receipt {
    this.leaveAhead();
    this.leaveNames();
    const { context, date } = this;
    const named = this.head.find(({ text }) => findShop(text, context.shops) !== undefined);
    const head = named ?? this.head[0];
    const shop = context.shop ?? (named && findShop(named.text, context.shops)?.id);
    // The line by which the shop is known was of use.
    const isOfShop = named !== undefined && findShop(named.text, context.shops)?.id === shop;
    const unread = isOfShop ? this.unread.filter(({ line }) => line !== named.line) : this.unread;
    const index = new PackIndex(context.packs);
    const totalMinor = this.total?.amountMinor;
    return {
      ...(shop !== undefined && { shop }),
      ...(head !== undefined && { shopText: head.text }),
      ...(date !== undefined && { date }),
      items: this.items.map((item) => ({
        ...item,
        match: index.match({ text: item.name, shop, gtin: item.gtin }),
      })),
      extras: this.extras,
      ...(totalMinor !== undefined && { totalMinor }),
      balance: this.balance(totalMinor),
      unread: unread.sort((a, b) => a.line - b.line),
      issues: this.issues,
    };
  }

  private balance(totalMinor: number | undefined): ReceiptBalance {
    const sumMinor = this.sumMinor();
    if (totalMinor === undefined) return { kind: "no-total", sumMinor };
    if (sumMinor === totalMinor) return { kind: "equal", sumMinor };
    const { taxMinor } = this;
    if (taxMinor !== undefined && sumMinor + taxMinor === totalMinor) return { kind: "tax-added", sumMinor, taxMinor };
    const apartMinor = totalMinor - sumMinor;
    const line = this.total as LexedLine;
    this.tell("total", line, `${sumMinor} minor units, the sum of the lines`, `${totalMinor}, ${apartMinor} apart`);
    return { kind: "apart", sumMinor, apartMinor };
  }

  private leave({ line, text }: LexedLine): undefined {
    this.unread.push({ line, text });
  }

  /** Names without money that nothing came of; the head of the receipt is one of them. */
  private leaveNames(): void {
    for (const name of this.names) this.leave(name);
    this.names = [];
  }

  private leaveAhead(): void {
    if (this.measureAhead !== undefined) {
      this.tell("name", this.measureAhead, "a name for what this line measures", this.measureAhead.text);
      this.leave(this.measureAhead);
    }
    this.measureAhead = undefined;
  }

  private tell(code: string, { line }: LexedLine, expected: string, received: string): undefined {
    this.issues.push({ code, path: [line], expected, received: quote(received) });
  }
}

/**
 * A name without the number under the bars that stands before or behind it. Eight digits may be the shop's own number, of
 * which every tenth has a right check digit by chance, so they stay in the name.
 */
function takeNumber(name: string): Pick<ReceiptItem, "name" | "gtin"> {
  const words = name.split(" ");
  const gtin = [words[0], words.at(-1)].find((word) => word !== undefined && word.length > 8 && isGtin(word));
  const rest = words.filter((word) => word !== gtin).join(" ");
  return gtin === undefined || !/\p{L}/u.test(rest) ? { name } : { name: rest, gtin };
}

/** What a measure and its price make, rounded to the minor unit; undefined where the price is not told. */
function productMinor(measured: Measured): number | undefined {
  if (measured.kind === "count")
    return measured.eachMinor === undefined ? undefined : measured.count * measured.eachMinor;
  const massG = toMassG(measured.value, measured.unit) as number;
  const perG = measured.rateMinor / (toMassG(measured.per.value, measured.per.unit) as number);
  // Rounding half up must not fail over a product such as 1.005 that no binary fraction holds.
  return Math.round(Number((massG * perG).toPrecision(12)));
}

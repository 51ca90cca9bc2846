/**
 * The words by which lines of a receipt are told apart, in small letters. They are data, so that receipts of another
 * language are read by giving its words. **Source**: common practice, no source.
 */
export interface ReceiptWords {
  readonly total: readonly string[];
  readonly subtotal: readonly string[];
  readonly tax: readonly string[];
  /** Words of payment and change at the till. */
  readonly payment: readonly string[];
  readonly discount: readonly string[];
  /** Discounts of the whole bill rather than of the line above. */
  readonly wholeDiscount: readonly string[];
  /** What is added or taken off so that the sum can be paid in coins. */
  readonly rounding: readonly string[];
  readonly deposit: readonly string[];
  /** An earlier line taken back. */
  readonly cancelled: readonly string[];
  /** Amounts that are only told and count in no sum. */
  readonly note: readonly string[];
  /** Words that may stand beside those of total, subtotal, tax and payment without making a line an item. */
  readonly beside: readonly string[];
}

export const ENGLISH_RECEIPT: ReceiptWords = {
  total: ["total", "sum", "balance", "amount due", "to pay", "total due"],
  subtotal: ["subtotal", "sub total"],
  tax: ["vat", "tax", "gst", "hst", "pst", "sales tax"],
  payment: ["cash", "card", "change", "paid", "payment", "tendered", "debit", "credit", "contactless", "voucher paid"],
  discount: [
    "discount",
    "offer",
    "saving",
    "savings",
    "promotion",
    "promo",
    "deal",
    "multibuy",
    "reduced",
    "reduction",
  ],
  wholeDiscount: [
    "coupon",
    "voucher",
    "loyalty",
    "discount on total",
    "bill discount",
    "staff discount",
    "student discount",
    "member discount",
    "card discount",
  ],
  deposit: ["deposit", "bottle deposit", "can deposit", "deposit return", "bottle return"],
  rounding: ["rounding", "cash rounding"],
  note: ["total saving", "total savings", "total discount", "you saved", "your savings", "points"],
  cancelled: ["void", "cancelled", "canceled", "refund"],
  beside: [
    "grand",
    "items",
    "item",
    "incl",
    "including",
    "inc",
    "due",
    "to",
    "pay",
    "of",
    "on",
    "net",
    "gross",
    "at",
    "rate",
    "a",
    "b",
    "c",
  ],
};

/** The words of tills in German, folded as texts are compared: without marks above letters. */
export const GERMAN_RECEIPT: ReceiptWords = {
  total: ["summe", "gesamt", "gesamtbetrag", "gesamtsumme", "zu zahlen", "total", "endbetrag"],
  subtotal: ["zwischensumme", "zw summe"],
  tax: ["mwst", "ust", "mehrwertsteuer", "steuer", "netto", "brutto"],
  payment: [
    "bar",
    "bargeld",
    "karte",
    "girocard",
    "kartenzahlung",
    "ec",
    "gegeben",
    "ruckgeld",
    "kontaktlos",
    "lastschrift",
  ],
  discount: ["rabatt", "aktion", "angebot", "nachlass", "preisvorteil", "reduziert", "ermaßigung"],
  wholeDiscount: ["gutschein", "coupon", "bonrabatt", "mitarbeiterrabatt", "kundenrabatt", "treuerabatt"],
  deposit: ["pfand", "leergut", "einwegpfand", "mehrwegpfand"],
  rounding: ["rundung", "rundungsdifferenz"],
  note: ["gespart", "sie sparen", "ersparnis", "punkte"],
  cancelled: ["storno", "storniert", "ruckgabe"],
  beside: ["eur", "inkl", "davon", "von", "auf", "aus", "betrag", "satz", "a", "b", "c", "artikel", "posten", "dank"],
};

/** What a line with an amount says, by its words alone. */
export type LineKind = "item" | Exclude<keyof ReceiptWords, "beside">;

/**
 * Judges the words before an amount. Lines of total, subtotal, tax and payment hold nothing but such words, so that goods
 * whose name begins with one of them stay goods; a discount, a deposit and what is cancelled begin with their word.
 */
export function judgeWords(folded: string, currency: string, words: ReceiptWords): LineKind {
  const bare = folded.split(" ").filter((word) => !/^\d/.test(word) && word !== currency.toLowerCase());
  const text = bare.join(" ");
  const beside = new Set(words.beside);
  const isMadeOf = (keys: readonly string[], also: readonly string[] = []): boolean => {
    const found = keys.find((key) => ` ${text} `.includes(` ${key} `));
    if (found === undefined) return false;
    const others = ` ${text} `.replace(` ${found} `, " ").trim().split(" ");
    const parts = new Set([...keys, ...also].flatMap((key) => key.split(" ")));
    return others.every((word) => word === "" || beside.has(word) || parts.has(word));
  };
  const begins = (keys: readonly string[]): boolean => keys.some((key) => `${text} `.startsWith(`${key} `));
  if (begins(words.note)) return "note";
  if (isMadeOf(words.subtotal)) return "subtotal";
  // "Total incl. VAT" is the total; "VAT total" is the tax.
  if (isMadeOf(words.total, words.tax) && begins([...words.total, ...words.beside])) return "total";
  if (isMadeOf(words.tax, words.total)) return "tax";
  if (isMadeOf(words.total)) return "total";
  if (isMadeOf(words.payment)) return "payment";
  if (begins(words.deposit)) return "deposit";
  if (begins(words.rounding)) return "rounding";
  if (begins(words.wholeDiscount)) return "wholeDiscount";
  if (begins(words.discount)) return "discount";
  return begins(words.cancelled) ? "cancelled" : "item";
}

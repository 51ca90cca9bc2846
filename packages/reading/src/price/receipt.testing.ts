import fc from "fast-check";

/** One thing bought, as it is to be printed, and what reading it must give back. */
export interface PrintedItem {
  readonly name: string;
  readonly form:
    | "plain"
    | "count-behind"
    | "count-before"
    | "count-below"
    | "count-above"
    | "mass-behind"
    | "mass-below";
  readonly count: number;
  readonly eachMinor: number;
  readonly massG: number;
  readonly discountMinor: number;
  readonly discountForm: "minus" | "behind" | "brackets" | "bare";
}

/** A receipt before it is printed. */
export interface PrintedReceipt {
  readonly items: readonly PrintedItem[];
  readonly depositMinor: number;
  readonly couponMinor: number;
  readonly taxMinor: number;
  readonly comma: boolean;
  readonly sign: string;
  readonly thousands: boolean;
  readonly taxLetter: boolean;
  readonly subtotal: boolean;
}

/** Words of which goods are named; none of them is a word that receipts are told apart by. */
const WORDS = ["oats", "Beans", "RICE", "crème", "400 g", "tin", "No 5", "brown", "6 x 1.5 L", "x-large", "50%"];
const names = fc
  .tuple(
    fc.constantFrom("Oats", "beans", "MILK", "Œufs", "Kelp & dulse"),
    fc.array(fc.constantFrom(...WORDS), { maxLength: 3 }),
  )
  .map(([first, rest]) => [first, ...rest].join(" "));

const items: fc.Arbitrary<PrintedItem> = fc
  .record({
    name: names,
    form: fc.constantFrom(
      "plain" as const,
      "count-behind" as const,
      "count-before" as const,
      "count-below" as const,
      "count-above" as const,
      "mass-behind" as const,
      "mass-below" as const,
    ),
    count: fc.integer({ min: 2, max: 24 }),
    eachMinor: fc.integer({ min: 1, max: 250_000 }),
    massG: fc.integer({ min: 1, max: 4999 }),
    share: fc.constantFrom(0, 0, 0.1, 0.5, 1),
    discountForm: fc.constantFrom("minus" as const, "behind" as const, "brackets" as const, "bare" as const),
  })
  .map(({ share, ...item }) => ({ ...item, discountMinor: 0 - Math.floor(share * priceOf(item)) }));

export const receipts: fc.Arbitrary<PrintedReceipt> = fc.record({
  items: fc.array(items, { minLength: 1, maxLength: 8 }),
  depositMinor: fc.nat(500),
  couponMinor: fc.nat(300),
  taxMinor: fc.nat(300),
  comma: fc.boolean(),
  sign: fc.constantFrom("", "€", " EUR"),
  thousands: fc.boolean(),
  taxLetter: fc.boolean(),
  subtotal: fc.boolean(),
});

/** What an item costs before its discount, in whole minor units. */
export function priceOf({ form, count, eachMinor, massG }: Omit<PrintedItem, "discountMinor">): number {
  if (form === "plain") return eachMinor;
  if (form.startsWith("count")) return count * eachMinor;
  // In whole numbers, so that the printer does not round as the reader does.
  return Math.floor((massG * eachMinor + 500) / 1000);
}

/** What the lines of a receipt add up to. */
export function sumOf({ items: all, depositMinor, couponMinor }: PrintedReceipt): number {
  return all.reduce((sum, item) => sum + priceOf(item) + item.discountMinor, depositMinor - couponMinor);
}

/** Prints a receipt; `totalMinor` in place of the right total where it is to be wrong. */
export function printReceipt(receipt: PrintedReceipt, totalMinor = sumOf(receipt)): string {
  const amount = (minor: number): string => printMoney(minor, receipt);
  const letter = receipt.taxLetter ? " A" : "";
  const lines = ["*** QUAY MARKET ***", "1 Long Stairs", "Tel 05550 1234", "28.11.2026 18:05", "-".repeat(30)];
  for (const item of receipt.items) lines.push(...printItem(item, receipt, letter));
  if (receipt.depositMinor > 0) lines.push(`Deposit   ${amount(receipt.depositMinor)}`);
  if (receipt.subtotal) lines.push(`SUBTOTAL  ${amount(totalMinor + receipt.couponMinor)}`);
  if (receipt.couponMinor > 0) lines.push(`Coupon  ${amount(receipt.couponMinor)}`);
  lines.push(
    "=".repeat(30),
    `Total  ${amount(totalMinor)}`,
    `Cash ${amount(totalMinor)}`,
    "Incl. VAT 7 % 0.10",
    "Thank you!",
  );
  return lines.join("\n");
}

function printItem(item: PrintedItem, receipt: PrintedReceipt, letter: string): string[] {
  const amount = `${printMoney(priceOf(item), receipt)}${letter}`;
  const each = printMoney(item.eachMinor, receipt);
  const mass = `${(item.massG / 1000).toFixed(3).replace(".", receipt.comma ? "," : ".")} kg x ${each}/kg`;
  const lines = {
    plain: [`${item.name}   ${amount}`],
    "count-behind": [`${item.name}  ${item.count} x ${each}   ${amount}`],
    "count-before": [`${item.count} x ${item.name}   ${amount}`],
    "count-below": [item.name, `  ${item.count} x ${each}  ${amount}`],
    "count-above": [`${item.count} @ ${each}`, `${item.name}  ${amount}`],
    "mass-behind": [`${item.name}  ${mass}   ${amount}`],
    "mass-below": [item.name, `\t${mass} ${amount}`],
  }[item.form];
  return item.discountMinor === 0 ? lines : [...lines, printDiscount(item, receipt)];
}

function printDiscount({ discountMinor, discountForm }: PrintedItem, receipt: PrintedReceipt): string {
  const amount = printMoney(-discountMinor, receipt);
  if (discountForm === "minus") return `  2nd at half  -${amount}`;
  if (discountForm === "behind") return `Offer ${printMoney(-discountMinor, { ...receipt, sign: "" })}-`;
  if (discountForm === "brackets") return `Promotion (${printMoney(-discountMinor, { ...receipt, sign: "" })})`;
  return `Discount ${amount}`;
}

function printMoney(
  minor: number,
  { comma, sign, thousands }: Pick<PrintedReceipt, "comma" | "sign" | "thousands">,
): string {
  const whole = String(Math.floor(Math.abs(minor) / 100));
  const grouped = thousands ? whole.replace(/\B(?=(\d{3})+$)/g, comma ? "." : ",") : whole;
  const text = `${minor < 0 ? "-" : ""}${grouped}${comma ? "," : "."}${String(Math.abs(minor) % 100).padStart(2, "0")}`;
  return sign === "€" ? sign + text : text + sign;
}

import { type CivilDate, daysBetween } from "halfloaf/quantity";

const PARTS: readonly (readonly [string, number])[] = [
  ["⅛", 1 / 8],
  ["⅙", 1 / 6],
  ["¼", 1 / 4],
  ["⅓", 1 / 3],
  ["⅜", 3 / 8],
  ["½", 1 / 2],
  ["⅝", 5 / 8],
  ["⅔", 2 / 3],
  ["¾", 3 / 4],
  ["⅚", 5 / 6],
  ["⅞", 7 / 8],
];

/** A part may stand for a number this share of it away: less than a hand that fills a spoon errs. Common practice, no source. */
const WITHIN = 0.03;

/** Numbers, money, masses, minutes and days as a locale writes them. */
export class Formats {
  readonly #locale: string;
  readonly #money = new Map<string, { readonly format: Intl.NumberFormat; readonly unitMinor: number }>();
  readonly #numbers = new Map<number, Intl.NumberFormat>();
  readonly #measures = new Map<string, Intl.NumberFormat>();
  readonly #days = new Map<string, Intl.DateTimeFormat>();
  #order: Intl.Collator | undefined;

  constructor(locale: string) {
    this.#locale = locale;
  }

  /** Has the browser load what it formats numbers and days with, which takes it a while the first time. */
  getReady(): void {
    this.number(0);
    this.month("2000-01-01");
  }

  /** Which of two names comes first in a list, as the language sorts them. */
  readonly compare = (a: string, b: string): number => {
    this.#order ??= new Intl.Collator(this.#locale);
    return this.#order.compare(a, b);
  };

  /** Minor units of a currency: "€2.49". */
  money(minor: number, currency: string): string {
    const { format, unitMinor } = this.#money.get(currency) ?? this.#formatOf(currency);
    return format.format(minor / unitMinor);
  }

  #formatOf(currency: string): { readonly format: Intl.NumberFormat; readonly unitMinor: number } {
    const format = new Intl.NumberFormat(this.#locale, { style: "currency", currency });
    const known = { format, unitMinor: 10 ** (format.resolvedOptions().maximumFractionDigits ?? 2) };
    this.#money.set(currency, known);
    return known;
  }

  /** What parts whole numbers from decimals. */
  get decimalSign(): string {
    const parts = new Intl.NumberFormat(this.#locale).formatToParts(0.5);
    return parts.find(({ type }) => type === "decimal")?.value ?? ".";
  }

  number(value: number, most = 1): string {
    const format = this.#numbers.get(most) ?? new Intl.NumberFormat(this.#locale, { maximumFractionDigits: most });
    this.#numbers.set(most, format);
    return format.format(value);
  }

  /** As spoons and halves are counted: "1⅓"; a number that is no such part is told in figures. */
  parts(value: number): string {
    if (value >= 10) return this.number(value, 0);
    const whole = Math.floor(value + WITHIN * value);
    const part = value - whole;
    if (whole > 0 && Math.abs(part) <= WITHIN * value) return this.number(whole, 0);
    const found = PARTS.find(([, share]) => Math.abs(part - share) <= WITHIN * value);
    return found === undefined ? this.number(value, 2) : `${whole || ""}${found[0]}`;
  }

  /** A share from 0 to 1 in percent. */
  percent(share: number): string {
    return new Intl.NumberFormat(this.#locale, { style: "percent" }).format(share);
  }

  /** g below a kilogram, else kg. */
  mass(massG: number): string {
    return massG < 999.5 ? this.#measure("gram", massG, 0) : this.#measure("kilogram", massG / 1000, 2);
  }

  /** ml below a litre, else l. */
  volume(volumeMl: number): string {
    const [value, unit, most] = volumeMl < 999.5 ? [volumeMl, "milliliter", 0] : [volumeMl / 1000, "liter", 2];
    return new Intl.NumberFormat(this.#locale, {
      style: "unit",
      unit: unit as string,
      maximumFractionDigits: most as number,
    }).format(value as number);
  }

  minutes(minutes: number): string {
    return this.#measure("minute", minutes, 0);
  }

  /** Minutes, or below one the seconds, never fewer than there are. */
  duration(minutes: number): string {
    return minutes < 1 ? this.#measure("second", Math.ceil(minutes * 60), 0) : this.#measure("minute", minutes, 1);
  }

  /** "Mon 2 Mar". */
  day(date: CivilDate): string {
    return this.#date({ weekday: "short", day: "numeric", month: "short" }).format(noonOf(date));
  }

  /** A day as seen from another: "Mon 2 Mar", and "2 Mar 2027" where half a year or more is between them. */
  dayFrom(here: CivilDate, date: CivilDate): string {
    if (Math.abs(daysBetween(here, date)) < 183) return this.day(date);
    return this.#date({ day: "numeric", month: "short", year: "numeric" }).format(noonOf(date));
  }

  /** "2 Mar". */
  shortDay(date: CivilDate): string {
    return this.#date({ day: "numeric", month: "short" }).format(noonOf(date));
  }

  /** "Mar". */
  month(date: CivilDate): string {
    return this.#date({ month: "short" }).format(noonOf(date));
  }

  /** "Monday, 2 March". */
  longDay(date: CivilDate): string {
    return this.#date({ weekday: "long", day: "numeric", month: "long" }).format(noonOf(date));
  }

  /** "Mon". */
  weekday(date: CivilDate): string {
    return this.#date({ weekday: "short" }).format(noonOf(date));
  }

  /** Minutes since midnight as a time of the day: "18:05". */
  clock(minutes: number): string {
    return this.#date({ hour: "2-digit", minute: "2-digit" }).format(new Date(Date.UTC(2000, 0, 1, 0, minutes)));
  }

  /** A figure with its unit, which no end of a line parts. */
  #measure(unit: "gram" | "kilogram" | "minute" | "second", value: number, most: number): string {
    const key = `${unit} ${most}`;
    const format =
      this.#measures.get(key) ??
      new Intl.NumberFormat(this.#locale, { style: "unit", unit, maximumFractionDigits: most });
    this.#measures.set(key, format);
    return format.format(value).replaceAll(" ", "\u00a0");
  }

  #date(options: Intl.DateTimeFormatOptions): Intl.DateTimeFormat {
    const key = JSON.stringify(options);
    const format = this.#days.get(key) ?? new Intl.DateTimeFormat(this.#locale, { ...options, timeZone: "UTC" });
    this.#days.set(key, format);
    return format;
  }
}

/** A day without a zone stands at noon of UTC, where no zone moves it. */
function noonOf(date: CivilDate): Date {
  return new Date(`${date}T12:00:00Z`);
}

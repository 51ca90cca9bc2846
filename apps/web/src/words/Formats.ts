import type { CivilDate } from "halfloaf/quantity";

/** Numbers, money, masses, minutes and days as a locale writes them. */
export class Formats {
  readonly #locale: string;
  readonly #money = new Map<string, Intl.NumberFormat>();
  readonly #days = new Map<string, Intl.DateTimeFormat>();

  constructor(locale: string) {
    this.#locale = locale;
  }

  /** Minor units of a currency: "€2.49". */
  money(minor: number, currency: string): string {
    const format = this.#money.get(currency) ?? new Intl.NumberFormat(this.#locale, { style: "currency", currency });
    this.#money.set(currency, format);
    return format.format(minor / 10 ** (format.resolvedOptions().maximumFractionDigits ?? 2));
  }

  number(value: number, most = 1): string {
    return new Intl.NumberFormat(this.#locale, { maximumFractionDigits: most }).format(value);
  }

  /** A share from 0 to 1 in percent. */
  percent(share: number): string {
    return new Intl.NumberFormat(this.#locale, { style: "percent" }).format(share);
  }

  /** g below a kilogram, else kg. */
  mass(massG: number): string {
    const [value, unit, most] = massG < 999.5 ? [massG, "gram", 0] : [massG / 1000, "kilogram", 2];
    return new Intl.NumberFormat(this.#locale, {
      style: "unit",
      unit: unit as string,
      maximumFractionDigits: most as number,
    }).format(value as number);
  }

  minutes(minutes: number): string {
    return new Intl.NumberFormat(this.#locale, { style: "unit", unit: "minute", maximumFractionDigits: 0 }).format(
      minutes,
    );
  }

  /** "Mon 2 Mar". */
  day(date: CivilDate): string {
    return this.#date({ weekday: "short", day: "numeric", month: "short" }).format(noonOf(date));
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

import type { AccountLine, Stretch } from "halfloaf/kitchen/record";

/** A stretch in few letters: the day its week begins on, or its month. */
export function nameOfLine({ from }: AccountLine, stretch: Stretch, locale: string): string {
  const options = stretch === "month" ? ({ month: "short" } as const) : ({ day: "numeric", month: "numeric" } as const);
  return new Intl.DateTimeFormat(locale, { ...options, timeZone: "UTC" }).format(new Date(`${from}T12:00:00Z`));
}

import type { Amount } from "../quantity/index.ts";

/** Units of scales and jugs; spoons, cups and pieces are counted in quarters. */
const WEIGHED: ReadonlySet<string> = new Set(["mg", "g", "kg", "mL", "cL", "dL", "L"]);

/**
 * An amount so many times, rounded as a cook measures it: two figures, from 100 on three; what is counted by spoons, cups or
 * pieces to a quarter. Once is the amount as it stands, and "to taste" stays. `times` is more than 0.
 */
export function scaleAmount(amount: Amount, times: number): Amount {
  if (amount === "to-taste" || Math.abs(times - 1) < 1e-9) return amount;
  const scale = (value: number): number => round(value * times, WEIGHED.has(amount.unit));
  return "value" in amount
    ? { ...amount, value: scale(amount.value) }
    : { ...amount, from: scale(amount.from), to: scale(amount.to) };
}

function round(value: number, isWeighed: boolean): number {
  if (isWeighed) return Number(value.toPrecision(value < 100 ? 2 : 3));
  return value < 10 ? Math.max(0.25, Math.round(value * 4) / 4) : Math.round(value);
}

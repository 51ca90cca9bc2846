import { toDecimalText, toKcal } from "halfloaf/quantity";
import { toCounted } from "../toCounted.ts";

const MOST_DECIMALS = 2;

/** The form of an English text that goes with a number as `tellNumber` writes it, which from 1 on has two decimals at most. */
export const counted = toCounted("en", MOST_DECIMALS);

/** A number with so many significant digits as a reader can use, never in powers of ten: 0.42, 8.3, 83, 1240. */
export function tellNumber(value: number): string {
  const size = Math.abs(value);
  const decimals = size >= 20 || size === 0 ? 0 : size >= 2 ? 1 : size >= 0.2 ? 2 : 3;
  const text = value.toFixed(decimals);
  return text.includes(".") ? text.replace(/\.?0+$/, "") : text;
}

/** A mass in g, kg from 1000 g on: "85 g", "1.25 kg". */
export function tellMass(massG: number): string {
  if (massG < 999.5) return `${tellNumber(massG)} g`;
  return `${(massG / 1000).toFixed(massG < 9995 ? 2 : 1).replace(/\.?0+$/, "")} kg`;
}

/** Minutes to the nearest whole one, hours from two hours on: "12 min", "2 h 30 min". */
export function tellMinutes(minutes: number): string {
  const whole = Math.round(minutes);
  if (whole < 120) return `${whole} min`;
  const rest = whole % 60;
  return `${Math.floor(whole / 60)} h${rest === 0 ? "" : ` ${rest} min`}`;
}

/** Energy in kJ and kcal, each to the nearest ten: "8980 kJ (2150 kcal)". */
export function tellEnergy(energyKj: number): string {
  const tens = (value: number) => Math.round(value / 10) * 10;
  return `${tens(energyKj)} kJ (${tens(toKcal(energyKj))} kcal)`;
}

/** A share from 0 to 1 in whole percent; never 100 % where something is missing, never 0 % where something is there. */
export function tellPercent(share: number): string {
  const percent = Math.round(share * 100);
  if (percent === 100 && share < 1 - 1e-9) return "99 %";
  if (percent === 0 && share > 1e-9) return "1 %";
  return `${percent} %`;
}

/** Money as a decimal text without its currency: "2.49". */
export function tellMoney(minor: number, currency: string): string {
  return toDecimalText({ minor, currency });
}

/** A count with its noun: "1 pack", "3 packs". */
export function tellCount(count: number, one: string, many = `${one}s`): string {
  return `${count} ${counted(count, { one, other: many })}`;
}

/** Portions of a dish: "1 portion", "2.5 portions". */
export function tellPortions(portions: number): string {
  return `${tellNumber(portions)} ${counted(portions, { one: "portion", other: "portions" })}`;
}

import { UNITS, type UnitCode } from "./unit.ts";

/** The mass in g of a value in a unit of mass; undefined where the unit measures no mass. */
export function toMassG(value: number, unit: UnitCode | "piece"): number | undefined {
  const size = sizeOf(unit, "mass");
  return size === undefined ? undefined : value * size;
}

/** The volume in mL of a value in a unit of volume; undefined where the unit measures no volume. */
export function toVolumeMl(value: number, unit: UnitCode | "piece"): number | undefined {
  const size = sizeOf(unit, "volume");
  return size === undefined ? undefined : value * size;
}

/** How many of a unit of mass make `massG` grams; undefined where the unit measures no mass. */
export function fromMassG(massG: number, unit: UnitCode | "piece"): number | undefined {
  const size = sizeOf(unit, "mass");
  return size === undefined ? undefined : massG / size;
}

/** How many of a unit of volume make `volumeMl` millilitres; undefined where the unit measures no volume. */
export function fromVolumeMl(volumeMl: number, unit: UnitCode | "piece"): number | undefined {
  const size = sizeOf(unit, "volume");
  return size === undefined ? undefined : volumeMl / size;
}

function sizeOf(unit: UnitCode | "piece", kind: "mass" | "volume"): number | undefined {
  if (unit === "piece") return undefined;
  return UNITS[unit].kind === kind ? UNITS[unit].size : undefined;
}

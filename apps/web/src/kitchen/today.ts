import type { CivilDate } from "halfloaf/quantity";

/** The day it is where the device is. */
export function today(now = new Date()): CivilDate {
  const two = (value: number) => String(value).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

import type { ClockTime } from "halfloaf/kitchen";
import type { CivilDate } from "halfloaf/quantity";

/** The day it is where the device is. */
export function today(now = new Date()): CivilDate {
  const two = (value: number) => String(value).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

/** The day and the time it is where the device is. */
export function clockTime(now = new Date()): ClockTime {
  return { date: today(now), minutes: 60 * now.getHours() + now.getMinutes() };
}

/** A page that is asleep is not told of midnight: it looks so often, and as soon as it is seen again. */
const LOOK_EVERY_MS = 30_000;

/** Calls back whenever another day has begun where the device is; gives what ends it. */
export function watchDay(hear: () => void): () => void {
  let day = today();
  const look = (): void => {
    if (today() === day) return;
    day = today();
    hear();
  };
  const timer = setInterval(look, LOOK_EVERY_MS);
  document.addEventListener("visibilitychange", look);
  return () => {
    clearInterval(timer);
    document.removeEventListener("visibilitychange", look);
  };
}

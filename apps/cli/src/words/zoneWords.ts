import type { Fault } from "./Fault.ts";
import { quote } from "./valueWords.ts";

export function tellNoZone(zone: string): Fault {
  return {
    code: "zone-unknown",
    path: [],
    value: quote(zone),
    sentence: `There is no time zone ${quote(zone)}.`,
    remedy: "Name it as the IANA database does, such as --zone Europe/Berlin.",
  };
}

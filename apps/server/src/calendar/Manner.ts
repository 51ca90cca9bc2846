import { CalendarTemplates, zoneClock } from "halfloaf/sheet";
import * as v from "valibot";

/** How a calendar is to be written: in which language figures stand, by which clock times are, and in which words. */
export const Manner = v.strictObject({
  /** **Source**: BCP 47. */
  language: v.pipe(v.string(), v.maxLength(35), v.check(isLanguage, "a language as BCP 47 names it")),
  /** **Source**: the IANA time zone database. */
  zone: v.pipe(
    v.string(),
    v.maxLength(64),
    v.check((zone) => zoneClock(zone) !== undefined, "a time zone as the IANA database names it"),
  ),
  words: CalendarTemplates,
});
export type Manner = v.InferOutput<typeof Manner>;

function isLanguage(tag: string): boolean {
  try {
    return Intl.getCanonicalLocales(tag).length === 1;
  } catch {
    return false;
  }
}

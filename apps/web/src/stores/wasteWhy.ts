import { type KeepingLimit, WASTE_REASONS } from "halfloaf/stores";
import type { Further } from "../words/further/Further.ts";

/** A reason for throwing away in words; what the record has as free text stands as it was written, and nothing said is told so. */
export function tellWhy(why: string | undefined, { whyWasted }: Further<"stores">): string {
  if (why === undefined) return whyWasted.unsaid;
  return (whyWasted.reasons as Readonly<Record<string, string>>)[why] ?? why;
}

/** The reasons that can be chosen for a lot, with what they are called: none, what ended its life where something did, and the usual ones. */
export function whysFor(ended: KeepingLimit | undefined, words: Further<"stores">): (readonly [string, string])[] {
  const whys = [...(ended === undefined ? [] : [ended]), ...WASTE_REASONS];
  return [["", words.whyWasted.unsaid], ...whys.map((why) => [why, tellWhy(why, words)] as const)];
}

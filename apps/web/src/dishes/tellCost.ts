import type { Formats } from "../words/Formats.ts";
import type { Further } from "../words/further/Further.ts";
import type { PortionCost } from "./dishFacts.ts";

/** What a portion costs in words, as sure as it is. */
export function tellCost(
  { minor, atLeast, estimate }: PortionCost,
  further: Further<"dishes">,
  formats: Formats,
  currency: string,
): string {
  if (minor === undefined) return further.dishes.costUnknown;
  const portion = further.dishes.portion(formats.money(minor, currency));
  const told = atLeast ? further.atLeast(portion) : portion;
  return estimate ? `${told} (${further.estimate})` : told;
}

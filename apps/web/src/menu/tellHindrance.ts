import type { Hindrance } from "halfloaf/kitchen";
import type { Names } from "../kitchen/useNames.ts";
import type { Formats } from "../words/Formats.ts";
import type { Further } from "../words/further/Further.ts";

/** What keeps a dish from a sitting; that it does not go there, where no more is known. */
export function tellHindrance(
  why: Hindrance | undefined,
  further: Further<"menu" | "work">,
  formats: Formats,
  names: Names,
): string {
  const { hindrances } = further.other;
  if (why === undefined) return hindrances.unknown;
  const parts: Readonly<Record<string, string>> = further.stove.parts;
  switch (why.reason) {
    case "kit-missing":
      return hindrances.kit(parts[why.kit] ?? why.kit);
    case "not-to-be-had":
      return hindrances.notSold(names.food(why.food));
    case "not-for-these-eaters":
      return hindrances.notEaten(names.food(why.food));
    case "amount-unknown":
      return hindrances.amount(names.food(why.food));
    case "too-long":
      return hindrances.tooLong(formats.minutes(why.atHandMinutes));
    case "begun-before":
      return hindrances.begunBefore(formats.day(why.date));
    default:
      return hindrances[why.reason];
  }
}

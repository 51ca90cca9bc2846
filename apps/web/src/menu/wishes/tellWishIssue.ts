import type { Issue } from "halfloaf/quantity";
import type { Further } from "../../words/further/Further.ts";

/** What keeps a wish from being saved, in words; undefined where it is about something else. */
export function tellWishIssue(
  { code, path, expected, received }: Issue,
  { wishes: { issues } }: Further<"wishes">,
): string | undefined {
  const [list, , key] = path;
  if (list !== "wishes") return undefined;
  if (code === "wish-no-sitting") return issues.nowhere;
  if (code === "wish-beyond") return issues.beyond(received, /\d+/.exec(expected)?.[0] ?? "");
  if (code === "wish-unmet") return issues.unmet;
  if (code.endsWith("-unknown")) return issues.lost;
  if (key === "what") return issues.what;
  if (key === "missMinor") return issues.price;
  if (code === "partial_check") return issues.order;
  return key === undefined ? issues.often : issues.times;
}

import type { SittingKind } from "halfloaf/kitchen";
import { keyOfSitting, type RecordState } from "halfloaf/kitchen/record";
import type { CivilDate } from "halfloaf/quantity";

/** True for an eater of whom it was told that they did not eat here at a sitting, or for all who sit there where nobody did. */
export function isAwayAt(
  { sittings }: Pick<RecordState, "sittings">,
  { on, sitting }: { readonly on: CivilDate; readonly sitting: SittingKind },
  eater: string,
): boolean {
  const news = sittings.get(keyOfSitting(on, sitting));
  return news !== undefined && (news.allAway || news.away.includes(eater));
}

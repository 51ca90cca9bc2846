import type { MenuProblem } from "../../menu/index.ts";
import type { Pack } from "../../price/index.ts";
import type { CivilDate } from "../../quantity/index.ts";
import type { Kitchen } from "../kitchen.ts";

/** The facts of each pack of a changed problem; one with another price was seen at it on the day. */
export function repricePacks(
  kitchen: Kitchen,
  problem: MenuProblem,
  packs: readonly Pack[],
  packBefore: readonly number[],
  seenOn: CivilDate,
): Pack[] {
  return packBefore.map((before, at) => {
    const facts = packs[before] as Pack;
    const changed = problem.packs[at];
    if (changed === undefined || changed.priceMinor === facts.priceMinor) return facts;
    const { estimate: _guessed, offer: _offer, ...rest } = facts;
    const shop = kitchen.shops.find(({ id }) => id === facts.shop);
    const offer = changed.offer && facts.offer;
    return {
      ...rest,
      priceMinor: changed.priceMinor,
      seen: { on: seenOn, at: shop?.name ?? facts.shop },
      ...(offer && { offer }),
    };
  });
}

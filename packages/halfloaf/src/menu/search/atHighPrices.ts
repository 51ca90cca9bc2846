import type { MenuPack, MenuProblem } from "../problem.ts";

/**
 * The problem with every pack at the price that the budget must stand; undefined where all prices are sure or nothing
 * limits the money. The search buys what is cheapest as prices are expected. Where the budget then holds for no menu, a
 * search at the high prices finds the packs that it holds with, and every plan of the one problem is a plan of the other.
 */
export function atHighPrices(problem: MenuProblem): MenuProblem | undefined {
  const { packs, limits } = problem;
  const isSure = packs.every(({ highMinor, offer }) => highMinor === undefined && offer?.highMinor === undefined);
  return isSure || limits.budgetMinor === undefined ? undefined : { ...problem, packs: packs.map(raise) };
}

function raise({ highMinor, offer, ...pack }: MenuPack): MenuPack {
  const raised = offer && { count: offer.count, priceMinor: offer.highMinor ?? offer.priceMinor };
  return { ...pack, priceMinor: highMinor ?? pack.priceMinor, ...(raised && { offer: raised }) };
}

import type { MenuPack, MenuProblem, Purchase } from "../menu/index.ts";
import { priceOfCount } from "../price/index.ts";
import type { Kitchen } from "./kitchen.ts";

/** The kitchen whose budget must stand a rise of its estimated prices by so many percent, whatever its file says. */
export function withStandRise(kitchen: Kitchen, standRisePct: number): Kitchen {
  return { ...kitchen, limits: { ...kitchen.limits, standRisePct } };
}

/** The price of a pack that may come out higher, in whole minor units; nothing where it may not. */
export function raisePrice(priceMinor: number, risePct: number): { readonly highMinor?: number } {
  return risePct > 0 ? { highMinor: Math.ceil(priceMinor * (1 + risePct / 100) - 1e-9) } : {};
}

/** What a till says for a purchase where the estimated prices have risen (minor units). */
export function payRisen({ packs }: MenuProblem, { pack, count }: Purchase): number {
  const { priceMinor, highMinor = priceMinor, offer } = packs[pack] as MenuPack;
  const risen = offer && {
    kind: "several" as const,
    count: offer.count,
    priceMinor: offer.highMinor ?? offer.priceMinor,
  };
  return priceOfCount({ priceMinor: highMinor, ...(risen && { offer: risen }) }, count);
}

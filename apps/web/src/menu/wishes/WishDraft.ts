import type { Wish } from "halfloaf/kitchen";

/** What the dishes that are wished for have in common, as it is chosen; an absent key = any. */
export type MeantDraft = Wish["what"];

/** A wish while its form is filled in; empty lists = all. */
export interface WishDraft {
  readonly what: MeantDraft;
  readonly on: readonly number[];
  readonly at: NonNullable<Wish["at"]>;
  readonly eaters: readonly string[];
  readonly least: number | undefined;
  readonly most: number | undefined;
  readonly isMust: boolean;
  /** In minor units; without meaning where it must be so. */
  readonly missMinor: number | undefined;
}

/** A wish that nothing is said of yet, but that it should be once a week. */
export const FRESH: WishDraft = {
  what: {},
  on: [],
  at: [],
  eaters: [],
  least: 1,
  most: undefined,
  isMust: true,
  missMinor: undefined,
};

/** A wish as its form begins with it. */
export function toWishDraft({ what, on = [], at = [], eaters = [], least, most, missMinor }: Wish): WishDraft {
  return { what, on, at, eaters, least, most, isMust: missMinor === undefined, missMinor };
}

/** The wish of a form; it may still be none, which the schema of a kitchen says. */
export function fromWishDraft({ what, on, at, eaters, least, most, isMust, missMinor }: WishDraft): unknown {
  return {
    what,
    ...(on.length > 0 && { on }),
    ...(at.length > 0 && { at }),
    ...(eaters.length > 0 && { eaters }),
    ...(least !== undefined && { least }),
    ...(most !== undefined && { most }),
    // Without an amount it is no price, and the schema asks for one.
    ...(!isMust && { missMinor: missMinor ?? Number.NaN }),
  };
}

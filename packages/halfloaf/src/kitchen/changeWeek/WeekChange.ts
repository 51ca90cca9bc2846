import type { CivilDate } from "../../quantity/index.ts";
import type { Lot } from "../../stores/index.ts";
import type { SittingKind } from "../datedSittings.ts";
import type { Kitchen } from "../kitchen.ts";

/** Some sittings of a day: those of a kind, or of these the one that an eater sits at. */
export interface SittingName {
  readonly date: CivilDate;
  readonly kind: SittingKind;
  readonly eater?: string;
}

/** Of a kitchen what a week under way can follow. */
export type KitchenNow = Pick<Kitchen, "eaters" | "foods" | "kit" | "limits" | "sittings">;

/** One thing that came out otherwise than a week's plan took it to be, by ids and dates. */
export type WeekChange =
  /** The dish is not wanted any more these days. */
  | { readonly kind: "refuse"; readonly dish: string }
  /** This dish is wanted at the sitting; with `done` it is cooked already, or eaten. */
  | { readonly kind: "want"; readonly at: SittingName; readonly dish: string; readonly done?: "cooked" | "eaten" }
  /** The pack was seen at another price, in minor units, which holds from today on. */
  | { readonly kind: "price"; readonly pack: string; readonly priceMinor: number }
  /** The pack is not to be had from today on. */
  | { readonly kind: "gone"; readonly pack: string }
  /** Nobody eats here, or with an eater named only this one does not. */
  | { readonly kind: "skip"; readonly at: SittingName }
  /** So many standard portions more are eaten, by people whose needs the kitchen does not know. */
  | { readonly kind: "guest"; readonly at: SittingName; readonly portions: number }
  /**
   * A lot came to hand besides what the week buys: found, or bought, for what a till said. It may be used from today on. With
   * `planned` it is a lot of the week, by its id there, that came before its trip: nothing of that line is to be bought any more.
   */
  | { readonly kind: "came"; readonly stock: Lot; readonly paidMinor: number; readonly planned?: string }
  /** What was cooked of this dish for the sitting is not there: less was cooked, or others ate it. It is planned for again. */
  | { readonly kind: "short"; readonly at: SittingName; readonly dish: string }
  /** A trip was made that day that the week has not, to that shop where it was said, which leaves one less of the most trips. */
  | { readonly kind: "went"; readonly date: CivilDate; readonly shop?: string }
  /** Eaters, sittings, kit, limits and own foods of the kitchen as they are now, which the rest of the week goes by from today on, as far as it can. */
  | { readonly kind: "kitchen"; readonly now: KitchenNow }
  /** The packs of this lot's kind, by its id in the week, are bought already on today's trip: they stay. */
  | { readonly kind: "bought"; readonly lot: string }
  /** A lot at hand, by its id in the week, can't be eaten any more: all that is left, so many grams, or from the day after one on. */
  | { readonly kind: "off"; readonly lot: string; readonly massG?: number; readonly lastDate?: CivilDate };

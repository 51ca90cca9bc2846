import type { SittingKind, Wish } from "halfloaf/kitchen";
import type { Names } from "../../kitchen/useNames.ts";
import type { Formats } from "../../words/Formats.ts";
import type { Further } from "../../words/further/Further.ts";

/** What a wish is told with. */
export interface WishWords {
  readonly further: Further<"wishes">;
  readonly formats: Formats;
  readonly names: Names;
  readonly sittings: Readonly<Record<SittingKind, string>>;
  readonly currency: string;
}

type Told = Pick<Wish, "what" | "on" | "at" | "eaters" | "least" | "most" | "missMinor">;

/** What is wished for: "soup, fish". */
export function tellMeant({ dish, main, manner, group, hygiene, diet }: Wish["what"], told: WishWords): string {
  const { further, names } = told;
  const { manners, groups, hygienes } = further.wishes;
  return [
    dish && names.dish(dish),
    main && names.food(main),
    manner && manners[manner],
    group && groups[group],
    hygiene && hygienes[hygiene],
    diet && further.diets[diet],
  ]
    .filter((each) => each !== undefined)
    .join(", ");
}

/** How often something is wished for, on which days, at which sittings, for whom. */
export function tellWhen({ on, at, eaters, least, most }: Told, told: WishWords): string {
  const { further, names, sittings } = told;
  return [
    tellOften(least, most, further),
    ...(on === undefined ? [] : [on.map((day) => further.weekdaysShort[day - 1]).join(" ")]),
    ...(at === undefined ? [] : [at.map((kind) => sittings[kind]).join(", ")]),
    ...(eaters === undefined ? [] : [eaters.map((id) => names.eater(id)).join(", ")]),
  ].join("; ");
}

/** How much a wish matters. */
export function tellMatter({ missMinor }: Told, { further, formats, currency }: WishWords): string {
  return missMinor === undefined ? further.wishes.must : further.wishes.mayCost(formats.money(missMinor, currency));
}

function tellOften(least: number | undefined, most: number | undefined, { wishes }: Further<"wishes">): string {
  if (most === 0) return wishes.never;
  if (most === undefined) return wishes.atLeast(least ?? 0);
  if (least === undefined || least === 0) return wishes.atMost(most);
  return least === most ? wishes.exactly(most) : wishes.between(least, most);
}

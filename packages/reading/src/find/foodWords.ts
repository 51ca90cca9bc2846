import type { Food } from "halfloaf/food";

const pairs = (text: string): ReadonlyMap<string, string> =>
  new Map(
    text
      .trim()
      .split("\n")
      .flatMap((line) => {
        const [to = "", ...from] = line.trim().split(/\s+/);
        return from.map((word): [string, string] => [word, to]);
      }),
  );

/**
 * Words for the same thing in either English, or spelt in two ways, each in the singular: the first of a line is the
 * writing that the others become. Names of whole foods ("aubergine", "eggplant") stand in the food table instead.
 */
export const SAME_WORDS: ReadonlyMap<string, string> = pairs(`
  yogurt yoghurt yoghourt
  chilli chili chile chily chilly
  tinned canned tin can
  dried dehydrated dry
  mince minced
  wholemeal wholewheat
  grated shredded
  soya soy
  raising rising
  skimmed skim nonfat
  pitta pita
  hummus houmous humous hommus
  stoned pitted
  boned boneless
  prawn shrimp
  iodised iodized
  stock broth
  fillet filet
  lasagne lasagna
  whisky whiskey
  flavoured flavored
  yolk yoke`);

/** Words that tell how a food is kept, and that make another food of it where the table has both. */
export const KEPT_WORDS: ReadonlySet<string> = new Set([
  "fresh",
  "frozen",
  "dried",
  "tinned",
  "ground",
  "raw",
  "cooked",
]);

/** Words that no food is told apart by. */
export const IDLE_WORDS: ReadonlySet<string> = new Set(
  `a an the of in with and or for from your some other good best fine quality organic ripe large small medium big little
  whole extra virgin coarse sea kosher flaky flaked unwaxed free range homemade ready made pure natural real heaped
  packed lightly freshly finely roughly thinly peeled chopped diced sliced thawed washed trimmed mature cold hot warm
  boiling softened melted about new season seasonal everyday value basic style type piece chunk slice
  unpeeled pack packet bag jar bottle pot strong thick thin crisp halved quartered crushed young tender
  assorted favourite favorite purpose plus more extra`.split(/\s+/),
);

/**
 * Nouns of a class that may stand after a food's name without changing what it is: "parmesan cheese" is parmesan. Only
 * for foods of the groups given, since "almond oil" is no almond.
 */
export const CLASS_WORDS: ReadonlyMap<string, readonly Food["group"][]> = new Map<string, readonly Food["group"][]>([
  ["cheese", ["dairy"]],
  ["leaf", ["herb", "vegetable"]],
  ["sprig", ["herb"]],
  ["herb", ["herb"]],
  ["floret", ["vegetable"]],
  ["stick", ["vegetable", "spice"]],
  ["stalk", ["vegetable"]],
  ["head", ["vegetable"]],
  ["bulb", ["vegetable"]],
  ["clove", ["vegetable"]],
  ["root", ["vegetable"]],
  ["spear", ["vegetable"]],
  ["pod", ["spice", "vegetable"]],
  ["berry", ["spice"]],
  ["nut", ["nut"]],
  ["half", ["nut", "fruit"]],
  ["seed", ["spice", "nut"]],
  ["spice", ["spice"]],
  ["powder", ["spice", "leavening"]],
  ["fruit", ["fruit"]],
  ["fillet", ["fish", "poultry"]],
  ["steak", ["fish", "poultry"]],
  ["pasta", ["pasta"]],
  ["shape", ["pasta"]],
  ["noodle", ["pasta"]],
  ["bread", ["bread"]],
  ["bean", ["pulse"]],
  ["grain", ["grain"]],
  ["sausage", ["meat"]],
  ["meat", ["meat", "poultry", "fish"]],
  ["rasher", ["meat"]],
  ["sauce", ["sauce"]],
  ["paste", ["sauce", "nut", "soya"]],
  ["kernel", ["vegetable"]],
]);

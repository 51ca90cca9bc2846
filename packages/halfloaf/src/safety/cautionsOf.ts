import { asWritten, type Choose } from "../dish/amounts.ts";
import type { Dish } from "../dish/dish.ts";
import type { FoodFacts } from "../food/food.ts";
import type { AuthorityChoice } from "./authority.ts";
import { PLAIN_TEXTS, tellCore, tellTime } from "./cautionTexts.ts";
import { CORE_KINDS, type CoreRule, type CoreTemperatures, coreKindOf, coreRule } from "./coreTemperature.ts";
import { isNamed } from "./isNamed.ts";
import { type KeepingRule, type KeepingRules, leftoverDays, pickRule } from "./keeping.ts";

/** What of a food the cautions look at. */
export type CautionFood = Pick<FoodFacts, "id" | "group" | "hygiene" | "names">;

/** The tables that cautions take their figures from. */
export interface SafetyTables {
  readonly coreTemperatures: CoreTemperatures;
  readonly keepingRules: KeepingRules;
}

/** Codes of the cautions, in the order of the work. */
export const CAUTION_CODES = [
  ...(Object.keys(PLAIN_TEXTS) as (keyof typeof PLAIN_TEXTS)[]),
  "kidney-beans",
  "core-temperature",
  "room-time",
  "chill-within",
  "eat-within",
  "re-heat",
  "re-heat-times",
  "carry-cold",
] as const;
export type CautionCode = (typeof CAUTION_CODES)[number];

/** One caution: a code for programs, a short text for the hand with its figures, the figures, and who says so. */
export interface Caution {
  readonly code: CautionCode;
  readonly text: string;
  readonly authority: string;
  /** Ids of the foods it is about; empty = the dish as a whole. */
  readonly foods: readonly string[];
  readonly tempC?: number;
  readonly holdMinutes?: number;
  readonly restMinutes?: number;
  readonly minutes?: number;
  readonly hours?: number;
  readonly days?: number;
  readonly times?: number;
}

/** Signs of a food, each with the caution it calls for and the authority. */
const SIGNS: readonly [keyof typeof PLAIN_TEXTS, string, (food: CautionFood) => boolean][] = [
  ["raw-apart", "WHO, five keys to safer food (from memory)", ({ hygiene }) => hygiene.startsWith("raw-")],
  ["no-rinse", "UK FSA and US FSIS (from memory)", (food) => coreKindOf(food) === "poultry"],
  ["wash-soil", "UK FSA (from memory)", (food) => food.hygiene === "unwashed-root" && !isFrozenProduce(food)],
  ["raw-flour", "US FDA (from memory)", ({ group }) => group === "flour"],
  [
    "sprouts",
    "UK FSA (from memory)",
    (food) => food.group === "vegetable" && isNamed(food, /bean ?sprouts|(?<!kohl|bambus)sprossen|keimlinge/i),
  ],
  ["frozen-produce", "UK FSA (from memory)", isFrozenProduce],
  ["liver-pregnancy", "UK NHS (from memory)", (food) => isNamed(food, /\blivers?\b|leber/i)],
  ["honey-infants", "UK NHS and US CDC (from memory)", (food) => isNamed(food, /^honey\b|honig$|^honig\b/i)],
  ["egg-soft", "US FSIS; UK FSA for eggs without a safety mark (from memory)", ({ hygiene }) => hygiene === "raw-egg"],
];

/**
 * The cautions of a dish, in the order of the work: what comes first of all, raw food, cooking, keeping, heating again.
 *
 * Figures are those of the authority chosen, where nothing was chosen the strictest. The foods are the makings,
 * optional ones too, with the alternatives that `choose` takes; a food not in the table raises no caution of its own.
 * Allergens are not among them. **Source**: each caution names its authority.
 */
export function cautionsOf(
  dish: Pick<Dish, "makings" | "keeps" | "served" | "travels">,
  foods: ReadonlyMap<string, CautionFood>,
  tables: SafetyTables,
  choice: AuthorityChoice = "strictest",
  choose: Choose = asWritten,
): readonly Caution[] {
  const ids = new Set(dish.makings.flatMap((making) => choose(making)?.food ?? []));
  const used = [...ids].flatMap((id) => foods.get(id) ?? []);
  return [
    { code: "label-first", text: PLAIN_TEXTS["label-first"], authority: "Halfloaf's own rule", foods: [] },
    ...SIGNS.flatMap(([code, authority, fits]): Caution[] => {
      const about = used.filter(fits).map(({ id }) => id);
      return about.length > 0 ? [{ code, text: PLAIN_TEXTS[code], authority, foods: about }] : [];
    }),
    ...cautionBeans(used, tables.keepingRules, choice),
    ...cautionCore(used, tables.coreTemperatures, choice),
    ...cautionKeeping(dish, used.filter(isRice), tables, choice),
  ];
}

/** True for rice that is boiled; germs that outlive the boiling grow in it when it stands warm. */
export function isRice(food: CautionFood): boolean {
  return food.group === "grain" && isNamed(food, /\brice\b|reis\b/i);
}

function isFrozenProduce(food: CautionFood): boolean {
  return (
    ["vegetable", "fruit", "soya"].includes(food.group) && isNamed(food, /\bfrozen\b|tiefgek(ü|ue)hlt|gefroren|\bTK\b/i)
  );
}

function cautionBeans(foods: readonly CautionFood[], rules: KeepingRules, choice: AuthorityChoice): Caution[] {
  const about = foods.filter(
    (food) => isNamed(food, /kidney ?(beans|bohnen)/i) && isNamed(food, /\bdried\b|trocken|getrocknet/i),
  );
  if (about.length === 0) return [];
  const soak = pickRule(rules, "kidney-bean-soak-hours", choice);
  const boil = pickRule(rules, "kidney-bean-boil-minutes", choice);
  return [
    {
      code: "kidney-beans",
      text:
        `Raw kidney beans are poisonous: soak them ${soak.value} h or longer, throw the water away, boil them hard ` +
        `for ${boil.value} min or longer and until soft; never raw in a slow cooker.`,
      authority: [...new Set([soak.authority, boil.authority])].join(" and "),
      foods: about.map(({ id }) => id),
      hours: soak.value,
      minutes: boil.value,
    },
  ];
}

function cautionCore(foods: readonly CautionFood[], table: CoreTemperatures, choice: AuthorityChoice): Caution[] {
  return CORE_KINDS.flatMap((kind): Caution[] => {
    const about = foods.filter((food) => coreKindOf(food) === kind).map(({ id }) => id);
    const rule = about.length > 0 ? coreRule(table, kind, choice) : undefined;
    return rule === undefined ? [] : [heatTo("core-temperature", rule, about)];
  });
}

function cautionKeeping(
  { keeps, served, travels }: Pick<Dish, "keeps" | "served" | "travels">,
  rice: readonly CautionFood[],
  { keepingRules: rules, coreTemperatures }: SafetyTables,
  choice: AuthorityChoice,
): Caution[] {
  const room = pickRule(rules, "room-minutes", choice);
  const hot = pickRule(rules, "hot-room-minutes", choice);
  const time = `${tellTime(room.value)}, in great heat ${tellTime(hot.value)}`;
  const about = rice.map(({ id }) => id);
  const list = [within("room-time", room, `Out of fridge and heat at most ${time}, all stays added up.`)];
  if (keeps.fridgeDays > 0 || keeps.freezerDays !== undefined) {
    const chill = pickRule(rules, rice.length > 0 ? "chill-rice-within-minutes" : "chill-within-minutes", choice);
    const cool = `What is kept goes into the cold within ${tellTime(chill.value)}, in flat portions.`;
    list.push({ ...within("chill-within", chill, cool), foods: about });
  }
  if (keeps.fridgeDays > 0) {
    const { days, authority } = leftoverDays(keeps, rice.length > 0, rules, choice);
    const text = `From the fridge eaten within ${days} ${days === 1 ? "day" : "days"} of cooking.`;
    list.push({ code: "eat-within", text, authority, foods: about, days });
  }
  if (list.length > 1 && served.includes("hot")) list.push(...cautionHeatingAgain(coreTemperatures, rules, choice));
  if (travels)
    list.push(within("carry-cold", room, `Carried cold, with an ice block; out of the cold at most ${time}.`));
  return list;
}

function cautionHeatingAgain(table: CoreTemperatures, rules: KeepingRules, choice: AuthorityChoice): Caution[] {
  const rule = coreRule(table, "leftover", choice);
  const { value: times, authority } = pickRule(rules, "reheat-times", choice);
  const text = times === 1 ? "Heated again once only." : `Heated again ${times} times at most.`;
  const once: Caution = { code: "re-heat-times", text, authority, foods: [], times };
  return rule === undefined ? [once] : [heatTo("re-heat", rule, []), once];
}

function heatTo(code: CautionCode, rule: CoreRule, foods: readonly string[]): Caution {
  const { tempC, holdMinutes, restMinutes, authority } = rule;
  return { code, text: tellCore(rule), authority, foods, tempC, holdMinutes, restMinutes };
}

function within(code: CautionCode, { value, authority }: KeepingRule, text: string): Caution {
  return { code, text, authority, foods: [], minutes: value };
}

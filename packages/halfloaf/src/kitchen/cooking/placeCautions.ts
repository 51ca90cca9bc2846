import { asWritten, type Dish, markAhead, orderSteps } from "../../dish/index.ts";
import {
  type AuthorityChoice,
  type Caution,
  type CoreKind,
  cautionsOf,
  coreKindOf,
  coreRule,
  equivalentMinutes,
  JURISDICTIONS,
  pickRule,
  type SafetyTables,
} from "../../safety/index.ts";
import type { CookingWish, DishToCook } from "./Cooking.ts";
import { type FoodState, followFood } from "./foodState.ts";
import type { PlacedCaution } from "./WorkSheet.ts";

/** Cautions of one dish at the place in its method, before the work and after the meal. */
export interface PlacedCautions {
  readonly steps: ReadonlyMap<number, readonly PlacedCaution[]>;
  readonly before: readonly PlacedCaution[];
  readonly after: readonly PlacedCaution[];
}

const AFTER: ReadonlySet<Caution["code"]> = new Set<Caution["code"]>([
  "chill-within",
  "eat-within",
  "re-heat",
  "re-heat-times",
  "carry-cold",
]);
/** Cautions about which foods go in at all, or about all of the work. */
const BEFORE: ReadonlySet<Caution["code"]> = new Set<Caution["code"]>([
  "label-first",
  "liver-pregnancy",
  "honey-infants",
  "room-time",
]);
/** Cautions about heating, said where the food is heated last. */
const LAST_HEAT: ReadonlySet<Caution["code"]> = new Set<Caution["code"]>([
  "core-temperature",
  "egg-soft",
  "sprouts",
  "frozen-produce",
]);

/** Temperatures that guidance lists times for; below 60 C there is none. */
const LISTED_C = [60, 65, 70, 75, 80];

const WASH_AFTER_RAW: PlacedCaution = {
  code: "wash-after-raw",
  text: "Then wash hands, knife, board and all that the raw food touched.",
  authority: "WHO, five keys to safer food (from memory)",
  foods: [],
};

/**
 * The cautions of a dish where the hand needs them: raw food where it is first handled and at each later touch, core
 * temperature where it is heated last, keeping after the meal.
 */
export function placeCautions({ dish, choose = asWritten }: DishToCook, wish: CookingWish): PlacedCautions {
  const { foods, safety } = wish.tables;
  const states = followFood(dish, foods, choose);
  const steps = new Map<number, PlacedCaution[]>();
  const before: PlacedCaution[] = dish.cautions.map(toDishCaution);
  const after: PlacedCaution[] = [];
  const put = (place: number, caution: PlacedCaution) => steps.set(place, [...(steps.get(place) ?? []), caution]);
  for (const caution of cautionsOf(dish, foods, safety, wish.authority, choose)) {
    const placed = toPlaced(caution, wish);
    const place = findPlace(caution, dish, states);
    if (AFTER.has(caution.code)) after.push(placed);
    else if (BEFORE.has(caution.code) || place === undefined) before.push(placed);
    else put(place, placed);
  }
  putWashes(dish, states, put);
  putThawed(dish, wish.tables, wish.authority, put);
  return { steps, before, after };
}

function toDishCaution(text: string): PlacedCaution {
  return { code: "dish", text, authority: "the dish's author", foods: [] };
}

function toPlaced(
  { code, text, authority, foods }: Caution,
  { tables, authority: choice }: CookingWish,
): PlacedCaution {
  const base = { code, text, authority, foods };
  if (code !== "core-temperature" && code !== "re-heat") return base;
  const food = foods.flatMap((id) => tables.foods.get(id) ?? [])[0];
  const kind = code === "re-heat" ? "leftover" : food && coreKindOf(food);
  return kind === undefined ? base : { ...base, otherTimes: otherTimes(kind, tables.safety, choice) };
}

/**
 * Times at other temperatures in the middle that do as much as the core rule. A temperature below that of an authority
 * which asks for no time is left out: that authority gives no time for it.
 * **Source**: `equivalentMinutes`, from the rules of the authorities that give a time.
 */
function otherTimes(kind: CoreKind, { coreTemperatures }: SafetyTables, choice: AuthorityChoice) {
  const jurisdictions = choice === "strictest" ? JURISDICTIONS : [choice];
  const rules = jurisdictions.flatMap((each) => coreRule(coreTemperatures, kind, each) ?? []);
  const timed = rules.filter(({ holdMinutes }) => holdMinutes > 0);
  if (timed.length === 0) return [];
  return LISTED_C.filter((tempC) => rules.every((rule) => rule.holdMinutes > 0 || tempC >= rule.tempC)).map(
    (tempC) => ({
      tempC,
      minutes: Math.max(
        ...timed.map((rule) => equivalentMinutes(tempC, { referenceC: rule.tempC, minutes: rule.holdMinutes })),
      ),
    }),
  );
}

/** Where a caution about foods belongs: their last heating, or where they first come to hand. */
function findPlace({ code, foods }: Caution, { method }: Dish, states: readonly FoodState[]): number | undefined {
  const { sequence } = orderSteps(method);
  const named = sequence.filter((at) => states[at]?.foods.some((food) => foods.includes(food)));
  if (!LAST_HEAT.has(code)) return named[0];
  const heated = sequence.filter((at) => states[at]?.cooks && states[at]?.holds.some((food) => foods.includes(food)));
  return heated.at(-1) ?? named.at(-1);
}

/** At every touch of raw food after the first, which says so itself; what is in the pan already no hand touches. */
function putWashes({ method }: Dish, states: readonly FoodState[], put: (place: number, of: PlacedCaution) => void) {
  const touches = orderSteps(method).sequence.filter((at) => {
    const { raw, carried } = states[at] as FoodState;
    return raw.some((food) => !carried.includes(food));
  });
  for (const at of touches.slice(1)) put(at, { ...WASH_AFTER_RAW, foods: states[at]?.raw ?? [] });
}

function putThawed(
  dish: Dish,
  { foods, safety }: CookingWish["tables"],
  choice: AuthorityChoice,
  put: (place: number, of: PlacedCaution) => void,
) {
  const isAhead = markAhead(dish.method, orderSteps(dish.method));
  const rule = pickRule(safety.keepingRules, "thawed-hours", choice);
  for (const [place, step] of dish.method.entries()) {
    const frozen = step.foods.filter((id) => isFrozen(foods.get(id)));
    if (!isAhead[place] || frozen.length === 0) continue;
    const text = `Thawed in the fridge, on a plate that holds the drip; used within ${rule.value} h of being thawed.`;
    put(place, { code: "thawed", text, authority: rule.authority, foods: frozen });
  }
}

/** True for a food that is bought frozen, by its names. */
export function isFrozen(food: { readonly names: { readonly british: readonly string[] } } | undefined): boolean {
  return food?.names.british.some((name) => /\bfrozen\b/i.test(name)) === true;
}

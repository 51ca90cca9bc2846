import { loadStarterDishes, loadStarterFoods } from "@halfloaf/data";
import { describe, expect, test } from "vitest";
import { NUTRIENT_NAMES, parseFoodTable } from "../food/index.ts";
import { parseWith } from "../quantity/index.ts";
import { allergensOf } from "./allergensOf.ts";
import { makingsOf } from "./amounts.ts";
import { checkDish } from "./checkDish.ts";
import { type Diet, dietOf } from "./dietOf.ts";
import { Dish } from "./dish.ts";
import { isTravelling, kitNeeded, needsHeat } from "./kitNeeded.ts";
import { linearMinutes, minutesOf } from "./minutes.ts";
import { nutrientsOfDish } from "./nutrients.ts";

const table = parseFoodTable(loadStarterFoods());
const foods = table.ok ? table.table : new Map();
const files = loadStarterDishes().map(({ name, content }) => ({ name, list: Array.isArray(content) ? content : [] }));
const read = files.flatMap(({ name, list }) =>
  list.map((input: unknown, at) => ({ place: `${name} ${at}`, parsed: parseWith(Dish, input) })),
);
const dishes = read.flatMap(({ parsed }) => (parsed.ok ? [parsed.value] : []));

/** Every dish that breaks a rule, told by the rule itself; undefined means sound. */
function breaches(judge: (dish: Dish) => string | undefined): string[] {
  return dishes.flatMap((dish) => {
    const breach = judge(dish);
    return breach === undefined ? [] : [`${dish.id}: ${breach}`];
  });
}

function count(judge: (dish: Dish) => boolean): number {
  return dishes.filter(judge).length;
}

function findTwice(values: readonly string[]): string[] {
  return values.filter((value, at) => values.indexOf(value) !== at);
}

describe("the starter dishes", () => {
  test("come from three files, none of them empty", () => {
    expect(table.ok).toBe(true);
    expect(files.map(({ name }) => name)).toEqual(["east", "north", "south"]);
    for (const { list } of files) expect(list.length).toBeGreaterThan(0);
  });

  test("are read without a fault", () => {
    const issues = read.flatMap(({ place, parsed }) =>
      parsed.ok
        ? []
        : parsed.issues.map(({ path, expected, received }) => `${place} ${path.join("/")}: ${expected}, ${received}`),
    );
    expect(issues).toEqual([]);
  });

  test("hold together", () => {
    expect(
      dishes.flatMap((dish) =>
        checkDish(dish, foods).map(({ code, path, received }) => `${dish.id} ${path.join("/")}: ${code} ${received}`),
      ),
    ).toEqual([]);
  });

  test("have an id and a title each of their own", () => {
    expect(findTwice(dishes.map(({ id }) => id))).toEqual([]);
    expect(findTwice(dishes.map(({ title }) => title.toLowerCase().trim()))).toEqual([]);
  });

  test("have a main that is not optional, and every amount but salt to taste can become grams", () => {
    expect(
      breaches(({ main, makings }) =>
        makings.some(({ food, optional }) => food === main && !optional) ? undefined : main,
      ),
    ).toEqual([]);
    expect(
      breaches((dish) => {
        const unknown = makingsOf(dish, foods).filter((each) => !each.ok && each.reason !== "to-taste");
        return unknown.length === 0 ? undefined : unknown.map(({ food }) => food).join(", ");
      }),
    ).toEqual([]);
  });

  test("make portions of 40 g to 900 g from makings that can fill them", () => {
    expect(
      breaches((dish) => {
        const rawG = nutrientsOfDish(dish, foods, undefined).edibleG;
        const { portionMassG } = dish;
        if (portionMassG < 40 || portionMassG > 900) return `${portionMassG} g`;
        // Grain and pulses take up at most about three times their mass of water, and a soup is mostly water.
        return portionMassG > 4 * rawG || portionMassG < 0.5 * rawG ? `${portionMassG} g of ${rawG} g raw` : undefined;
      }),
    ).toEqual([]);
  });

  test("give between 300 and 5000 kJ a portion, known for all but a tenth of the mass", () => {
    expect(
      breaches((dish) => {
        const { amount, knownShare } = nutrientsOfDish(dish, foods, undefined).perPortion.energyKj;
        if (amount === undefined || knownShare < 0.9) return `energy known for ${knownShare} of the mass`;
        return amount < 300 || amount > 5000 ? `${amount} kJ` : undefined;
      }),
    ).toEqual([]);
  });

  test("never give less than nothing of anything, and what is not known is no number", () => {
    expect(
      breaches((dish) => {
        const { perPortion } = nutrientsOfDish(dish, foods, undefined);
        const wrong = NUTRIENT_NAMES.filter((name) => {
          const { amount, knownShare } = perPortion[name];
          return amount === undefined ? knownShare !== 0 : !(amount >= 0 && knownShare > 0 && knownShare <= 1);
        });
        return wrong.length === 0 ? undefined : wrong.join(", ");
      }),
    ).toEqual([]);
  });

  test("have linear minutes that are never below the computed ones", () => {
    expect(
      breaches((dish) => {
        const line = linearMinutes(dish).elapsed;
        const below = [1, 2, 3, 4, 5, 6, 7, 8].filter(
          (portions) => line.fixed + line.perPortion * portions < minutesOf(dish, portions).elapsed - 1e-9,
        );
        return below.length === 0 ? undefined : `below at ${below.join(", ")} portions`;
      }),
    ).toEqual([]);
  });

  test("know the allergens of all their foods", () => {
    expect(
      breaches((dish) => {
        const { unknownFoods } = allergensOf(dish, foods);
        return unknownFoods.length === 0 ? undefined : unknownFoods.join(", ");
      }),
    ).toEqual([]);
  });
});

/** Words that all stand in the title, the foods and the cuts of a dish that is left out. */
const LEFT_OUT = [
  { name: "oats with grated apple and yogurt", words: [/apple/, /\boats?\b/, /yogh?urt/, /grat/] },
  { name: "chicken with honey and chili in a wrap", words: [/honey/, /chill?i/, /chicken/, /wrap|tortilla/] },
  { name: "bean salad on crackers", words: [/bean/, /salad/, /cracker|crispbread/] },
  { name: "noodles with crumbled tofu, chili and garlic", words: [/chill?i/, /garlic/, /tofu/, /noodle/, /crumbl/] },
];

describe("the starter dishes left out", () => {
  const tell = ({ title, makings, method }: Pick<Dish, "title" | "makings" | "method">) =>
    [title, ...makings.flatMap(({ food, cut = "" }) => [food, cut]), ...method.map(({ text }) => text)]
      .join(" ")
      .toLowerCase();

  test.each(LEFT_OUT)("$name", ({ words }) => {
    expect(breaches((dish) => (words.every((word) => word.test(tell(dish))) ? dish.title : undefined))).toEqual([]);
  });
});

describe("the starter dishes by number", () => {
  const isOnePot = (dish: Dish) => {
    const { pans, pots, rings, oven, microwave } = kitNeeded(dish);
    return rings === 1 && pans + pots === 1 && !oven && !microwave;
  };
  const elapsed = (dish: Dish) => minutesOf(dish, dish.portions, { rings: 1, cooks: 1 }).elapsed;
  const isDiet = (diet: Diet) => (dish: Dish) => dietOf(dish, foods).asWritten === diet;
  const freezes = ({ portions, keeps }: Dish) => portions >= 4 && (keeps.freezerDays ?? 0) > 0;

  test("96 or more", () => {
    expect(dishes.length).toBeGreaterThanOrEqual(96);
  });

  test("20 or more without heat", () => {
    expect(count((dish) => !needsHeat(dish))).toBeGreaterThanOrEqual(20);
  });

  test("20 or more to take along and eat cold", () => {
    expect(count(isTravelling)).toBeGreaterThanOrEqual(20);
  });

  test("40 or more in one pan or pot on one ring within 30 minutes", () => {
    expect(count((dish) => isOnePot(dish) && elapsed(dish) <= 30)).toBeGreaterThanOrEqual(40);
  });

  test("12 or more batches of four portions or more that freeze", () => {
    expect(count(freezes)).toBeGreaterThanOrEqual(12);
  });

  test("40 or more vegan as written and 30 or more besides that are vegetarian", () => {
    expect(count(isDiet("vegan"))).toBeGreaterThanOrEqual(40);
    expect(count(isDiet("vegetarian"))).toBeGreaterThanOrEqual(30);
  });
});

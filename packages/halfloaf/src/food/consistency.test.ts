import { loadStarterFoods } from "@halfloaf/data";
import { describe, expect, test } from "vitest";
import { findFoodCalled } from "./findFoodCalled.ts";
import type { Food } from "./food.ts";
import { namesOf } from "./foodName.ts";
import { parseFoodTable } from "./foodTable.ts";
import { NUTRIENT_NAMES, type Nutrient } from "./nutrient.ts";
import { isFound, toSearchText } from "./searchText.ts";

const ACID = "acetic acid has no column of its own, and its energy counts in the figure of the source";

/** Foods whose stated energy the rule below does not meet, each with its reason; the food's own note says the same. */
const ENERGY_EXCEPTIONS: ReadonlyMap<string, string> = new Map([
  ["vinegar-white", ACID],
  ["vinegar-cider", ACID],
  ["vinegar-red-wine", ACID],
  ["vinegar-balsamic", ACID],
  ["vinegar-rice", ACID],
  ["white-pepper", "the source reckons with lower factors, as for black pepper, which the row does not hold"],
]);

/** Foods whose proximates do not add up to 100 g within 3 g, each with its reason; the food's own note says the same. */
const SUM_EXCEPTIONS: ReadonlyMap<string, string> = new Map([
  ["vinegar-white", ACID],
  ["vinegar-cider", ACID],
  ["vinegar-red-wine", ACID],
  ["vinegar-balsamic", ACID],
  ["vinegar-rice", ACID],
  ["bicarbonate-of-soda", "the carbon dioxide and water bound in the salt are neither water nor ash"],
  ["black-pepper", "the source's own row adds up to 94.6 g"],
]);

const ALCOHOL_KCAL_PER_G = 6.93;

const parsed = parseFoodTable(loadStarterFoods());
const foods: readonly Food[] = parsed.ok ? [...parsed.table.values()] : [];

/** The figures named, or undefined where one of them is unknown. */
function figures<Name extends Nutrient>(food: Food, ...names: Name[]): Record<Name, number> | undefined {
  return names.every((name) => food.composition[name] !== undefined)
    ? (food.composition as Record<Name, number>)
    : undefined;
}

/** Every food that breaks a rule, told by the rule itself; undefined means sound or not known well enough to judge. */
function breaches(judge: (food: Food) => string | undefined): string[] {
  return foods.flatMap((food) => {
    const breach = judge(food);
    return breach === undefined ? [] : [`${food.id}: ${breach}`];
  });
}

describe("the starter table", () => {
  test("is read without a fault", () => {
    expect(
      parsed.ok
        ? []
        : parsed.issues.map(({ path, expected, received }) => `${path.join("/")}: ${expected}, ${received}`),
    ).toEqual([]);
  });

  test("has 320 foods or more", () => {
    expect(foods.length).toBeGreaterThanOrEqual(320);
  });

  test("every food has a source, a name in both Englishes and in German, and a keeping authority", () => {
    expect(
      breaches(({ source, names, keeping }) =>
        [source, names.british[0], names.american[0], names.german?.[0], keeping.authority].some(
          (text) => !text?.trim(),
        )
          ? "lacks one"
          : undefined,
      ),
    ).toEqual([]);
  });

  test.each(["british", "american", "german"] as const)("no two foods are shown by the same %s name", (tongue) => {
    const shown = new Map<string, string>();
    expect(
      breaches(({ id, names }) => {
        const name = names[tongue]?.[0] ?? "";
        const other = shown.get(toSearchText(name));
        shown.set(toSearchText(name), id);
        return other === undefined ? undefined : `is called ${name} as ${other} is`;
      }),
    ).toEqual([]);
  });

  test("no food names the same twice in one language, and no German name begins or ends with a space", () => {
    expect(
      breaches(({ names }) => {
        const told = Object.values(names).flatMap((each) => (new Set(each).size < each.length ? each : []));
        const untidy = (names.german ?? []).filter((name) => name !== name.trim() || name.includes(";"));
        return told.length + untidy.length > 0 ? [...told, ...untidy].join(", ") : undefined;
      }),
    ).toEqual([]);
  });

  test("every food is found by each of its names, in capitals and with umlauts and ß spelt out", () => {
    const spell = (name: string): string =>
      [...name.toLowerCase()].map((letter) => ({ ä: "ae", ö: "oe", ü: "ue", ß: "ss" })[letter] ?? letter).join("");
    expect(
      breaches((food) => {
        const words = toSearchText(namesOf(food).join(" "));
        const missed = namesOf(food).filter(
          (name) => ![name, name.toUpperCase(), spell(name)].every((asked) => isFound(words, asked)),
        );
        return missed.length > 0 ? missed.join(", ") : undefined;
      }),
    ).toEqual([]);
  });

  test("the whole German name means its food", () => {
    const table = new Map(foods.map((food) => [food.id, food]));
    expect(
      breaches(({ id, names }) => {
        const missed = (names.german ?? []).filter((name) => findFoodCalled(table, name, "british", "de")?.id !== id);
        return missed.length > 0 ? missed.join(", ") : undefined;
      }),
    ).toEqual([]);
  });

  test("a source of its own belongs to a figure of the row, or says why that was left unknown", () => {
    const columns: readonly string[] = [...NUTRIENT_NAMES, "proteinKcalPerG", "fatKcalPerG", "carbohydrateKcalPerG"];
    expect(
      breaches(({ figureSources, composition, energyFactors }) => {
        const known: Record<string, unknown> = { ...composition, ...energyFactors };
        const lost = Object.entries(figureSources)
          .filter(
            ([name, text]) =>
              !columns.includes(name) || (known[name] === undefined && !text.startsWith("left unknown")),
          )
          .map(([name]) => name);
        return lost.length > 0 ? `figureSources names ${lost.join(", ")}` : undefined;
      }),
    ).toEqual([]);
  });

  test("every exception names a food of the table that needs it and says why in its note", () => {
    const unneeded = [
      ...[...ENERGY_EXCEPTIONS.keys()].map((id) => [id, judgeEnergy] as const),
      ...[...SUM_EXCEPTIONS.keys()].map((id) => [id, judgeSum] as const),
    ].filter(([id, judge]) => {
      const food = foods.find((each) => each.id === id);
      return food === undefined || judge(food) === undefined || food.note === undefined;
    });
    expect(unneeded.map(([id]) => id)).toEqual([]);
  });
});

/** Water, protein, fat, carbohydrate by difference, ash and alcohol make 100 g; alcohol counts where it is known. */
function judgeSum(food: Food): string | undefined {
  const known = figures(food, "waterG", "proteinG", "fatG", "carbohydrateByDifferenceG", "ashG");
  if (known === undefined) return undefined;
  const alcoholG = food.composition.alcoholG;
  const sum = known.waterG + known.proteinG + known.fatG + known.carbohydrateByDifferenceG + known.ashG;
  // An unknown alcohol can only be what is missing, so it cannot excuse a sum above 100.
  const total = alcoholG === undefined ? sum : sum + alcoholG;
  return Math.abs(total - 100) > 3 ? `proximates add up to ${total.toFixed(2)} g` : undefined;
}

/** Energy by the food's own factors, else 4, 9, 4 kcal/g; within 5 %, below 60 kcal within 3 kcal. */
function judgeEnergy(food: Food): string | undefined {
  const known = figures(food, "energyKcal", "proteinG", "fatG", "carbohydrateByDifferenceG");
  if (known === undefined) return undefined;
  const factors = food.energyFactors ?? { proteinKcalPerG: 4, fatKcalPerG: 9, carbohydrateKcalPerG: 4 };
  const reckoned =
    known.proteinG * factors.proteinKcalPerG +
    known.fatG * factors.fatKcalPerG +
    known.carbohydrateByDifferenceG * factors.carbohydrateKcalPerG +
    (food.composition.alcoholG === undefined ? 0 : food.composition.alcoholG * ALCOHOL_KCAL_PER_G);
  const allowed = known.energyKcal < 60 ? 3 : known.energyKcal * 0.05;
  if (Math.abs(reckoned - known.energyKcal) <= allowed) return undefined;
  return `states ${known.energyKcal} kcal, reckoned ${reckoned.toFixed(1)}`;
}

describe("identities of every row", () => {
  test.each<Nutrient[][]>([
    [["waterG", "proteinG", "fatG", "carbohydrateByDifferenceG", "ashG"]],
    [["energyKcal", "proteinG", "fatG", "carbohydrateByDifferenceG"]],
    [["fatG", "saturatesG", "monounsaturatesG", "polyunsaturatesG"]],
    [["sugarsG", "freeSugarsG"]],
    [["vitaminARaeUg", "retinolUg", "betaCaroteneUg", "alphaCaroteneUg", "betaCryptoxanthinUg"]],
    [["folateDfeUg", "folateFoodUg", "folicAcidUg"]],
  ])("%j are known together for 300 foods or more, so that the rule over them has something to judge", (names) => {
    expect(foods.filter((food) => figures(food, ...names) !== undefined).length).toBeGreaterThanOrEqual(300);
  });

  test("proximates add up to 100 g within 3 g", () => {
    expect(breaches((food) => (SUM_EXCEPTIONS.has(food.id) ? undefined : judgeSum(food)))).toEqual([]);
  });

  test("energy follows from protein, fat, carbohydrate and alcohol", () => {
    expect(breaches((food) => (ENERGY_EXCEPTIONS.has(food.id) ? undefined : judgeEnergy(food)))).toEqual([]);
  });

  test("kilojoules are 4.184 times kilocalories within what rounding to whole numbers leaves", () => {
    expect(
      breaches((food) => {
        const known = figures(food, "energyKcal", "energyKj");
        if (known === undefined) return undefined;
        const off = Math.abs(known.energyKj - known.energyKcal * 4.184);
        return off > Math.max(3, known.energyKj * 0.01)
          ? `${known.energyKj} kJ to ${known.energyKcal} kcal`
          : undefined;
      }),
    ).toEqual([]);
  });

  test("available carbohydrate is by difference less fibre", () => {
    expect(
      breaches((food) => {
        const known = figures(food, "carbohydrateByDifferenceG", "carbohydrateAvailableG", "fibreG");
        if (known === undefined) return undefined;
        const expected = Math.max(0, known.carbohydrateByDifferenceG - known.fibreG);
        const off = Math.abs(known.carbohydrateAvailableG - expected);
        return off > 0.1 ? `${known.carbohydrateAvailableG} g, expected ${expected.toFixed(2)}` : undefined;
      }),
    ).toEqual([]);
  });

  test.each<[Nutrient, Nutrient[], number]>([
    ["carbohydrateByDifferenceG", ["sugarsG"], 0.5],
    ["carbohydrateAvailableG", ["sugarsG"], 0.5],
    ["sugarsG", ["freeSugarsG"], 0],
    ["fatG", ["saturatesG"], 0.1],
    ["fatG", ["saturatesG", "monounsaturatesG", "polyunsaturatesG"], 0.1],
    ["polyunsaturatesG", ["alaG"], 0.1],
    ["polyunsaturatesG", ["epaDhaG"], 0.1],
    ["proteinG", ["lysineG"], 0],
    ["vitaminARaeUg", ["retinolUg"], 1],
  ])("%s is not less than %j", (whole, parts, tolerance) => {
    expect(
      breaches((food) => {
        const known = figures(food, whole, ...parts);
        if (known === undefined) return undefined;
        const sum = parts.reduce((total, name) => total + known[name], 0);
        return sum > known[whole] + tolerance ? `${sum.toFixed(2)} of ${known[whole]}` : undefined;
      }),
    ).toEqual([]);
  });

  test("vitamin A is retinol + beta-carotene/12 + (alpha-carotene + beta-cryptoxanthin)/24 within 1 ug", () => {
    expect(
      breaches((food) => {
        const known = figures(
          food,
          "vitaminARaeUg",
          "retinolUg",
          "betaCaroteneUg",
          "alphaCaroteneUg",
          "betaCryptoxanthinUg",
        );
        if (known === undefined) return undefined;
        const expected =
          known.retinolUg + known.betaCaroteneUg / 12 + (known.alphaCaroteneUg + known.betaCryptoxanthinUg) / 24;
        return Math.abs(known.vitaminARaeUg - expected) > 1
          ? `${known.vitaminARaeUg} ug, expected ${expected.toFixed(1)}`
          : undefined;
      }),
    ).toEqual([]);
  });

  test("folate equivalents are food folate + 1.7 x folic acid within 1 ug", () => {
    expect(
      breaches((food) => {
        const known = figures(food, "folateDfeUg", "folateFoodUg", "folicAcidUg");
        if (known === undefined) return undefined;
        const expected = known.folateFoodUg + 1.7 * known.folicAcidUg;
        return Math.abs(known.folateDfeUg - expected) > 1
          ? `${known.folateDfeUg} ug, expected ${expected.toFixed(1)}`
          : undefined;
      }),
    ).toEqual([]);
  });

  test("no mass in 100 g is above 100 g", () => {
    expect(
      breaches(({ composition }) => {
        const over = NUTRIENT_NAMES.filter((name) => name.endsWith("G") && (composition[name] ?? Number.NaN) > 100);
        return over.length > 0 ? over.join(", ") : undefined;
      }),
    ).toEqual([]);
  });
});

/** Components bounded over the week, after energy; the first six in g or mg, the rest in percent of a day's reference. */
export const COMPONENTS = [
  "protein",
  "fat",
  "saturates",
  "fibre",
  "sugars",
  "sodium",
  "calcium",
  "iron",
  "magnesium",
  "potassium",
  "zinc",
  "vitaminA",
  "vitaminC",
  "vitaminD",
  "vitaminE",
  "vitaminK",
  "thiamin",
  "riboflavin",
  "niacin",
  "vitaminB6",
  "folate",
];
/** Those of which too much is the trouble. */
export const AT_MOST = new Set(["fat", "saturates", "sugars", "sodium"]);
/** Days, or packs, that never bind. */
export const LASTS = 9999;

/** A kind of food: per 100 g kJ and components, cents a kg, pack sizes, days unopened and opened, share of all foods. */
export interface FoodKind {
  readonly name: string;
  readonly share: number;
  readonly energyKj: number;
  readonly components: readonly number[];
  readonly centsPerKg: readonly [number, number];
  readonly packsG: readonly number[];
  readonly unopened: readonly [number, number];
  readonly opened: readonly [number, number];
}

function kind(
  name: string,
  share: number,
  energyKj: number,
  components: number[],
  centsPerKg: [number, number],
  packsG: number[],
  unopened: [number, number] = [LASTS, LASTS],
  opened: [number, number] = unopened,
): FoodKind {
  return { name, share, energyKj, components, centsPerKg, packsG, unopened, opened };
}

// Ranges are invented round figures for foods of these kinds, for benchmarks only.
/** The kinds that foods are drawn from. */
export const FOOD_KINDS: readonly FoodKind[] = [
  kind(
    "grain",
    10,
    1480,
    [11, 2, 0.4, 7, 2, 6, 2, 14, 26, 6, 15, 0, 0, 0, 4, 3, 26, 7, 24, 12, 11],
    [110, 330],
    [500, 1000, 2000],
  ),
  kind(
    "bread",
    4,
    1070,
    [9, 3, 0.6, 6, 4, 450, 8, 16, 12, 5, 8, 0, 0, 0, 2, 2, 24, 12, 22, 6, 12],
    [240, 460],
    [400, 800],
    [5, 7],
    [4, 5],
  ),
  kind(
    "pulse",
    9,
    470,
    [8, 1, 0.2, 7, 1, 180, 4, 13, 9, 9, 8, 0, 1, 0, 3, 4, 9, 4, 4, 6, 20],
    [170, 310],
    [240, 480],
    [LASTS, LASTS],
    [2, 3],
  ),
  kind(
    "leaf",
    6,
    105,
    [2.4, 0.4, 0.1, 2.4, 1.2, 45, 7, 9, 9, 11, 3, 42, 44, 0, 9, 150, 6, 9, 4, 9, 26],
    [380, 920],
    [100, 200, 300],
    [4, 6],
    [2, 3],
  ),
  kind(
    "vegetable",
    17,
    165,
    [1.5, 0.3, 0.1, 2.6, 4, 20, 3, 3, 4, 8, 2, 26, 34, 0, 4, 12, 5, 4, 5, 9, 9],
    [110, 460],
    [150, 500, 1000],
    [6, 14],
    [3, 8],
  ),
  kind(
    "frozen",
    5,
    250,
    [3.4, 0.5, 0.1, 3.8, 3, 35, 4, 6, 6, 6, 4, 26, 24, 0, 4, 20, 9, 6, 6, 7, 15],
    [180, 330],
    [450, 900],
  ),
  kind(
    "fruit",
    9,
    240,
    [0.8, 0.3, 0.1, 2.4, 11, 2, 1, 2, 4, 6, 1, 2, 31, 0, 3, 4, 3, 3, 3, 8, 4],
    [170, 560],
    [150, 500, 1000],
    [5, 11],
    [3, 7],
  ),
  kind(
    "meat",
    6,
    750,
    [20, 11, 3.8, 0, 0, 70, 1, 8, 6, 9, 26, 1, 0, 2, 2, 0, 15, 14, 40, 28, 2],
    [500, 1250],
    [250, 450, 900],
    [2, 3],
    [1, 2],
  ),
  kind(
    "fish",
    4,
    620,
    [20, 7, 1.5, 0, 0, 85, 3, 4, 8, 10, 5, 3, 1, 40, 8, 0, 10, 8, 42, 30, 4],
    [700, 1400],
    [200, 360],
    [2, 2],
    [1, 1],
  ),
  kind(
    "milk",
    6,
    250,
    [4, 2.4, 1.5, 0, 5, 45, 12, 0, 3, 5, 4, 4, 0, 8, 0, 0, 3, 13, 1, 3, 1],
    [90, 290],
    [500, 1000, 2000],
    [7, 12],
    [3, 5],
  ),
  kind(
    "cheese",
    4,
    1450,
    [24, 28, 17, 0, 0.5, 650, 60, 2, 6, 2, 25, 20, 0, 3, 2, 2, 2, 20, 1, 4, 5],
    [700, 1250],
    [150, 250, 400],
    [20, 40],
    [5, 10],
  ),
  kind(
    "egg",
    1,
    610,
    [12.5, 10, 3.1, 0, 0.4, 140, 5, 9, 3, 4, 11, 18, 0, 10, 7, 0, 3, 28, 1, 9, 11],
    [310, 520],
    [360, 720],
    [21, 28],
    [21, 28],
  ),
  kind("oil", 3, 3690, [0, 99, 13, 0, 0, 1, 0, 1, 0, 0, 0, 1, 0, 0, 50, 20, 0, 0, 0, 0, 0], [380, 920], [500, 1000]),
  kind(
    "sauce",
    8,
    250,
    [1.8, 1.5, 0.3, 1.8, 6, 420, 2, 5, 5, 9, 2, 8, 12, 0, 8, 4, 4, 4, 8, 8, 4],
    [190, 610],
    [200, 400, 700],
    [LASTS, LASTS],
    [4, 12],
  ),
  kind(
    "spice",
    8,
    1180,
    [10, 8, 1.5, 22, 5, 800, 60, 90, 40, 30, 20, 30, 10, 0, 20, 60, 15, 15, 15, 20, 15],
    [2400, 6000],
    [30, 60],
  ),
  kind(
    "nut",
    4,
    2470,
    [20, 50, 6, 8, 5, 8, 8, 18, 45, 14, 25, 0, 1, 0, 60, 5, 20, 12, 25, 20, 15],
    [680, 1450],
    [150, 300, 500],
  ),
  kind(
    "sweet",
    4,
    1340,
    [0.5, 0.2, 0, 0.5, 70, 10, 1, 2, 1, 1, 1, 0, 2, 0, 0, 0, 0, 1, 0, 0, 0],
    [190, 620],
    [250, 500],
  ),
  kind(
    "tofu",
    3,
    520,
    [13, 7.5, 1.1, 1, 0.5, 10, 28, 15, 12, 4, 10, 0, 0, 0, 1, 2, 7, 4, 2, 4, 6],
    [440, 710],
    [280, 400],
    [14, 20],
    [2, 3],
  ),
];

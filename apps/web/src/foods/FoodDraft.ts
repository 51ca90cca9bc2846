import { composeDerived } from "@halfloaf/reading";
import {
  type English,
  EU_ALLERGENS,
  foodName,
  type Nutrient,
  type OwnFood,
  PLACES,
  type Place,
  US_ALLERGENS,
} from "halfloaf/food";
import { SALT_PER_SODIUM } from "halfloaf/intake";

type EuAllergen = (typeof EU_ALLERGENS)[number];
type UsAllergen = (typeof US_ALLERGENS)[number];
type Days = Readonly<Partial<Record<Place, number | undefined>>>;

/** An own food while its form is filled in: "" and undefined = not said yet, NaN = no number. */
export interface FoodDraft {
  readonly name: string;
  readonly source: string;
  readonly group: OwnFood["group"] | "";
  readonly vegetableOrFruit: boolean;
  readonly diet: OwnFood["diet"] | "";
  readonly hygiene: OwnFood["hygiene"] | "";
  readonly allergens: readonly EuAllergen[];
  /** US law tells wheat apart from the other cereals with gluten. */
  readonly wheat: boolean;
  /** True where the label names no allergen: said, and not only left out. */
  readonly noAllergens: boolean;
  readonly refusePct: number | undefined;
  readonly densityGPerMl: number | undefined;
  readonly pieceG: number | undefined;
  readonly unopened: Days;
  readonly opened: Days;
  /** Grams of salt, as labels print it, in place of sodium. */
  readonly saltG: number | undefined;
  readonly figures: Readonly<Partial<Record<Nutrient, number | undefined>>>;
}

/** A draft of a food that nothing is said of yet. */
export const NEW_FOOD: Omit<FoodDraft, "source"> = {
  name: "",
  group: "",
  vegetableOrFruit: false,
  diet: "",
  hygiene: "",
  allergens: [],
  wheat: false,
  noAllergens: false,
  refusePct: 0,
  densityGPerMl: undefined,
  pieceG: undefined,
  unopened: {},
  opened: {},
  saltG: undefined,
  figures: {},
};

/** Allergens of US law by those of EU law; gluten tells nothing of wheat, and the other EU ones have none. */
const US_OF: Readonly<Partial<Record<EuAllergen, UsAllergen>>> = {
  milk: "milk",
  eggs: "eggs",
  fish: "fish",
  crustaceans: "crustacean-shellfish",
  nuts: "tree-nuts",
  peanuts: "peanuts",
  soybeans: "soybeans",
  sesame: "sesame",
};

const MG_PER_G = 1000;

/** An own food as its form shows it; what was only reckoned from other figures is left out. */
export function toDraft(food: OwnFood, { english, language }: Speech): FoodDraft {
  const { eu, us } = food.allergens;
  const known = new Set<string>(us);
  const allergens = EU_ALLERGENS.filter(
    (each) => eu.includes(each) || known.has(US_OF[each] ?? "") || (each === "gluten" && known.has("wheat")),
  );
  const reckoned = `${food.source}: reckoned`;
  const printed = Object.entries(food.composition).filter(
    ([name]) => name !== "sodiumMg" && food.figureSources[name]?.startsWith(reckoned) !== true,
  );
  const { sodiumMg } = food.composition;
  return {
    name: foodName(food, english, language) ?? "",
    source: food.source,
    group: food.group,
    vegetableOrFruit: food.vegetableOrFruit,
    diet: food.diet,
    hygiene: food.hygiene,
    allergens,
    wheat: known.has("wheat"),
    noAllergens: allergens.length === 0,
    refusePct: food.refusePct,
    densityGPerMl: food.densityGPerMl,
    pieceG: food.pieces[0]?.massG,
    unopened: food.keeping.unopened,
    opened: food.keeping.opened,
    saltG: sodiumMg === undefined ? undefined : round((sodiumMg * SALT_PER_SODIUM) / MG_PER_G),
    figures: Object.fromEntries(printed),
  };
}

/** What a form still lacks: the field, and what is wrong there. */
export interface FoodProblem {
  readonly field: keyof FoodDraft | Nutrient;
  readonly problem: "missing" | "choose" | "number" | "most" | "above" | "whole" | "allergens" | "keeping" | "figures";
  /** Of keeping: where. */
  readonly place?: Place;
}

/** All that keeps a draft from being a food. */
export function findProblems(draft: FoodDraft): FoodProblem[] {
  const problems: FoodProblem[] = [];
  const tell = (field: FoodProblem["field"], problem: FoodProblem["problem"], place?: Place): void => {
    problems.push({ field, problem, ...(place && { place }) });
  };
  if (draft.name.trim() === "") tell("name", "missing");
  if (draft.source.trim() === "") tell("source", "missing");
  for (const field of ["group", "diet", "hygiene"] as const) if (draft[field] === "") tell(field, "choose");
  if (draft.allergens.length === 0 && !draft.noAllergens && !draft.wheat) tell("allergens", "allergens");
  if (!isFigure(draft.refusePct ?? 0)) tell("refusePct", "number");
  else if ((draft.refusePct ?? 0) >= MOST_REFUSE_PCT) tell("refusePct", "most");
  for (const field of ["densityGPerMl", "pieceG"] as const) {
    const figure = draft[field];
    if (figure !== undefined && !(isFigure(figure) && figure > 0)) tell(field, "above");
  }
  for (const field of ["unopened", "opened"] as const)
    for (const place of PLACES) {
      const days = draft[field][place];
      if (days !== undefined && !(Number.isSafeInteger(days) && days >= 0)) tell(field, "whole", place);
    }
  if (PLACES.every((place) => draft.unopened[place] === undefined)) tell("unopened", "keeping");
  const figures = { ...draft.figures, saltG: draft.saltG };
  for (const [name, figure] of Object.entries(figures))
    if (figure !== undefined && !isFigure(figure)) tell(name as Nutrient | "saltG", "number");
  if (Object.values(figures).every((figure) => figure === undefined)) tell("figures", "figures");
  return problems;
}

/** Refuse is below this; of what is all refuse nothing is eaten. */
export const MOST_REFUSE_PCT = 100;

/** In what the name of a food is shown. */
export interface Speech {
  readonly english: English;
  /** As BCP 47 names it. */
  readonly language: string;
}

/** The food of a sound draft, under an id; what its form does not show stays as it was before. */
export function toOwnFood(draft: FoodDraft, id: string, speech: Speech, before?: OwnFood): OwnFood {
  const name = draft.name.trim();
  const source = draft.source.trim();
  const given: Partial<Record<Nutrient, number>> = {};
  for (const [component, figure] of Object.entries(draft.figures))
    if (figure !== undefined) given[component as Nutrient] = figure;
  if (draft.saltG !== undefined) given.sodiumMg = (draft.saltG * MG_PER_G) / SALT_PER_SODIUM;
  const { composition, figureSources } = composeDerived(given, source);
  const { allergens, wheat } = draft;
  const eu = EU_ALLERGENS.filter((each) => allergens.includes(each) || (each === "gluten" && wheat));
  const us = US_ALLERGENS.filter((each) => (each === "wheat" ? wheat : eu.some((one) => US_OF[one] === each)));
  const { densityGPerMl: _density, energyFactors, pieces = [], ...kept } = before ?? {};
  return {
    ...kept,
    id,
    group: draft.group as OwnFood["group"],
    names: rename(name, speech, before),
    diet: draft.diet as OwnFood["diet"],
    vegetableOrFruit: draft.vegetableOrFruit,
    hygiene: draft.hygiene as OwnFood["hygiene"],
    allergens: { eu, us },
    refusePct: draft.refusePct ?? 0,
    ...(draft.densityGPerMl !== undefined && { densityGPerMl: draft.densityGPerMl }),
    pieces: changePiece(draft.pieceG, source, pieces),
    keeping: {
      unopened: daysOf(draft.unopened),
      opened: daysOf(draft.opened),
      authority: before?.keeping.authority ?? source,
    },
    source,
    figureSources,
    composition,
    ...(energyFactors && { energyFactors }),
  };
}

/** The name that is shown, and with it each first name that was the same before. */
function rename(name: string, { english, language }: Speech, before?: OwnFood): OwnFood["names"] {
  if (before === undefined) return { british: [name], american: [name] };
  const was = foodName(before, english, language);
  const first = (names: readonly string[]): string[] => (names[0] === was ? [name, ...names.slice(1)] : [...names]);
  const { british, american, german } = before.names;
  return { british: first(british), american: first(american), ...(german && { german: first(german) }) };
}

/** The size that is meant where none is named; further sizes stay. */
function changePiece(massG: number | undefined, source: string, pieces: OwnFood["pieces"]): OwnFood["pieces"] {
  const [first, ...others] = pieces;
  if (massG === undefined) return others;
  return first?.massG === massG ? pieces : [{ size: first?.size ?? "medium", massG, source }, ...others];
}

function daysOf(days: Days): Partial<Record<Place, number>> {
  return Object.fromEntries(Object.entries(days).filter(([, each]) => each !== undefined)) as Partial<
    Record<Place, number>
  >;
}

function isFigure(figure: number): boolean {
  return Number.isFinite(figure) && figure >= 0;
}

/** Salt as reckoned from a figure that was reckoned from salt. */
function round(figure: number): number {
  return Number(figure.toPrecision(6));
}

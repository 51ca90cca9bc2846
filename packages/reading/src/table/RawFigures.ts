import { type Composition, deriveComponents, NUTRIENT_NAMES, NUTRIENTS, type Nutrient } from "halfloaf/food";
import type { ComponentUnit } from "./convertComponent.ts";

/** A component of the food table as the official tables number it. */
interface Numbered {
  readonly number: string;
  readonly component: Nutrient;
  /** What it is, where the number is not the component's own; told as part of the figure's source. */
  readonly told?: string;
}

/**
 * Numbers that stand in where the component's own has no figure, in this order of preference.
 * **Source**: nutrient list of USDA FoodData Central (numbers from memory).
 */
const STAND_INS: readonly Numbered[] = [
  { number: "958", component: "energyKcal", told: "energy by specific Atwater factors" },
  { number: "957", component: "energyKcal", told: "energy by general Atwater factors" },
  { number: "269.3", component: "sugarsG", told: "sugars as defined for the US label" },
  { number: "293", component: "fibreG", told: "fibre by AOAC 2011.25" },
  { number: "298", component: "fatG", told: "fat as defined for the US label, from fatty acids" },
  { number: "619", component: "alaG", told: "18:3 undifferentiated" },
  { number: "314", component: "iodineUg" },
];

const OWN: readonly Numbered[] = NUTRIENT_NAMES.flatMap((component) => {
  const number = NUTRIENTS[component].sr;
  return number === null ? [] : [{ number, component }];
});

const NUMBERED = [...OWN, ...STAND_INS];

/** Two fatty acids that the food table counts together: 20:5 n-3 and 22:6 n-3, known only where both are. */
const EPA = "629";
const DHA = "621";

/** Every number that is read, with its unit and its place in `RawFigures`; other numbers have no component of ours. */
const PLACES: ReadonlyMap<string, { readonly place: number; readonly unit: ComponentUnit }> = new Map(
  [
    ...NUMBERED.map(({ number, component }) => [number, NUTRIENTS[component].unit] as const),
    [EPA, "g"] as const,
    [DHA, "g"] as const,
  ].map(([number, unit], place) => [number, { place, unit }]),
);

/** The unit that the figure of an official number is kept in; undefined for a number without a component of ours. */
export function unitOfNumber(number: string): ComponentUnit | undefined {
  return PLACES.get(number)?.unit;
}

/** The figures of one food by their official numbers, until all of them are read. */
export class RawFigures {
  private readonly figures: (number | undefined)[] = [];

  /** Keeps a figure in the unit of its number; false where the number already has another one. */
  add(number: string, figure: number): boolean {
    const { place } = PLACES.get(number) as { place: number };
    const before = this.figures[place];
    this.figures[place] ??= figure;
    return before === undefined || before === figure;
  }

  private get(number: string): number | undefined {
    return this.figures[(PLACES.get(number) as { place: number }).place];
  }

  /**
   * The composition these figures make, with what follows from them, and the source of each figure that is not plainly
   * the official one: a stand-in or a figure reckoned from others. `source` names the food in its table.
   */
  compose(source: string): { composition: Composition; figureSources: Record<string, string> } {
    const given: Partial<Record<Nutrient, number>> = {};
    const told: Record<string, string> = {};
    for (const { number, component, told: what } of NUMBERED) {
      const figure = this.get(number);
      if (figure === undefined || given[component] !== undefined) continue;
      given[component] = figure;
      if (what !== undefined) told[component] = `${source}: ${what}`;
    }
    const [epa, dha] = [this.get(EPA), this.get(DHA)];
    if (epa !== undefined && dha !== undefined) given.epaDhaG = epa + dha;
    return composeDerived(given, source, told);
  }
}

/** Adds what follows from a composition, each with how it was reckoned as its source. */
export function composeDerived(
  given: Composition,
  source: string,
  told: Readonly<Record<string, string>> = {},
): { composition: Composition; figureSources: Record<string, string> } {
  const { composition, derived } = deriveComponents(given);
  const reckoned = Object.entries(derived).map(([name, how]) => [name, `${source}: reckoned, ${how}`]);
  return { composition, figureSources: { ...told, ...Object.fromEntries(reckoned) } };
}

import { NUTRIENTS, type Nutrient } from "halfloaf/food";
import { useCatalogue } from "../sheets/useCatalogue.ts";
import { useWords } from "../words/WordsContext.tsx";

/** How components and their figures are written. */
export interface Figures {
  /** What a component is called: "protein". */
  readonly name: (component: Nutrient) => string;
  /** The same with its unit: "protein (g)". */
  readonly title: (component: Nutrient) => string;
  /** To four digits, so that two that differ never look alike: "8.25 mg". */
  readonly figure: (component: Nutrient, figure: number) => string;
}

/** Digits behind the sign of a figure of four digits that is as small as figures are printed. */
const MOST_DECIMALS = 5;

/** Components and figures in the language in use; whoever asks waits until their names are there. */
export function useFigures(): Figures {
  const { formats } = useWords();
  const { component: name } = useCatalogue().sheet.figures;
  return {
    name,
    title: (component) => `${upper(name(component))} (${unitOf(component)})`,
    figure: (component, figure) =>
      `${formats.number(Number(figure.toPrecision(4)), MOST_DECIMALS)} ${unitOf(component)}`,
  };
}

/** With a great letter, as it stands first in a line. */
export function upper(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}

function unitOf(component: Nutrient): string {
  const { unit } = NUTRIENTS[component];
  return unit === "ug" ? "µg" : unit;
}

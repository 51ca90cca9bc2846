import { useFurther } from "../words/useFurther.ts";
import { type FoodProblem, MOST_REFUSE_PCT } from "./FoodDraft.ts";
import { useFigures } from "./useFigures.ts";

/** Tells what an own food still lacks, by the name of its field. */
export function useProblemWords(): (problem: FoodProblem) => string {
  const { further, words, formats } = useFurther("foods");
  const { title } = useFigures();
  const { foodForm, foods } = further;
  const { problems } = foodForm;
  const named: Readonly<Record<string, string>> = {
    name: foodForm.name,
    source: foodForm.source,
    group: foodForm.group,
    diet: foodForm.diet,
    hygiene: foodForm.hygiene,
    refusePct: foodForm.refuse,
    densityGPerMl: foodForm.density,
    pieceG: foodForm.piece,
    saltG: foodForm.salt,
  };
  return ({ field, problem, place }) => {
    if (problem === "allergens" || problem === "keeping" || problem === "figures") return problems[problem];
    const when = field === "unopened" || field === "opened" ? foods[field] : undefined;
    const name =
      when !== undefined && place !== undefined
        ? foodForm.place(when, words.stores.places[place])
        : (named[field] ?? title(field as Parameters<typeof title>[0]));
    return problem === "most" ? problems.most(name, formats.number(MOST_REFUSE_PCT)) : problems[problem](name);
  };
}

import { type Composition, findContradictions } from "halfloaf/food";
import type { ReactNode } from "react";
import { useFurther } from "../words/useFurther.ts";
import { upper, useFigures } from "./useFigures.ts";

/** Figures that can't all be true; nothing where they can. */
export function Contradictions({ composition }: { readonly composition: Composition }): ReactNode {
  const { further } = useFurther("foods");
  const { name } = useFigures();
  const found = findContradictions(composition);
  if (found.length === 0) return null;
  const { foods } = further;
  return (
    <div className="caution">
      <p>{foods.contradict}</p>
      <ul>
        {found.map(({ code, components }) => {
          const [whole, ...parts] = components.map(name);
          const told = foods.contradictions[code](whole ?? "", parts.join(" + "));
          return <li key={told}>{upper(told)}</li>;
        })}
      </ul>
    </div>
  );
}

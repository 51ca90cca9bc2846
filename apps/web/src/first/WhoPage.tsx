import type { ReactNode } from "react";
import { EaterFields } from "../kitchen/EaterFields.tsx";
import { useFurther } from "../words/useFurther.ts";
import { type PageProps, usualEater, withEaters } from "./Answers.ts";

const MOST_EATERS = 6;

/** Who eats: how many, and what is asked of each. */
export function WhoPage({ answers, onChange }: PageProps): ReactNode {
  const { first } = useFurther("first").further;
  const { eaters } = answers;
  const setCount = (count: number): void => {
    const more = Array.from({ length: Math.max(0, count - eaters.length) }, (_, at) =>
      usualEater(eaters.length + at, first.person(eaters.length + at + 1)),
    );
    onChange(withEaters(answers, [...eaters.slice(0, count), ...more]));
  };
  return (
    <>
      <fieldset className="group">
        <legend>{first.howMany}</legend>
        <div className="row">
          {Array.from({ length: MOST_EATERS }, (_, at) => at + 1).map((count) => (
            <button
              key={count}
              type="button"
              className="button square"
              aria-pressed={count === eaters.length}
              onClick={() => setCount(count)}
            >
              {count}
            </button>
          ))}
        </div>
      </fieldset>
      <p className="small soft">{first.whoNote}</p>
      {eaters.map((eater, at) => (
        <details key={eater.id} className="fold sheet" open={eaters.length === 1}>
          <summary>
            <h2>{eater.name}</h2>
          </summary>
          <EaterFields
            eater={eater}
            onChange={(changed) => onChange({ ...answers, eaters: eaters.with(at, changed) })}
          />
        </details>
      ))}
    </>
  );
}

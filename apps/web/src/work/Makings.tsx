import type { ReactNode } from "react";
import { useFurther } from "../words/useFurther.ts";
import type { Measured, MeasuredSheet } from "./useMeasured.ts";

interface MakingsProps {
  readonly measured: MeasuredSheet;
  /** True once the cook began: the next step is what must be in sight then. */
  readonly isFolded: boolean;
}

/** What to measure out for each dish of a cooking. */
export function Makings({ measured: { sheet, makings }, isFolded }: MakingsProps): ReactNode {
  const { further } = useFurther("dishes");
  const lists = sheet.dishes.map(({ dish, title }, at) => (
    <section key={dish} className="stack tight">
      {sheet.dishes.length > 1 && <h3>{title}</h3>}
      <ul className="lines close">
        {(makings[at] ?? []).map((making) => (
          <li key={`${making.making} ${making.cut}`}>
            <TakenAmount taken={making} />
            {making.cut !== undefined && `, ${making.cut}`}
          </li>
        ))}
      </ul>
    </section>
  ));
  if (makings.every((each) => each.length === 0)) return null;
  if (isFolded)
    return (
      <details>
        <summary className="button">{further.dishes.makings}</summary>
        {lists}
      </details>
    );
  return (
    <section className="stack tight" aria-labelledby="to-measure">
      <h2 id="to-measure">{further.dishes.makings}</h2>
      {lists}
    </section>
  );
}

/** The amounts that a step is the first to take, in one line; nothing where it takes none. */
export function Taken({ taken }: { readonly taken: readonly Measured[] }): ReactNode {
  if (taken.length === 0) return null;
  return (
    <p className="taken">
      {taken.map((each, at) => (
        <span key={each.making}>
          {at > 0 && ", "}
          <TakenAmount taken={each} />
        </span>
      ))}
    </p>
  );
}

function TakenAmount({ taken: { amount, food } }: { readonly taken: Measured }): ReactNode {
  return (
    <>
      <b className="figure">{amount}</b> {food}
    </>
  );
}

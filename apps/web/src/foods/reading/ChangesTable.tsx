import type { FigureChange } from "@halfloaf/reading";
import type { ReactNode } from "react";
import { useFurther } from "../../words/useFurther.ts";
import { upper, useFigures } from "../useFigures.ts";

interface ChangesTableProps {
  readonly changes: readonly FigureChange[];
  /** The source of the food as a whole; a figure with another one names it. */
  readonly from: string;
}

/** Each figure that is new, other or forgotten, beside what it was. */
export function ChangesTable({ changes, from }: ChangesTableProps): ReactNode {
  const { further } = useFurther("foods");
  const figures = useFigures();
  const shown = changes.filter(({ kind }) => kind !== "same" && kind !== "kept");
  const { foodRead: words, foods } = further;
  const tell = (component: FigureChange["component"], sourced: FigureChange["now"]): string =>
    sourced === undefined ? further.unknown : figures.figure(component, sourced.figure);
  return (
    <table className="table flows">
      <thead>
        <tr>
          <th scope="col">{foods.per100}</th>
          <th scope="col" className="figure">
            {words.now}
          </th>
          <th scope="col" className="figure">
            {words.taken}
          </th>
        </tr>
      </thead>
      <tbody>
        {shown.map(({ component, now, taken }) => (
          <tr key={component}>
            <th scope="row">{upper(figures.name(component))}</th>
            <td className="figure">{tell(component, now)}</td>
            <td className="figure">
              {tell(component, taken)}
              {taken !== undefined && isReckoned(taken.source, from) && (
                <div className="small soft">{words.reckoned}</div>
              )}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** True where a figure follows from others, by the words that its source ends with. */
function isReckoned(source: string, from: string): boolean {
  return source !== from && /reckoned/.test(source);
}

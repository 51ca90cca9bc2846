import type { Issue } from "halfloaf/quantity";
import type { ReactNode } from "react";
import { useFurther } from "../words/useFurther.ts";

interface ReadFaultsProps {
  readonly issues: readonly Issue[];
  readonly issueCount: number;
  readonly columns: readonly string[];
  /** Texts by the code of what is wrong, beside those that every file in CSV has. */
  readonly faultWords: Readonly<Record<string, string>>;
  /** Lines of which something was read all the same; a row that is not among them is said to be left out. */
  readonly readLines?: ReadonlySet<number>;
}

const SHOWN = 100;

/** All that is wrong in a file, by line and column, and whether the row is left out for it. */
export function ReadFaults({ issues, issueCount, columns, faultWords, readLines }: ReadFaultsProps): ReactNode {
  const { further } = useFurther("mapping");
  if (issueCount === 0) return null;
  const { mapping: words } = further;
  const told: Readonly<Record<string, string>> = { ...words.faultWords, ...faultWords };
  const shown = issues.slice(0, SHOWN);
  return (
    <details className="fold sheet" open={issueCount <= 5}>
      <summary>
        <h2>{words.faults(issueCount)}</h2>
      </summary>
      <ul className="lines close fold-body">
        {shown.map(({ code, path, received }) => {
          const [, line, column] = path;
          const name = columns.find((each) => each === column) ?? "";
          const isRow = typeof line === "number";
          return (
            <li key={JSON.stringify([code, ...path])}>
              {isRow && <b>{words.faultAt(line, name)}: </b>}
              {received !== '""' && received !== "" && <i>{received} </i>}
              {told[code] ?? code}.{isRow && readLines?.has(line) === false && ` ${words.rowLeftOut}`}
            </li>
          );
        })}
        {issueCount > shown.length && <li>{words.moreFaults(issueCount - shown.length)}</li>}
      </ul>
    </details>
  );
}

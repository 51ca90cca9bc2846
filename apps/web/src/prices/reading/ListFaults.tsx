import type { ReactNode } from "react";
import { useFurther } from "../../words/useFurther.ts";
import type { ListReading } from "./useListReading.ts";

interface ListFaultsProps {
  readonly reading: Extract<ListReading, { kind: "read" }>;
  readonly columns: readonly string[];
}

const SHOWN = 100;

/** All that is wrong in a list, by line and column, and whether the row is left out for it. */
export function ListFaults({ reading, columns }: ListFaultsProps): ReactNode {
  const { further } = useFurther("readPrices");
  const { issues, issueCount, rows } = reading;
  if (issueCount === 0) return null;
  const { list: words } = further;
  const there = new Set(rows.map(({ line }) => line));
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
              {words.faultWords[code] ?? code}.{isRow && !there.has(line) && ` ${words.rowLeftOut}`}
            </li>
          );
        })}
        {issueCount > shown.length && <li>{words.moreFaults(issueCount - shown.length)}</li>}
      </ul>
    </details>
  );
}

import type { ReactNode } from "react";
import { ReadFaults } from "../../mapping/ReadFaults.tsx";
import { ReadingProgress } from "../../mapping/ReadingProgress.tsx";
import { useFurther } from "../../words/useFurther.ts";
import { ChooseFigures } from "./ChooseFigures.tsx";
import type { TableSource } from "./TableDesk.ts";
import { useTable } from "./useTable.ts";

interface TableReadingProps {
  readonly source: TableSource;
  /** The columns by their names, where a mapping names them. */
  readonly columns?: readonly string[];
}

/** Reads a composition table and offers its figures, food by food; nothing is taken before somebody says so. */
export function TableReading({ source, columns = [] }: TableReadingProps): ReactNode {
  const { further } = useFurther("foods", "mapping");
  const { state, stop } = useTable(source);
  const { foodRead: words } = further;
  if (state.kind === "none") return null;
  if (state.kind === "reading") return <ReadingProgress rows={state.rows} share={state.share} onStop={stop} />;
  if (state.kind === "stopped")
    return (
      <p className="caution" role="status">
        {words.stopped}
      </p>
    );
  const { read } = state;
  return (
    <>
      <div role="status">
        {state.kind === "failed" ? (
          <p className="caution">{words.failed}</p>
        ) : (
          <p>
            {words.read(state.read.counts.foods, state.read.counts.figures)}{" "}
            {state.read.counts.otherComponents + state.read.counts.otherRows > 0 &&
              words.passed(state.read.counts.otherComponents, state.read.counts.otherRows)}
          </p>
        )}
      </div>
      {read !== undefined && (
        <ReadFaults issues={read.issues} issueCount={read.issueCount} columns={columns} faultWords={words.faultWords} />
      )}
      {state.kind === "read" && <ChooseFigures read={state.read} desk={state.desk} />}
    </>
  );
}

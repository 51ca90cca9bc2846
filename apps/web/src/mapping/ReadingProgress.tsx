import type { ReactNode } from "react";
import { useFurther } from "../words/useFurther.ts";

interface ReadingProgressProps {
  /** Rows or foods read so far. */
  readonly rows: number;
  /** From 0 to 1; absent where the size is not known. */
  readonly share?: number | undefined;
  readonly onStop: () => void;
}

/** How far the reading of a file has come, and what stops it. */
export function ReadingProgress({ rows, share, onStop }: ReadingProgressProps): ReactNode {
  const { further } = useFurther("mapping");
  return (
    <div className="stack tight">
      <p role="status">
        {further.source.busy} {further.mapping.progress(rows)}.
      </p>
      <progress value={share} aria-label={further.source.busy} />
      <div>
        <button type="button" className="button" onClick={onStop}>
          {further.source.stop}
        </button>
      </div>
    </div>
  );
}

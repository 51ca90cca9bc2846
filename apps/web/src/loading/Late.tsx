import type { ReactNode } from "react";
import { useWords } from "../words/WordsContext.tsx";
import { type Lateness, lateLoads } from "./lateLoads.ts";

/** That something is late, and how it is had sooner. */
export function Late({ lateness }: { readonly lateness: Exclude<Lateness, "none"> }): ReactNode {
  const { late, gone, loadAgain, tryAgain } = useWords().words.shell;
  return (
    <div className="late stack tight" role="status">
      <p>{lateness === "gone" ? gone : late}</p>
      <div className="row">
        <button type="button" className="button" onClick={lateLoads.tryAgain}>
          {tryAgain}
        </button>
        {lateness === "gone" && (
          <button type="button" className="button" onClick={() => location.reload()}>
            {loadAgain}
          </button>
        )}
      </div>
    </div>
  );
}

import { type ReactNode, useContext, useSyncExternalStore } from "react";
import { DrawnAhead } from "../shown/DrawnAhead.ts";
import { useWords } from "../words/WordsContext.tsx";
import { newerApp } from "./newerApp.ts";

/** Says that a newer app is there and lets it be loaded; nothing while there is none. */
export function LoadNewer(): ReactNode {
  const { words } = useWords();
  const isDrawnAhead = useContext(DrawnAhead);
  const isThere = useSyncExternalStore(newerApp.subscribe, () => newerApp.isThere) && !isDrawnAhead;
  return (
    <div role="status" className={isThere ? "newer row spread" : "unseen"}>
      {isThere && (
        <>
          <span>{words.shell.newer}</span>
          <button type="button" className="button" onClick={() => newerApp.load()}>
            {words.shell.loadNewer}
          </button>
        </>
      )}
    </div>
  );
}

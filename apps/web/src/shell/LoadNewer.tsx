import { type ReactNode, useContext, useSyncExternalStore } from "react";
import { useOpening } from "../kitchen/KitchenProvider.tsx";
import { DrawnAhead } from "../shown/DrawnAhead.ts";
import { useWords } from "../words/WordsContext.tsx";
import { newerApp } from "./newerApp.ts";

/** Says that a newer app is there and lets it be loaded; nothing while there is none. */
export function LoadNewer(): ReactNode {
  const { words } = useWords();
  const opening = useOpening();
  const isDrawnAhead = useContext(DrawnAhead);
  const isThere = useSyncExternalStore(newerApp.subscribe, () => newerApp.isThere) && !isDrawnAhead;
  // What was told a moment ago is on disk first, or else the browser asks whether to leave.
  const load = async (): Promise<void> => {
    if (opening.kind === "open") await opening.session.retry();
    newerApp.load();
  };
  return (
    <div role="status" className={isThere ? "newer row spread" : "unseen"}>
      {isThere && (
        <>
          <span>{words.shell.newer}</span>
          <button type="button" className="button" onClick={() => void load()}>
            {words.shell.loadNewer}
          </button>
        </>
      )}
    </div>
  );
}

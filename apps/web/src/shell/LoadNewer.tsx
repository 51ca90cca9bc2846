import { type ReactNode, useSyncExternalStore } from "react";
import { useWords } from "../words/WordsContext.tsx";
import { newerApp } from "./newerApp.ts";

/** Says that a newer app is there and lets it be loaded; nothing while there is none. */
export function LoadNewer(): ReactNode {
  const { words } = useWords();
  const isThere = useSyncExternalStore(newerApp.subscribe, () => newerApp.isThere);
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

import type { ReactNode } from "react";
import { useWords } from "../words/WordsContext.tsx";
import { useKitchen } from "./KitchenProvider.tsx";

/** Says that a change is not on disk, and lets it be tried again; nothing while all are. */
export function NotKept(): ReactNode {
  const { words } = useWords();
  const { session } = useKitchen();
  if (session.refused === undefined) return null;
  return (
    <div className="sheet stack tight" role="alert">
      <h2>{words.opening.notKept}</h2>
      <p>{session.refused.reason === "full" ? words.opening.full : session.refused.detail}</p>
      <button type="button" className="button" onClick={() => void session.retry()}>
        {words.opening.tryAgain}
      </button>
    </div>
  );
}

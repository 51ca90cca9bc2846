import type { ReactNode } from "react";
import { useWords } from "../words/WordsContext.tsx";
import { useKitchen } from "./KitchenProvider.tsx";

/** Says that part of the kitchen was damaged on this device and was mended, until that is read; nothing else. */
export function WasMended(): ReactNode {
  const { words } = useWords();
  const { session } = useKitchen();
  if (session.mended === undefined) return null;
  return (
    <div className="sheet stack tight" role="alert">
      <h2>{words.opening.mended}</h2>
      <p>{words.opening.mendedRemedy(session.mended.damaged)}</p>
      <button type="button" className="button" onClick={() => session.readMended()}>
        {words.opening.mendedRead}
      </button>
    </div>
  );
}

import type { ReactNode } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useMayWrite } from "../sharing/useMayWrite.ts";
import { useWords } from "../words/WordsContext.tsx";

/** Takes back what this device did last, and does it again. */
export function Undo(): ReactNode {
  const { words } = useWords();
  const { session } = useKitchen();
  const mayUndo = useMayWrite("withdrawn");
  const { undo, redo } = session.undoable();
  if (!mayUndo) return null;
  return (
    <div className="row">
      <button type="button" className="button" disabled={undo === undefined} onClick={() => void session.undo()}>
        {words.today.undo}
      </button>
      {redo !== undefined && (
        <button type="button" className="button" onClick={() => void session.redo()}>
          {words.today.redo}
        </button>
      )}
    </div>
  );
}

import { checkKitchen, type Kitchen, withOwnFoodsAndDishes } from "halfloaf/kitchen";
import { EditedKitchen } from "halfloaf/kitchen/record";
import { type Issue, parseWith } from "halfloaf/quantity";
import { useState } from "react";
import { useKitchen } from "./KitchenProvider.tsx";

/** Saves a change of the kitchen where it leaves a sound one; else `issues` has all that it would break. */
export function useSaving(): {
  readonly issues: readonly Issue[];
  readonly isSaved: boolean;
  /** Gives whether it was saved. The change may hold values that no kitchen has; they are checked here. */
  readonly save: (change: (kitchen: EditedKitchen) => unknown) => boolean;
} {
  const { session, view } = useKitchen();
  const [issues, setIssues] = useState<readonly Issue[]>([]);
  const [isSaved, setSaved] = useState(false);
  const save = (change: (kitchen: EditedKitchen) => unknown): boolean => {
    const read = parseWith(EditedKitchen, change(view.edited));
    const found = read.ok ? findNew(view.edited, read.value) : read.issues;
    setIssues(found);
    const isAllowed = session.mayWrite({ kind: "edited" });
    setSaved(found.length === 0 && isAllowed);
    if (found.length > 0 || !read.ok) return false;
    void session.edit(() => read.value);
    return isAllowed;
  };
  return { issues, isSaved, save };

  /** What is wrong after the change and was not before: an old fault elsewhere keeps nobody from saving. */
  function findNew(before: EditedKitchen, after: EditedKitchen): Issue[] {
    const known = new Set(check(before).map(keyOf));
    return check(after).filter((issue) => !known.has(keyOf(issue)));
  }

  function check(edited: EditedKitchen): Issue[] {
    const kitchen: Kitchen = { ...edited, format: "halfloaf-kitchen", version: 1, stores: view.kitchen.stores };
    return checkKitchen(kitchen, withOwnFoodsAndDishes(view.tables, kitchen));
  }
}

/** Positions in lists move when something before them is taken out, so they don't count. */
function keyOf({ code, path, received }: Issue): string {
  return JSON.stringify([code, path.filter((key) => typeof key === "string"), received]);
}

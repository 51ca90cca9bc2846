import { type ReactElement, type ReactNode, useEffect, useState } from "react";
import { goingBack } from "../shell/goingBack.ts";
import { giveTurn } from "./rest.ts";

/** Lines of a finger's height, 48 px, that fill any window before it is scrolled: 18 in one column, twice as many in two. */
const IN_SIGHT = 36;

interface LongListProps {
  readonly className: string;
  /** The items of the list. */
  readonly children: readonly ReactElement[];
}

/** A list of any length that is in sight at once: what lies below the page's foot follows once that is painted, a window at a time. */
export function LongList({ className, children }: LongListProps): ReactNode {
  const [shown, setShown] = useState(goingBack.isUnderWay ? Number.POSITIVE_INFINITY : IN_SIGHT);
  const isWhole = shown >= children.length;
  useEffect(() => {
    if (isWhole) return undefined;
    let isWanted = true;
    void giveTurn().then(() => isWanted && setShown(shown + IN_SIGHT));
    return () => {
      isWanted = false;
    };
  }, [shown, isWhole]);
  return <ul className={className}>{isWhole ? children : children.slice(0, shown)}</ul>;
}

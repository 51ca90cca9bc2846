import { type ReactElement, type ReactNode, useEffect, useState } from "react";
import { goingBack } from "../shell/goingBack.ts";

/** Lines of a finger's height, 48 px, that fill any window before it is scrolled: 18 in one column, twice as many in two. */
const IN_SIGHT = 36;

interface LongListProps {
  readonly className: string;
  /** The items of the list. */
  readonly children: readonly ReactElement[];
}

/** A list of any length that is in sight at once: what lies below the page's foot follows as soon as that is painted. */
export function LongList({ className, children }: LongListProps): ReactNode {
  const [isWhole, setWhole] = useState(goingBack.isUnderWay);
  useEffect(() => setWhole(true), []);
  return <ul className={className}>{isWhole ? children : children.slice(0, IN_SIGHT)}</ul>;
}

import type { LaterPart } from "halfloaf/kitchen";
import type { ReactNode } from "react";
import { Link } from "wouter";
import { useFurther } from "../words/useFurther.ts";
import { useBehind } from "./useBehind.ts";

interface BehindNoteProps {
  /** What is edited here that a week under way does not follow. */
  readonly later?: LaterPart;
}

/** Said where the kitchen is edited, while the week of today goes by what it was before: how to let it follow, or from when on it counts. */
export function BehindNote({ later }: BehindNoteProps): ReactNode {
  const { behind } = useFurther("mended").further.mended;
  const since = useBehind();
  if (since === undefined) return null;
  return (
    <>
      {since.followed.length > 0 && (
        <p className="small soft">
          {behind.here} <Link href="/menu">{behind.way}</Link>
        </p>
      )}
      {later !== undefined && since.later.includes(later) && <p className="small soft">{behind.later[later]}</p>}
    </>
  );
}

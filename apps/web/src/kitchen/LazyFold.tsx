import type { ReactNode } from "react";
import { Unfolding } from "./Unfolding.tsx";

interface LazyFoldProps {
  readonly title: string;
  /** What is in it in a few words. */
  readonly brief: string;
  /** A class of its own. */
  readonly className?: string;
  readonly children: ReactNode;
}

/** A part of a page whose content is loaded once it is opened, without the rest of the page waiting for it. */
export function LazyFold({ title, brief, className = "", children }: LazyFoldProps): ReactNode {
  return (
    <Unfolding
      className={`fold sheet ${className}`}
      summary={
        <>
          <h2>{title}</h2>
          <span className="small soft">{brief}</span>
        </>
      }
    >
      <div className="stack fold-body">{children}</div>
    </Unfolding>
  );
}

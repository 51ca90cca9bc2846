import type { ReactNode } from "react";

interface FoldProps {
  readonly title: string;
  /** What is in it in a few words, seen while it is closed. */
  readonly brief?: string;
  readonly children: ReactNode;
}

/** A part of a page that is opened when it is wanted. */
export function Fold({ title, brief, children }: FoldProps): ReactNode {
  return (
    <details className="fold sheet">
      <summary>
        <h2>{title}</h2>
        {brief !== undefined && <span className="small soft">{brief}</span>}
      </summary>
      <div className="stack fold-body">{children}</div>
    </details>
  );
}

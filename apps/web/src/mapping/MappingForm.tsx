import type { ReactNode } from "react";
import { useFurther } from "../words/useFurther.ts";

interface MappingFormProps {
  /** False while something is missing without which nothing can be read: then it stands open. */
  readonly isWhole: boolean;
  readonly children: ReactNode;
}

/** How a file is written, as it was guessed, folded away while that is enough. */
export function MappingForm({ isWhole, children }: MappingFormProps): ReactNode {
  const { further } = useFurther("mapping");
  return (
    <details className="fold sheet" open={!isWhole}>
      <summary>
        <h2>{further.mapping.form}</h2>
        <span className="small soft">{further.mapping.formGuessed}</span>
      </summary>
      <div className="stack fold-body">{children}</div>
    </details>
  );
}

import { type ReactNode, useState } from "react";
import { Awaited } from "../loading/Awaited.tsx";

interface UnfoldingProps {
  readonly className?: string;
  readonly summaryClassName?: string;
  /** What is seen while it is closed. */
  readonly summary: ReactNode;
  readonly children: ReactNode;
}

/** Something to be opened whose content is made only then, and may have to be loaded: a long list of them is shown at once. */
export function Unfolding({ className, summaryClassName, summary, children }: UnfoldingProps): ReactNode {
  const [wasOpened, setOpened] = useState(false);
  return (
    <details className={className} onToggle={() => setOpened(true)}>
      <summary className={summaryClassName}>{summary}</summary>
      {wasOpened && <Awaited>{children}</Awaited>}
    </details>
  );
}

import type { ReactNode } from "react";
import { useWords } from "../words/WordsContext.tsx";
import type { Planning } from "./Planning.ts";

/** How far planning has come: the money of the best so far, and how much cheaper another could be at most. */
export function PlanningLine({
  planning,
  currency,
}: {
  readonly planning: Planning;
  readonly currency: string;
}): ReactNode {
  const { words, formats } = useWords();
  if (planning.kind === "idle" || planning.kind === "none") return null;
  return (
    <div className="stack tight" role="status">
      {planning.kind === "searching" && <progress max={1} value={planning.share} aria-label={words.menu.progress} />}
      <p>{tell(planning)}</p>
    </div>
  );

  function tell(now: Exclude<Planning, { kind: "idle" | "none" }>): string {
    if (now.kind === "stating") return words.menu.stating;
    if (now.kind === "failed") return words.menu.failed(now.reason);
    const gap = now.gapMinor === undefined ? "" : words.menu.gap(formats.money(Math.ceil(now.gapMinor), currency));
    if (now.kind === "planned") return `${words.menu.planned} ${gap}`;
    const till = now.week?.accounts.tillMinor;
    return `${till === undefined ? words.menu.searching : words.menu.best(formats.money(till, currency))} ${gap}`;
  }
}

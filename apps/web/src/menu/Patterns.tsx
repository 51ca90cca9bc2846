import { FOOD_KINDS } from "halfloaf/sheet";
import { type ReactNode, useId } from "react";
import { useWords } from "../words/WordsContext.tsx";

const MARKS: Record<(typeof FOOD_KINDS)[number], ReactNode> = {
  dry: <circle cx="3" cy="3" r="1.4" />,
  fresh: <path d="M0 6L6 0" />,
  dairy: <path d="M0 3h6" />,
  protein: <path d="M3 0v6M0 3h6" />,
  fat: <path d="M0 3q1.5 -3 3 0t3 0" fill="none" />,
  other: null,
};

/** One pattern for each kind of food, told apart without colour. */
export function Patterns({ id }: { readonly id: string }): ReactNode {
  return (
    <defs>
      {FOOD_KINDS.map((kind) => (
        <pattern key={kind} id={`${id}${kind}`} width="6" height="6" patternUnits="userSpaceOnUse">
          <g className={`pattern ${kind}`}>{MARKS[kind]}</g>
        </pattern>
      ))}
    </defs>
  );
}

/** What each pattern means. */
export function PatternKey(): ReactNode {
  const { words } = useWords();
  const id = useId();
  return (
    <ul className="pattern-key">
      {FOOD_KINDS.map((kind) => (
        <li key={kind}>
          <svg width="32" height="14" aria-hidden="true">
            {kind === FOOD_KINDS[0] && <Patterns id={id} />}
            <rect className="ribbon-ground" width="32" height="14" />
            <rect width="32" height="14" fill={`url(#${id}${kind})`} />
          </svg>
          {words.menu.kinds[kind]}
        </li>
      ))}
    </ul>
  );
}

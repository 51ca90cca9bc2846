import type { Issue } from "halfloaf/quantity";
import type { ReactNode } from "react";
import { useFurther } from "../words/useFurther.ts";
import { tellIssue } from "./tellIssue.ts";

interface IssuesProps {
  readonly issues: readonly Issue[];
  readonly isSaved?: boolean;
  /** Says an issue better than in general; undefined where it does not know it. */
  readonly tell?: (issue: Issue) => string | undefined;
}

/** All that keeps a form from being saved, or that it was. */
export function Issues({ issues, isSaved = false, tell }: IssuesProps): ReactNode {
  const { further, formats } = useFurther("kitchen");
  const told = [...new Set(issues.map((issue) => tell?.(issue) ?? tellIssue(issue, further, formats)))];
  return (
    <div role="status">
      {told.length > 0 && (
        <div className="issues">
          <p>{further.issues.title}</p>
          <ul>
            {told.map((each) => (
              <li key={each}>{each}</li>
            ))}
          </ul>
        </div>
      )}
      {isSaved && <p>{further.saved}</p>}
    </div>
  );
}

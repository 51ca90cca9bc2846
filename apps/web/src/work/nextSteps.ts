import type { StepLine } from "halfloaf/kitchen";

/** The next thing for one cook. */
export interface NextOfCook {
  readonly cook: number;
  readonly line: StepLine;
}

/**
 * The next step of each cook among those that are open and not going on by themselves. What needs nobody's hands is begun by
 * the first cook; what two do together is told once.
 */
export function nextSteps(open: readonly StepLine[], cooks: number): NextOfCook[] {
  const [first] = open;
  if (cooks === 1) return first === undefined ? [] : [{ cook: 1, line: first }];
  const next: NextOfCook[] = [];
  for (let cook = 1; cook <= cooks; cook++) {
    const isOwn = ({ cooks: whose }: StepLine): boolean => (whose.length === 0 ? cook === 1 : whose.includes(cook));
    const line = open.find(isOwn);
    if (line !== undefined && next.every((each) => each.line !== line)) next.push({ cook, line });
  }
  return next;
}

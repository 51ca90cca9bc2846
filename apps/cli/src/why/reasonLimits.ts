import { type FoundPlan, limitCosts, restLimitCosts } from "halfloaf/menu";
import { addDays } from "halfloaf/quantity";
import { LIMIT_KEYS, tellLoosened } from "../words/limitWords.ts";
import type { WhyReport } from "./WhyReport.ts";
import { REASON_SEARCH, refer, tellAmount, type WhyTask } from "./WhyTask.ts";

type LimitReasons = NonNullable<WhyReport["limits"]>;

/** What loosening each limit that binds would save, dearest first, of what is left where days are over; `known` are plans met for other reasons. */
export function reasonLimits(task: WhyTask, known: readonly FoundPlan[]): LimitReasons {
  const limits =
    task.rest === undefined
      ? limitCosts(task.stated.problem, task.plan, { ...REASON_SEARCH, known }).limits
      : restLimitCosts(task.rest, REASON_SEARCH);
  if (limits === undefined) throw new Error("the rest of a week was asked about that does not keep its limits");
  return limits.map(({ reading, step, savesMinor }) => {
    const { limit, allowed, reached } = reading;
    const loosened = limit.kind === "uses" ? "one more use of every dish" : tellLoosened(limit, step, task);
    // What is saved is told rounded down: at least so much.
    const saves = Math.floor(savesMinor);
    const sentence =
      saves > 0
        ? `${loosened} saves at least ${tellAmount(task, saves)} ("${LIMIT_KEYS[limit.kind]}").`
        : `${loosened}: no saving was found ("${LIMIT_KEYS[limit.kind]}").`;
    const place = {
      ...(limit.kind === "hands-on" && { date: addDays(task.stated.from, limit.day) }),
      ...(limit.kind === "elapsed" && { sitting: refer(task, limit.sitting) }),
    };
    return { kind: limit.kind, ...place, allowed, reached, step, savesMinor: saves, sentence: capital(sentence) };
  });
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

import { Allowances } from "../Allowance.ts";
import type { Rate } from "../limits.ts";
import type { Journal } from "./Journal.ts";

/** Lines of refusals that one address may cause. */
const USUAL_RATE: Rate = { burst: 200, perSecond: 1 };

/**
 * A journal in which no address fills the disk: of warnings it may cause so many, what is beyond them is not written down and
 * told by `onLeftOut`. What is no warning, and what names no address, is always written.
 */
export function throttleJournal(
  journal: Journal,
  { now, onLeftOut, rate = USUAL_RATE }: { now: () => number; onLeftOut: () => void; rate?: Rate },
): Journal {
  const allowances = new Allowances(rate);
  return {
    info: (facts, event) => journal.info(facts, event),
    warn: (facts, event) => {
      if (typeof facts.address !== "string" || allowances.take(facts.address, now())) journal.warn(facts, event);
      else onLeftOut();
    },
    error: (facts, event) => journal.error(facts, event),
  };
}

import { roleOf } from "./describe.ts";
import { REMARKS_AFTER_OR } from "./lineWords.ts";
import { type NamedChoice, readChoices } from "./readChoices.ts";
import type { Token } from "./tokenise.ts";

// A longer clause is a remark, even with an "or" in it.
const MOST_LIST_TOKENS = 6;

/**
 * The foods of a clause that offers others in place of the one named: "or margarine", "or 1/2 tsp dried", "spelt or
 * barley". Undefined where it offers none.
 */
export function findAlternatives(clause: readonly Token[]): NamedChoice[] | undefined {
  const [first, second] = [clause[0]?.lower, clause[1]?.lower ?? ""];
  if (first === "or" || (first === "and" && second === "/")) {
    const rest = clause.slice(first === "or" ? 1 : 3);
    if (rest.length === 0 || rest.slice(0, 2).some(({ lower }) => REMARKS_AFTER_OR.has(lower))) return undefined;
    return keepNamed(readChoices(rest, "each"));
  }
  const listed = clause.length <= MOST_LIST_TOKENS && clause.some(({ lower }, at) => lower === "or" && at > 0);
  const plain = listed && clause.every((_, at) => roleOf(clause, at) === "name");
  if (!plain) return undefined;
  const named = keepNamed(readChoices(clause));
  return named !== undefined && named.length > 1 && named.every(({ read }) => read.tail.length === 0)
    ? named
    : undefined;
}

function keepNamed(named: readonly NamedChoice[]): NamedChoice[] | undefined {
  const kept = named.filter(({ amount, read }) => amount !== undefined || read.name.length + read.states.length > 0);
  return kept.length > 0 ? kept : undefined;
}

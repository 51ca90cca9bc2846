import type { Issue } from "../quantity/issue.ts";
import { type KeepingRule, type KeepingRuleName, type KeepingRules, pickRule } from "./keeping.ts";

/** Two points of a cooling curve, in minutes from its start; a point not measured is absent. */
export interface CoolingPoints {
  /** From 57 C down to 21 C; of no matter for food that starts at room temperature. */
  readonly toMiddleMinutes?: number | undefined;
  /** From the start down to 5 C. */
  readonly toEndMinutes?: number | undefined;
}

/** A bound that a curve passed. */
export interface CoolingBound {
  readonly rule: KeepingRule;
  readonly minutes: number;
}

/**
 * Quick enough; too slow, with each bound passed; not known, with the bounds that no point was measured for; or points
 * that cannot be of one curve.
 */
export type CoolingVerdict =
  | { readonly kind: "within" }
  | { readonly kind: "too-slow"; readonly passed: readonly CoolingBound[] }
  | { readonly kind: "unknown"; readonly notMeasured: readonly KeepingRule[] }
  | { readonly kind: "faulty"; readonly issues: readonly Issue[] };

/**
 * Judges how quickly food was cooled: hot food from 57 to 21 C within 2 h and to 5 C within 6 h in all; food made at
 * room temperature to 5 C within 4 h. A bound itself is still kept. Too slow at one bound is too slow.
 * **Source**: FDA Food Code 3-501.14; the minutes come from the rules.
 */
export function judgeCooling(
  points: CoolingPoints,
  rules: KeepingRules,
  start: "hot" | "room" = "hot",
): CoolingVerdict {
  const issues = findFaults(points);
  if (issues.length > 0) return { kind: "faulty", issues };
  const names: [KeepingRuleName, number | undefined][] =
    start === "hot"
      ? [
          ["cooling-first-minutes", points.toMiddleMinutes],
          ["cooling-total-minutes", points.toEndMinutes],
        ]
      : [["cooling-from-room-minutes", points.toEndMinutes]];
  const bounds = names.map(([name, minutes]) => ({ rule: pickRule(rules, name, "strictest"), minutes }));
  const passed = bounds.flatMap(({ rule, minutes }) =>
    minutes !== undefined && minutes > rule.value ? [{ rule, minutes }] : [],
  );
  if (passed.length > 0) return { kind: "too-slow", passed };
  const notMeasured = bounds.filter(({ minutes }) => minutes === undefined).map(({ rule }) => rule);
  return notMeasured.length > 0 ? { kind: "unknown", notMeasured } : { kind: "within" };
}

function findFaults({ toMiddleMinutes, toEndMinutes }: CoolingPoints): Issue[] {
  const times = { toMiddleMinutes, toEndMinutes };
  const issues = Object.entries(times).flatMap(([name, minutes]): Issue[] =>
    minutes === undefined || minutes >= 0
      ? []
      : [{ code: "minutes", path: [name], expected: "0 minutes or more", received: String(minutes) }],
  );
  if (issues.length === 0 && toMiddleMinutes !== undefined && toEndMinutes !== undefined) {
    if (toEndMinutes < toMiddleMinutes) {
      const [expected, received] = [`${toMiddleMinutes} minutes or more`, String(toEndMinutes)];
      issues.push({ code: "order", path: ["toEndMinutes"], expected, received });
    }
  }
  return issues;
}

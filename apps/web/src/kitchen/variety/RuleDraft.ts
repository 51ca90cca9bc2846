import type { VarietyRule } from "halfloaf/kitchen";

/** A rule of variety while its form is filled in; no sittings = each there is. */
export interface RuleDraft {
  readonly by: VarietyRule["by"];
  readonly at: NonNullable<VarietyRule["at"]>;
  readonly mostPerWeek: number | undefined;
  readonly daysApart: number | undefined;
}

/** A rule as its form begins: the same way of cooking not on two days running. */
export const FRESH_RULE: RuleDraft = { by: "manner", at: [], mostPerWeek: undefined, daysApart: 2 };

/** A rule as its form begins with it. */
export function toRuleDraft({ by, at = [], mostPerWeek, daysApart }: VarietyRule): RuleDraft {
  return { by, at, mostPerWeek, daysApart };
}

/** The rule of a form; it may still be none, which the schema of a kitchen says. */
export function fromRuleDraft({ by, at, mostPerWeek, daysApart }: RuleDraft): unknown {
  return {
    by,
    ...(at.length > 0 && { at }),
    ...(mostPerWeek !== undefined && { mostPerWeek }),
    ...(daysApart !== undefined && { daysApart }),
  };
}

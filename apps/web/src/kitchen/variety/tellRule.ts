import type { SittingKind, VarietyRule } from "halfloaf/kitchen";
import type { Issue } from "halfloaf/quantity";
import type { Further } from "../../words/further/Further.ts";

/** What plates have in common, and how often they may, how far apart, at which sittings. */
export function tellRule(
  { by, at, mostPerWeek, daysApart }: VarietyRule,
  { kitchen }: Further<"kitchen">,
  sittings: Readonly<Record<SittingKind, string>>,
): { readonly what: string; readonly when: string } {
  const when = [
    ...(mostPerWeek === undefined ? [] : [kitchen.ruleMost(mostPerWeek)]),
    ...(daysApart === undefined ? [] : [kitchen.ruleApart(daysApart)]),
    ...(at === undefined ? [] : [at.map((kind) => sittings[kind]).join(", ")]),
  ];
  return { what: kitchen.same[by], when: when.join("; ") };
}

/** What keeps a rule from being saved, in words; undefined where it is about something else. */
export function tellRuleIssue({ path }: Issue, { kitchen }: Further<"kitchen">): string | undefined {
  const [list, part, , key] = path;
  if (list !== "limits" || part !== "variety") return undefined;
  if (key === "mostPerWeek") return kitchen.ruleIssues.most;
  return key === "daysApart" ? kitchen.ruleIssues.apart : kitchen.ruleIssues.nothing;
}

import { VarietyRule } from "halfloaf/kitchen";
import { parseWith } from "halfloaf/quantity";
import { expect, test } from "vitest";
import { furtherEn } from "../../words/further/en.ts";
import { FRESH_RULE, fromRuleDraft, type RuleDraft, toRuleDraft } from "./RuleDraft.ts";
import { tellRuleIssue } from "./tellRule.ts";

const { nothing, most, apart } = furtherEn.kitchen.ruleIssues;

/** All that is told of a rule which is the second of its kitchen. */
function tell(draft: RuleDraft): (string | undefined)[] {
  const read = parseWith(VarietyRule, fromRuleDraft(draft));
  if (read.ok) return [];
  return read.issues.map((issue) =>
    tellRuleIssue({ ...issue, path: ["limits", "variety", 1, ...issue.path] }, furtherEn),
  );
}

test("what a rule lacks is told by what is to be said in its form", () => {
  expect(tell({ ...FRESH_RULE, daysApart: undefined })).toEqual([nothing]);
  expect(tell({ ...FRESH_RULE, mostPerWeek: 0 })).toEqual([most]);
  expect(tell({ ...FRESH_RULE, daysApart: 1 })).toEqual([apart]);
  expect(tell(FRESH_RULE)).toEqual([]);
});

test("a rule that was opened and saved as it was stays as it was", () => {
  const rules: VarietyRule[] = [
    { by: "main", mostPerWeek: 2, at: ["midday", "evening"] },
    { by: "dish", daysApart: 7 },
  ];
  for (const rule of rules) expect(fromRuleDraft(toRuleDraft(rule))).toEqual(rule);
});

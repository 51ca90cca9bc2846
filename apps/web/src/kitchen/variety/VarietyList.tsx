import { SITTING_KINDS } from "halfloaf/dish";
import type { VarietyRule } from "halfloaf/kitchen";
import type { ReactNode } from "react";
import { BehindNote } from "../../thinking/BehindNote.tsx";
import { useFurther } from "../../words/useFurther.ts";
import { EditedList } from "../EditedList.tsx";
import { ChoiceField } from "../fields/ChoiceField.tsx";
import { NumberField } from "../fields/NumberField.tsx";
import { TicksField } from "../fields/TicksField.tsx";
import { useKitchen } from "../KitchenProvider.tsx";
import { FRESH_RULE, fromRuleDraft, type RuleDraft, toRuleDraft } from "./RuleDraft.ts";
import { tellRule, tellRuleIssue } from "./tellRule.ts";

/** How much alike the plates of a week may be: seen, changed, taken away. */
export default function VarietyList(): ReactNode {
  const { further, words } = useFurther("kitchen");
  const { view } = useKitchen();
  const { kitchen } = further;
  return (
    <>
      <EditedList
        items={view.edited.limits.variety}
        put={(edited, variety) => ({ ...edited, limits: { ...edited.limits, variety } })}
        tell={(rule) => tellRule(rule, further, words.sittings)}
        tellIssue={(issue) => tellRuleIssue(issue, further)}
        words={{ note: kitchen.varietyNote, empty: kitchen.noRule, add: kitchen.addRule }}
        fresh={FRESH_RULE}
        toDraft={toRuleDraft}
        fromDraft={fromRuleDraft}
        fields={(rule, onChange) => <RuleFields rule={rule} onChange={onChange} />}
      />
      <BehindNote />
    </>
  );
}

const ALIKE: readonly VarietyRule["by"][] = ["manner", "main", "dish"];

interface RuleFieldsProps {
  readonly rule: RuleDraft;
  readonly onChange: (rule: RuleDraft) => void;
}

function RuleFields({ rule, onChange }: RuleFieldsProps): ReactNode {
  const { further, words } = useFurther("kitchen");
  const { view } = useKitchen();
  const { kitchen } = further;
  const kinds = SITTING_KINDS.filter((kind) => view.edited.sittings.some((sitting) => sitting.kind === kind));
  return (
    <>
      <div className="fields">
        <ChoiceField
          label={kitchen.alike}
          value={rule.by}
          choices={ALIKE.map((each) => [each, kitchen.same[each]] as const)}
          onChange={(by) => onChange({ ...rule, by })}
        />
        <NumberField
          label={kitchen.mostPerWeek}
          value={rule.mostPerWeek}
          onChange={(mostPerWeek) => onChange({ ...rule, mostPerWeek })}
          isWhole
        />
        <NumberField
          label={kitchen.daysApart}
          value={rule.daysApart}
          onChange={(daysApart) => onChange({ ...rule, daysApart })}
          isWhole
        />
      </div>
      <TicksField
        legend={kitchen.ruleAt}
        isShort
        choices={kinds.map((kind) => [kind, words.sittings[kind]] as const)}
        ticked={rule.at}
        onChange={(at) => onChange({ ...rule, at })}
      />
    </>
  );
}

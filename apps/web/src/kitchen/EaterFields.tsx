import { DIETS, EU_ALLERGENS } from "halfloaf/food";
import { ACTIVITIES, SEXES, STAGES } from "halfloaf/intake";
import type { ReactNode } from "react";
import { useFurther } from "../words/useFurther.ts";
import type { EaterDraft } from "./EaterDraft.ts";
import { ChoiceField } from "./fields/ChoiceField.tsx";
import { NumberField } from "./fields/NumberField.tsx";
import { TextField } from "./fields/TextField.tsx";
import { TickField } from "./fields/TickField.tsx";

interface EaterFieldsProps {
  readonly eater: EaterDraft;
  readonly onChange: (eater: EaterDraft) => void;
}

/** What is asked of somebody who eats here. */
export function EaterFields({ eater, onChange }: EaterFieldsProps): ReactNode {
  const { further } = useFurther("kitchen");
  const { kitchen, diets } = further;
  const { stage, ...withoutStage } = eater;
  return (
    <div className="stack tight">
      <div className="fields">
        <TextField label={kitchen.eaterName} value={eater.name} onChange={(name) => onChange({ ...eater, name })} />
        <NumberField
          label={kitchen.age}
          value={eater.ageYears}
          onChange={(ageYears) => onChange({ ...eater, ageYears })}
          isWhole
        />
        <ChoiceField
          label={kitchen.sex}
          value={eater.sex}
          choices={SEXES.map((each) => [each, kitchen.sexes[each]] as const)}
          onChange={(sex) => onChange({ ...eater, sex })}
        />
        <NumberField
          label={kitchen.height}
          value={eater.heightCm}
          onChange={(heightCm) => onChange({ ...eater, heightCm })}
        />
        <NumberField label={kitchen.mass} value={eater.massKg} onChange={(massKg) => onChange({ ...eater, massKg })} />
        <ChoiceField
          label={kitchen.activity}
          value={eater.activity}
          choices={ACTIVITIES.map((each) => [each, kitchen.activities[each]] as const)}
          onChange={(activity) => onChange({ ...eater, activity })}
        />
        <ChoiceField
          label={kitchen.diet}
          value={eater.diet}
          choices={DIETS.map((each) => [each, diets[each]] as const)}
          onChange={(diet) => onChange({ ...eater, diet })}
        />
        {eater.sex === "female" && (
          <ChoiceField
            label={kitchen.stage}
            value={stage ?? ""}
            choices={[["", kitchen.noStage], ...STAGES.map((each) => [each, kitchen.stages[each]] as const)]}
            onChange={(chosen) => onChange(chosen === "" ? withoutStage : { ...withoutStage, stage: chosen })}
          />
        )}
      </div>
      <Avoided eater={eater} onChange={onChange} />
    </div>
  );
}

function Avoided({ eater, onChange }: EaterFieldsProps): ReactNode {
  const { further } = useFurther("kitchen");
  const { allergens } = eater.avoids;
  const told = allergens.map((each) => further.allergens[each]).join(", ");
  const set = (allergen: (typeof allergens)[number], isAvoided: boolean): void => {
    const others = allergens.filter((each) => each !== allergen);
    onChange({ ...eater, avoids: { ...eater.avoids, allergens: isAvoided ? [...others, allergen] : others } });
  };
  return (
    <details className="fold">
      <summary>
        <span>{further.kitchen.avoids}</span>
        <span className="small soft">{told === "" ? further.none : told}</span>
      </summary>
      <div className="ticks">
        {EU_ALLERGENS.map((each) => (
          <TickField
            key={each}
            label={further.allergens[each]}
            isTicked={allergens.includes(each)}
            onChange={(isAvoided) => set(each, isAvoided)}
          />
        ))}
      </div>
    </details>
  );
}

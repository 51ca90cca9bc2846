import type { Kitchen } from "halfloaf/kitchen";
import type { ReactNode } from "react";
import { RoleNote } from "../sharing/RoleNote.tsx";
import { useMayWrite } from "../sharing/useMayWrite.ts";
import { LANGUAGES } from "../words/languages.ts";
import { useFurther } from "../words/useFurther.ts";
import { useWords } from "../words/WordsContext.tsx";
import { Fold } from "./Fold.tsx";
import { ChoiceField } from "./fields/ChoiceField.tsx";
import { useKitchen } from "./KitchenProvider.tsx";

type Authorities = Kitchen["authorities"];

/** Whose figures count, and in which words all is said. */
export function AuthorityPart(): ReactNode {
  const { further, language } = useFurther("kitchen");
  const { choose } = useWords();
  const { session, view } = useKitchen();
  const { authorities, english } = view.edited;
  const { kitchen } = further;
  const mayEdit = useMayWrite("edited");
  const setAuthorities = (changed: Partial<Authorities>): void => {
    void session.edit((edited) => ({ ...edited, authorities: { ...edited.authorities, ...changed } }));
  };
  const entries = <Value extends string>(
    names: Readonly<Record<Value, string>>,
  ): readonly (readonly [Value, string])[] => Object.entries(names) as [Value, string][];
  return (
    <Fold title={kitchen.authorities} brief={kitchen.safeties[authorities.safety]}>
      <fieldset className="bare fields" disabled={!mayEdit}>
        <ChoiceField
          label={kitchen.intake}
          value={authorities.intake}
          choices={entries<Authorities["intake"]>(kitchen.intakes)}
          onChange={(intake) => setAuthorities({ intake })}
        />
        <ChoiceField
          label={kitchen.safety}
          value={authorities.safety}
          choices={entries<Authorities["safety"]>(kitchen.safeties)}
          onChange={(safety) => setAuthorities({ safety })}
        />
        <ChoiceField
          label={kitchen.english}
          value={english}
          choices={entries<Kitchen["english"]>(kitchen.englishes)}
          onChange={(chosen) => void session.edit((edited) => ({ ...edited, english: chosen }))}
        />
      </fieldset>
      <RoleNote />
      <div className="fields">
        <ChoiceField
          label={kitchen.language}
          value={language}
          choices={LANGUAGES.map((each) => [each, kitchen.languages[each]] as const)}
          onChange={choose}
        />
      </div>
    </Fold>
  );
}

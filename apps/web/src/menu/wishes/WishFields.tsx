import { MANNERS, SITTING_KINDS } from "halfloaf/dish";
import { DIETS, FOOD_GROUPS } from "halfloaf/food";
import { type ReactNode, useMemo } from "react";
import { DaysField } from "../../kitchen/DaysField.tsx";
import { ChoiceField } from "../../kitchen/fields/ChoiceField.tsx";
import { MoneyField } from "../../kitchen/fields/MoneyField.tsx";
import { NumberField } from "../../kitchen/fields/NumberField.tsx";
import { TicksField } from "../../kitchen/fields/TicksField.tsx";
import { useKitchen } from "../../kitchen/KitchenProvider.tsx";
import { useNames } from "../../kitchen/useNames.ts";
import { useFurther } from "../../words/useFurther.ts";
import type { MeantDraft, WishDraft } from "./WishDraft.ts";

interface WishFieldsProps {
  readonly wish: WishDraft;
  readonly onChange: (wish: WishDraft) => void;
}

/** All that a wish says. */
export function WishFields({ wish, onChange }: WishFieldsProps): ReactNode {
  const { further, words } = useFurther("wishes");
  const { view } = useKitchen();
  const { wishes } = further;
  const { sittings, eaters, currency } = view.edited;
  const kinds = SITTING_KINDS.filter((kind) => sittings.some((sitting) => sitting.kind === kind));
  return (
    <>
      <MeantFields what={wish.what} onChange={(what) => onChange({ ...wish, what })} />
      <div className="fields two">
        <NumberField
          label={wishes.least}
          value={wish.least}
          onChange={(least) => onChange({ ...wish, least })}
          isWhole
        />
        <NumberField label={wishes.most} value={wish.most} onChange={(most) => onChange({ ...wish, most })} isWhole />
      </div>
      <DaysField legend={wishes.days} days={wish.on} onChange={(on) => onChange({ ...wish, on })} />
      <TicksField
        legend={wishes.at}
        isShort
        choices={kinds.map((kind) => [kind, words.sittings[kind]] as const)}
        ticked={wish.at}
        onChange={(at) => onChange({ ...wish, at })}
      />
      {eaters.length > 1 && (
        <TicksField
          legend={wishes.eaters}
          choices={eaters.map(({ id, name }) => [id, name] as const)}
          ticked={wish.eaters}
          onChange={(who) => onChange({ ...wish, eaters: who })}
        />
      )}
      <div className="fields">
        <ChoiceField
          label={wishes.matters}
          value={wish.isMust ? "must" : "priced"}
          choices={[["must", wishes.must] as const, ["priced", wishes.priced] as const]}
          onChange={(matters) => onChange({ ...wish, isMust: matters === "must" })}
        />
        {!wish.isMust && (
          <MoneyField
            label={wishes.price}
            value={wish.missMinor}
            currency={currency}
            onChange={(missMinor) => onChange({ ...wish, missMinor })}
          />
        )}
      </div>
    </>
  );
}

interface MeantFieldsProps {
  readonly what: MeantDraft;
  readonly onChange: (what: MeantDraft) => void;
}

/** What the dishes have in common; each choice left at "any" says nothing. */
function MeantFields({ what, onChange }: MeantFieldsProps): ReactNode {
  const { further, formats } = useFurther("wishes");
  const { view } = useKitchen();
  const names = useNames();
  const { wishes } = further;
  const { dishes } = view.tables;
  const named = useMemo(() => {
    const byName = (a: readonly [string, string], b: readonly [string, string]): number => formats.compare(a[1], b[1]);
    return {
      dish: dishes.map(({ id, title }) => [id, title] as const).sort(byName),
      main: [...new Set(dishes.map(({ main }) => main))].map((id) => [id, names.food(id)] as const).sort(byName),
    };
  }, [dishes, names, formats]);
  const fields = [
    ["manner", wishes.manner, MANNERS.map((each) => [each, wishes.manners[each]] as const)],
    ["group", wishes.group, FOOD_GROUPS.map((each) => [each, wishes.groups[each]] as const)],
    ["diet", wishes.diet, DIETS.slice(0, -1).map((each) => [each, further.diets[each]] as const)],
    ["main", wishes.main, named.main],
    ["dish", wishes.dish, named.dish],
  ] as const;
  return (
    <fieldset className="choice">
      <legend>{wishes.what}</legend>
      <div className="fields two">
        {fields.map(([key, label, choices]) => (
          <ChoiceField
            key={key}
            label={label}
            value={what[key] ?? ""}
            choices={[["", wishes.any], ...choices]}
            onChange={(chosen) => {
              const { [key]: _, ...others } = what;
              onChange(chosen === "" ? others : { ...others, [key]: chosen });
            }}
          />
        ))}
      </div>
    </fieldset>
  );
}

import { type ReactNode, useState } from "react";
import { useFurther } from "../words/useFurther.ts";
import { Fold } from "./Fold.tsx";
import { MoneyField } from "./fields/MoneyField.tsx";
import { NumberField } from "./fields/NumberField.tsx";
import { TextField } from "./fields/TextField.tsx";
import { Issues } from "./Issues.tsx";
import { useKitchen } from "./KitchenProvider.tsx";
import { useSaving } from "./useSaving.ts";

/** What a week may cost in money, minutes and ways, and what a minute is worth. */
export function LimitsPart(): ReactNode {
  const { further, formats } = useFurther();
  const { view } = useKitchen();
  const { currency, name, limits, worth } = view.edited;
  const [title, setTitle] = useState(name);
  const [draft, setDraft] = useState<LimitsDraft>(limits);
  const [minuteMinor, setMinuteMinor] = useState<number | undefined>(worth.minuteMinor);
  const { issues, isSaved, save } = useSaving();
  const { kitchen } = further;
  const keep = (): void => {
    const { budgetMinor, ...others } = draft;
    const set = budgetMinor === undefined ? others : { ...others, budgetMinor };
    save((edited) => ({ ...edited, name: title, limits: set, worth: { ...edited.worth, minuteMinor } }));
  };
  const counts = [
    ["tripsPerWeek", kitchen.trips],
    ["distinctEvenings", kitchen.evenings],
    ["usesPerDish", kitchen.uses],
  ] as const;
  const budget = limits.budgetMinor === undefined ? further.none : formats.money(limits.budgetMinor, currency);
  return (
    <Fold title={kitchen.limits} brief={budget}>
      <form
        className="stack tight"
        onSubmit={(event) => {
          event.preventDefault();
          keep();
        }}
      >
        <div className="fields">
          <TextField label={kitchen.name} value={title} onChange={setTitle} />
          <MoneyField
            label={kitchen.budget}
            value={draft.budgetMinor}
            currency={currency}
            onChange={(budgetMinor) => setDraft({ ...draft, budgetMinor })}
          />
          {counts.map(([key, label]) => (
            <NumberField
              key={key}
              label={label}
              value={draft[key]}
              onChange={(count) => setDraft({ ...draft, [key]: count })}
              isWhole
            />
          ))}
          <MoneyField label={kitchen.worth} value={minuteMinor} currency={currency} onChange={setMinuteMinor} />
        </div>
        <p className="small soft">{kitchen.worthNote}</p>
        <HandsOn minutes={draft.handsOnMinutes} onChange={(handsOnMinutes) => setDraft({ ...draft, handsOnMinutes })} />
        <Issues issues={issues} isSaved={isSaved} />
        <div>
          <button type="submit" className="button main">
            {further.save}
          </button>
        </div>
      </form>
    </Fold>
  );
}

type Minutes = number | undefined | readonly (number | undefined)[];

interface LimitsDraft {
  readonly budgetMinor?: number | undefined;
  readonly tripsPerWeek?: number | undefined;
  readonly distinctEvenings?: number | undefined;
  readonly usesPerDish?: number | undefined;
  readonly handsOnMinutes: Minutes;
}

interface HandsOnProps {
  readonly minutes: Minutes;
  readonly onChange: (minutes: Minutes) => void;
}

/** One number for every day, or one for each weekday. */
function HandsOn({ minutes, onChange }: HandsOnProps): ReactNode {
  const { further } = useFurther();
  const { handsOn } = further.kitchen;
  if (!Array.isArray(minutes))
    return <NumberField label={handsOn} value={minutes as number | undefined} onChange={onChange} isWhole />;
  return (
    <fieldset className="choice">
      <legend>{handsOn}</legend>
      <div className="fields seven">
        {minutes.map((each: number | undefined, day) => (
          <NumberField
            key={further.weekdays[day]}
            label={further.weekdaysShort[day] ?? ""}
            value={each}
            onChange={(changed) => onChange(minutes.with(day, changed))}
            isWhole
          />
        ))}
      </div>
    </fieldset>
  );
}

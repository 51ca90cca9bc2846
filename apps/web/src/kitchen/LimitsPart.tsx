import { type ReactNode, useId } from "react";
import { BehindNote } from "../thinking/BehindNote.tsx";
import { useFurther } from "../words/useFurther.ts";
import { Fold } from "./Fold.tsx";
import { MoneyField } from "./fields/MoneyField.tsx";
import { NumberField } from "./fields/NumberField.tsx";
import { TextField } from "./fields/TextField.tsx";
import { TickField } from "./fields/TickField.tsx";
import { useKitchen } from "./KitchenProvider.tsx";
import { PartForm } from "./PartForm.tsx";
import { useDraft } from "./useDraft.ts";
import { useSaving } from "./useSaving.ts";

type Minutes = number | undefined | readonly (number | undefined)[];

interface LimitsDraft {
  readonly name: string;
  readonly budgetMinor?: number | undefined;
  readonly standRisePct?: number | undefined;
  readonly tripsPerWeek?: number | undefined;
  readonly distinctEvenings?: number | undefined;
  readonly usesPerDish?: number | undefined;
  readonly mainMax?: number | undefined;
  readonly energyTolerancePct?: number | undefined;
  readonly handsOnMinutes: Minutes;
}

/** What a week may cost in money, minutes and ways, and how alike its dishes may be. */
export function LimitsPart(): ReactNode {
  const { further, formats } = useFurther("kitchen");
  const { view } = useKitchen();
  const { currency, name, limits } = view.edited;
  const { draft, setDraft, version } = useDraft<LimitsDraft>({ ...limits, name });
  const { issues, isSaved, save } = useSaving();
  const { kitchen } = further;
  const keep = (): void => {
    const { name: title, budgetMinor, ...others } = draft;
    const set = budgetMinor === undefined ? others : { ...others, budgetMinor };
    save((edited) => ({ ...edited, name: title, limits: set }));
  };
  const budget = limits.budgetMinor === undefined ? further.none : formats.money(limits.budgetMinor, currency);
  return (
    <Fold title={kitchen.limits} brief={budget}>
      <PartForm issues={issues} isSaved={isSaved} onSave={keep}>
        <LimitsFields key={version} limits={draft} currency={currency} onChange={setDraft} />
      </PartForm>
      <BehindNote />
    </Fold>
  );
}

interface LimitsFieldsProps {
  readonly limits: LimitsDraft;
  readonly currency: string;
  readonly onChange: (limits: LimitsDraft) => void;
}

function LimitsFields({ limits, currency, onChange }: LimitsFieldsProps): ReactNode {
  const { kitchen } = useFurther("kitchen").further;
  const counts = [
    ["standRisePct", kitchen.standRise],
    ["tripsPerWeek", kitchen.trips],
    ["distinctEvenings", kitchen.evenings],
    ["usesPerDish", kitchen.uses],
    ["mainMax", kitchen.mainMax],
    ["energyTolerancePct", kitchen.energyTolerance],
  ] as const;
  return (
    <>
      <div className="fields">
        <TextField label={kitchen.name} value={limits.name} onChange={(name) => onChange({ ...limits, name })} />
        <MoneyField
          label={kitchen.budget}
          value={limits.budgetMinor}
          currency={currency}
          onChange={(budgetMinor) => onChange({ ...limits, budgetMinor })}
        />
        {counts.map(([key, label]) => (
          <NumberField
            key={key}
            label={label}
            value={limits[key]}
            onChange={(count) => onChange({ ...limits, [key]: count })}
            isWhole
          />
        ))}
      </div>
      <HandsOn minutes={limits.handsOnMinutes} onChange={(handsOnMinutes) => onChange({ ...limits, handsOnMinutes })} />
    </>
  );
}

interface HandsOnProps {
  readonly minutes: Minutes;
  readonly onChange: (minutes: Minutes) => void;
}

/** One number for every day, or one for each weekday. */
function HandsOn({ minutes, onChange }: HandsOnProps): ReactNode {
  const { further } = useFurther("kitchen");
  const { handsOn, eachWeekday } = further.kitchen;
  const legend = useId();
  const isEach = Array.isArray(minutes);
  const spread = (each: boolean): void =>
    onChange(each ? Array.from({ length: 7 }, () => minutes as number | undefined) : (minutes as readonly number[])[0]);
  return (
    // biome-ignore lint/a11y/useSemanticElements: a legend can't stand above some fields and beside others.
    <div role="group" aria-labelledby={legend}>
      <span id={legend}>{handsOn}</span>
      <TickField label={eachWeekday} isTicked={isEach} onChange={spread} />
      <div className="fields seven">
        {isEach ? (
          minutes.map((each: number | undefined, day) => (
            <NumberField
              key={further.weekdays[day]}
              label={further.weekdaysShort[day] ?? ""}
              value={each}
              onChange={(changed) => onChange(minutes.with(day, changed))}
              isWhole
            />
          ))
        ) : (
          <NumberField
            label={further.kitchen.everyDay}
            value={minutes as number | undefined}
            onChange={onChange}
            isWhole
          />
        )}
      </div>
    </div>
  );
}

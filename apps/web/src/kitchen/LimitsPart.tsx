import { type ReactNode, useId } from "react";
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
  readonly minuteMinor: number | undefined;
  readonly kwhMinor: number | undefined;
  readonly budgetMinor?: number | undefined;
  readonly standRisePct?: number | undefined;
  readonly tripsPerWeek?: number | undefined;
  readonly distinctEvenings?: number | undefined;
  readonly usesPerDish?: number | undefined;
  readonly handsOnMinutes: Minutes;
}

/** What a week may cost in money, minutes and ways, and what a minute is worth. */
export function LimitsPart(): ReactNode {
  const { further, formats } = useFurther("kitchen");
  const { view } = useKitchen();
  const { currency, name, limits, worth, energyPrice } = view.edited;
  const { draft, setDraft, version } = useDraft<LimitsDraft>({
    ...limits,
    name,
    minuteMinor: worth.minuteMinor,
    kwhMinor: energyPrice?.kwhMinor,
  });
  const { issues, isSaved, save } = useSaving();
  const { kitchen } = further;
  const keep = (): void => {
    const { name: title, minuteMinor, budgetMinor, kwhMinor, ...others } = draft;
    const set = budgetMinor === undefined ? others : { ...others, budgetMinor };
    save(({ energyPrice: before, ...edited }) => ({
      ...edited,
      name: title,
      limits: set,
      worth: { ...edited.worth, minuteMinor },
      // A price that was changed is no estimate of ours any more.
      ...(kwhMinor !== undefined && { energyPrice: kwhMinor === before?.kwhMinor ? before : { kwhMinor } }),
    }));
  };
  const budget = limits.budgetMinor === undefined ? further.none : formats.money(limits.budgetMinor, currency);
  return (
    <Fold title={kitchen.limits} brief={budget}>
      <PartForm issues={issues} isSaved={isSaved} onSave={keep}>
        <LimitsFields
          key={version}
          limits={draft}
          isEstimate={energyPrice?.estimate === true && draft.kwhMinor === energyPrice.kwhMinor}
          currency={currency}
          onChange={setDraft}
        />
      </PartForm>
    </Fold>
  );
}

interface LimitsFieldsProps {
  readonly limits: LimitsDraft;
  /** True where the price of a kWh was never given by anyone here. */
  readonly isEstimate: boolean;
  readonly currency: string;
  readonly onChange: (limits: LimitsDraft) => void;
}

function LimitsFields({ limits, isEstimate, currency, onChange }: LimitsFieldsProps): ReactNode {
  const { kitchen, estimate } = useFurther("kitchen").further;
  const counts = [
    ["standRisePct", kitchen.standRise],
    ["tripsPerWeek", kitchen.trips],
    ["distinctEvenings", kitchen.evenings],
    ["usesPerDish", kitchen.uses],
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
        <MoneyField
          label={kitchen.worth}
          value={limits.minuteMinor}
          currency={currency}
          onChange={(minuteMinor) => onChange({ ...limits, minuteMinor })}
        />
      </div>
      <p className="small soft">{kitchen.worthNote}</p>
      <div className="fields">
        <MoneyField
          label={isEstimate ? `${kitchen.kwh}, ${estimate}` : kitchen.kwh}
          value={limits.kwhMinor}
          currency={currency}
          onChange={(kwhMinor) => onChange({ ...limits, kwhMinor })}
        />
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

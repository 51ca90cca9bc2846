import type { ReactNode } from "react";
import { useFurther } from "../words/useFurther.ts";
import { Fold } from "./Fold.tsx";
import { MoneyField } from "./fields/MoneyField.tsx";
import { NumberField } from "./fields/NumberField.tsx";
import { useKitchen } from "./KitchenProvider.tsx";
import { PartForm } from "./PartForm.tsx";
import { useDraft } from "./useDraft.ts";
import { useSaving } from "./useSaving.ts";

interface WorthDraft {
  readonly minuteMinor: number | undefined;
  readonly vesselMinutes: number | undefined;
  readonly dislikePointMinor: number | undefined;
  readonly kwhMinor: number | undefined;
}

/** What minutes, washing up, liking and a kWh are worth, so that a plan can weigh them against money. */
export function WorthPart(): ReactNode {
  const { further, formats } = useFurther("kitchen");
  const { view } = useKitchen();
  const { currency, worth, energyPrice } = view.edited;
  const { minuteMinor, vesselMinutes, dislikePointMinor } = worth;
  const { draft, setDraft, version } = useDraft<WorthDraft>({
    minuteMinor,
    vesselMinutes,
    dislikePointMinor,
    kwhMinor: energyPrice?.kwhMinor,
  });
  const { issues, isSaved, save } = useSaving();
  const { kitchen, estimate } = further;
  const keep = (): void => {
    const { kwhMinor, ...others } = draft;
    save(({ energyPrice: before, ...edited }) => ({
      ...edited,
      worth: { ...edited.worth, ...others },
      // A price that was changed is no estimate of ours any more.
      ...(kwhMinor !== undefined && { energyPrice: kwhMinor === before?.kwhMinor ? before : { kwhMinor } }),
    }));
  };
  const isEstimate = energyPrice?.estimate === true && draft.kwhMinor === energyPrice.kwhMinor;
  return (
    <Fold title={kitchen.worthTitle} brief={kitchen.worthBrief(formats.money(minuteMinor, currency))}>
      <PartForm issues={issues} isSaved={isSaved} onSave={keep}>
        <div key={version} className="stack tight">
          <p className="small soft">{kitchen.worthNote}</p>
          <div className="fields">
            <MoneyField
              label={kitchen.worth}
              value={draft.minuteMinor}
              currency={currency}
              onChange={(value) => setDraft({ ...draft, minuteMinor: value })}
            />
            <NumberField
              label={kitchen.vesselMinutes}
              value={draft.vesselMinutes}
              onChange={(value) => setDraft({ ...draft, vesselMinutes: value })}
            />
            <MoneyField
              label={kitchen.dislikePoint}
              value={draft.dislikePointMinor}
              currency={currency}
              onChange={(value) => setDraft({ ...draft, dislikePointMinor: value })}
            />
            <MoneyField
              label={isEstimate ? `${kitchen.kwh}, ${estimate}` : kitchen.kwh}
              value={draft.kwhMinor}
              currency={currency}
              onChange={(value) => setDraft({ ...draft, kwhMinor: value })}
            />
          </div>
        </div>
      </PartForm>
    </Fold>
  );
}

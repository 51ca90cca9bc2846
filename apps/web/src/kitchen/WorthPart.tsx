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
  /** Of a tenth of a reference intake, up to the first tenth and beyond it. */
  readonly firstTenthMinor: number | undefined;
  readonly nextTenthMinor: number | undefined;
}

/** The planner prices a whole reference intake; a tenth of one is what people can weigh. */
const TENTHS = 10;

/** What minutes, washing up, liking, a kWh and reference intakes are worth, so that a plan can weigh them against money. */
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
    firstTenthMinor: worth.shortfallFirstMinor / TENTHS,
    nextTenthMinor: worth.shortfallRestMinor / TENTHS,
  });
  const { issues, isSaved, save } = useSaving();
  const { kitchen, estimate } = further;
  const keep = (): void => {
    const { kwhMinor, firstTenthMinor, nextTenthMinor, ...others } = draft;
    save(({ energyPrice: before, ...edited }) => ({
      ...edited,
      worth: {
        ...edited.worth,
        ...others,
        shortfallFirstMinor: firstTenthMinor === undefined ? undefined : firstTenthMinor * TENTHS,
        shortfallRestMinor: nextTenthMinor === undefined ? undefined : nextTenthMinor * TENTHS,
      },
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
          <div className="fields">
            <MoneyField
              label={kitchen.shortFirst}
              value={draft.firstTenthMinor}
              currency={currency}
              onChange={(value) => setDraft({ ...draft, firstTenthMinor: value })}
            />
            <MoneyField
              label={kitchen.shortRest}
              value={draft.nextTenthMinor}
              currency={currency}
              onChange={(value) => setDraft({ ...draft, nextTenthMinor: value })}
            />
          </div>
          <p className="small soft">{kitchen.shortNote}</p>
        </div>
      </PartForm>
    </Fold>
  );
}

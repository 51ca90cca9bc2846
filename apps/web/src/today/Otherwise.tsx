import type { DayJob } from "halfloaf/kitchen";
import type { EventBody } from "halfloaf/kitchen/record";
import { type ReactNode, useState } from "react";
import { MoneyField } from "../kitchen/fields/MoneyField.tsx";
import { NumberField } from "../kitchen/fields/NumberField.tsx";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { Unfolding } from "../kitchen/Unfolding.tsx";
import { useNames } from "../kitchen/useNames.ts";
import { useFurther } from "../words/useFurther.ts";

interface OtherwiseProps {
  readonly job: Pick<DayJob, "date" | "sitting">;
  /** Who was to eat at the sitting. */
  readonly eaters: readonly string[];
}

/** What comes out otherwise at a sitting: nobody eats, somebody does not, guests do, or all eat elsewhere. */
export function Otherwise({ job: { date, sitting }, eaters }: OtherwiseProps): ReactNode {
  const { words, further } = useFurther("today");
  const { session, view } = useKitchen();
  const names = useNames();
  const [guests, setGuests] = useState<number>();
  const [costMinor, setCost] = useState<number>();
  const base = { on: date, sitting };
  const tell = (body: EventBody): void => {
    void session.write((pen) => [pen.write(body)]);
  };
  const { otherwise } = further;
  const isGuests = guests !== undefined && guests > 0;
  const isCost = costMinor === undefined || Number.isSafeInteger(costMinor);
  const cost = costMinor === undefined ? {} : { costMinor };
  return (
    <Unfolding className="fold" summary={<span>{otherwise.title}</span>}>
      <div className="stack tight telling">
        <div className="row">
          <button type="button" className="button" onClick={() => tell({ kind: "skipped", ...base })}>
            {words.today.skipped}
          </button>
          {eaters.length > 1 &&
            eaters.map((eater) => (
              <button
                key={eater}
                type="button"
                className="button"
                onClick={() => tell({ kind: "skipped", ...base, eater })}
              >
                {otherwise.without(names.eater(eater))}
              </button>
            ))}
        </div>
        <div className="row end">
          <NumberField label={otherwise.guests} value={undefined} onChange={setGuests} />
          <button
            type="button"
            className="button"
            disabled={!isGuests}
            onClick={() => isGuests && tell({ kind: "guest", ...base, portions: guests })}
          >
            {otherwise.guestsCome}
          </button>
        </div>
        <div className="row end">
          <MoneyField label={otherwise.cost} value={undefined} currency={view.kitchen.currency} onChange={setCost} />
          <button
            type="button"
            className="button"
            disabled={!isCost}
            onClick={() => tell({ kind: "ate-out", ...base, ...cost })}
          >
            {otherwise.ateOut}
          </button>
        </div>
      </div>
    </Unfolding>
  );
}

import type { Kitchen } from "halfloaf/kitchen";
import type { ReactNode } from "react";
import { useFurther } from "../words/useFurther.ts";
import { Fold } from "./Fold.tsx";
import { NumberField } from "./fields/NumberField.tsx";
import { TickField } from "./fields/TickField.tsx";
import { useKitchen } from "./KitchenProvider.tsx";
import { PartForm } from "./PartForm.tsx";
import { useDraft } from "./useDraft.ts";
import { useSaving } from "./useSaving.ts";

type PuttingBy = NonNullable<Kitchen["puttingBy"]>;

/** Undefined where nothing is put by. */
type PuttingByDraft = Readonly<Record<keyof PuttingBy, number | undefined>> | undefined;

/** What is asked for at first: our own choice, no source. */
const FRESH: PuttingByDraft = { portions: 2, least: 0, most: 2, enough: 4 };

/** Portions cooked for later weeks: how large a box is, how many a week, and how many are enough. */
export function PutByPart(): ReactNode {
  const { further, formats } = useFurther("kitchen");
  const { view } = useKitchen();
  const { kit, puttingBy } = view.edited;
  const { draft, setDraft, version } = useDraft<PuttingByDraft>(
    puttingBy && { ...puttingBy, enough: puttingBy.enough },
  );
  const { issues, isSaved, save } = useSaving();
  const { kitchen } = further;
  const keep = (): void => {
    save(({ puttingBy: _before, ...edited }) => (draft === undefined ? edited : { ...edited, puttingBy: draft }));
  };
  const brief =
    puttingBy === undefined ? further.none : kitchen.boxes(puttingBy.most, formats.number(puttingBy.portions));
  return (
    <Fold title={kitchen.puttingBy} brief={brief}>
      <p className="small soft">{kitchen.puttingByNote}</p>
      {kit.freezerLitres <= 0 && <p className="caution">{kitchen.noFreezer}</p>}
      <PartForm issues={issues} isSaved={isSaved} onSave={keep}>
        <TickField
          label={kitchen.putBy}
          isTicked={draft !== undefined}
          onChange={(isOn) => setDraft(isOn ? FRESH : undefined)}
        />
        {draft !== undefined && (
          <div key={version} className="fields">
            <NumberField
              label={kitchen.boxPortions}
              value={draft.portions}
              onChange={(portions) => setDraft({ ...draft, portions })}
            />
            {(["least", "most", "enough"] as const).map((key) => (
              <NumberField
                key={key}
                label={kitchen.boxCounts[key]}
                value={draft[key]}
                onChange={(count) => setDraft({ ...draft, [key]: count })}
                isWhole
              />
            ))}
          </div>
        )}
      </PartForm>
    </Fold>
  );
}

import { SITTING_KINDS } from "halfloaf/dish";
import type { WeeklySitting } from "halfloaf/kitchen";
import type { EditedKitchen } from "halfloaf/kitchen/record";
import { type ReactNode, useState } from "react";
import { Allowed } from "../sharing/Allowed.tsx";
import { RoleNote } from "../sharing/RoleNote.tsx";
import { BehindNote } from "../thinking/BehindNote.tsx";
import { useFurther } from "../words/useFurther.ts";
import { DaysField } from "./DaysField.tsx";
import { Fold } from "./Fold.tsx";
import { ChoiceField } from "./fields/ChoiceField.tsx";
import { NumberField } from "./fields/NumberField.tsx";
import { TickField } from "./fields/TickField.tsx";
import { useKitchen } from "./KitchenProvider.tsx";
import { PartForm } from "./PartForm.tsx";
import { useNames } from "./useNames.ts";
import { useSaving } from "./useSaving.ts";

type SittingDraft = Omit<WeeklySitting, "minutes"> & { readonly minutes: number | undefined };

/** Share of a day's energy for a kind of sitting that the kitchen had not yet; our own choice, no source. */
const SHARES_PCT = { morning: 23, midday: 32, between: 12, evening: 33 } as const;

/** When somebody eats here, who, and how many minutes there are. */
export function SittingsPart(): ReactNode {
  const { further, formats, words } = useFurther("kitchen");
  const { view } = useKitchen();
  const names = useNames();
  const { sittings, eaters } = view.edited;
  const [open, setOpen] = useState<{ readonly at: number; readonly sitting: SittingDraft }>();
  const { issues, save } = useSaving();
  const keep = (): void => {
    if (open === undefined) return;
    const isNew = open.at === sittings.length;
    const changed = isNew ? [...sittings, open.sitting] : sittings.with(open.at, open.sitting as WeeklySitting);
    if (save((kitchen) => withShares(kitchen, changed, open.sitting.kind))) setOpen(undefined);
  };
  const remove = (at: number): void => {
    if (save((kitchen) => ({ ...kitchen, sittings: kitchen.sittings.toSpliced(at, 1) }))) setOpen(undefined);
  };
  const fresh: SittingDraft = {
    kind: "evening",
    on: [1, 2, 3, 4, 5, 6, 7],
    eaters: eaters.map(({ id }) => id),
    minutes: 30,
    heat: true,
    packed: false,
  };
  const tell = ({ on, minutes, eaters: who }: WeeklySitting): string =>
    [
      on.map((day) => further.weekdaysShort[day - 1]).join(" "),
      formats.minutes(minutes),
      who.map((id) => names.eater(id)).join(", "),
    ].join("; ");
  return (
    <Fold
      title={further.kitchen.sittings}
      brief={[...new Set(sittings.map(({ kind }) => words.sittings[kind]))].join(", ")}
    >
      <p className="small soft">{further.kitchen.sittingsNote}</p>
      {open === undefined ? (
        <>
          <ul className="lines">
            {sittings.map((sitting, at) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: sittings have no name but their place.
              <li key={at} className="line-with-ways">
                <div>
                  {words.sittings[sitting.kind]}
                  <div className="small soft">{tell(sitting)}</div>
                </div>
                <Allowed to="edited">
                  <button type="button" className="button" onClick={() => setOpen({ at, sitting })}>
                    {further.edit}
                    <span className="unseen">
                      {" "}
                      {words.sittings[sitting.kind]} {tell(sitting)}
                    </span>
                  </button>
                </Allowed>
              </li>
            ))}
          </ul>
          <Allowed to="edited" otherwise={<RoleNote />}>
            <div>
              <button type="button" className="button" onClick={() => setOpen({ at: sittings.length, sitting: fresh })}>
                {further.kitchen.addSitting}
              </button>
            </div>
          </Allowed>
        </>
      ) : (
        <PartForm
          issues={issues}
          onSave={keep}
          onCancel={() => setOpen(undefined)}
          onRemove={open.at < sittings.length ? () => remove(open.at) : undefined}
        >
          <SittingFields sitting={open.sitting} onChange={(sitting) => setOpen({ ...open, sitting })} />
        </PartForm>
      )}
      <BehindNote later="sittings" />
    </Fold>
  );
}

interface SittingFieldsProps {
  readonly sitting: SittingDraft;
  readonly onChange: (sitting: SittingDraft) => void;
}

function SittingFields({ sitting, onChange }: SittingFieldsProps): ReactNode {
  const { further, words } = useFurther("kitchen");
  const { view } = useKitchen();
  const { kitchen } = further;
  const seat = (id: string, isHere: boolean): void => {
    const others = sitting.eaters.filter((each) => each !== id);
    onChange({ ...sitting, eaters: isHere ? [...others, id] : others });
  };
  return (
    <>
      <div className="fields two">
        <ChoiceField
          label={kitchen.sitting}
          value={sitting.kind}
          choices={SITTING_KINDS.map((each) => [each, words.sittings[each]] as const)}
          onChange={(kind) => onChange({ ...sitting, kind })}
        />
        <NumberField
          label={kitchen.minutes}
          value={sitting.minutes}
          onChange={(minutes) => onChange({ ...sitting, minutes })}
          isWhole
        />
      </div>
      <DaysField days={sitting.on} onChange={(on) => onChange({ ...sitting, on })} />
      <fieldset className="choice">
        <legend>{kitchen.who}</legend>
        <div className="ticks">
          {view.edited.eaters.map(({ id, name }) => (
            <TickField
              key={id}
              label={name}
              isTicked={sitting.eaters.includes(id)}
              onChange={(isHere) => seat(id, isHere)}
            />
          ))}
        </div>
      </fieldset>
      <div className="ticks">
        <TickField label={kitchen.heat} isTicked={sitting.heat} onChange={(heat) => onChange({ ...sitting, heat })} />
        <TickField
          label={kitchen.packed}
          isTicked={sitting.packed}
          onChange={(packed) => onChange({ ...sitting, packed })}
        />
      </div>
    </>
  );
}

function withShares(kitchen: EditedKitchen, sittings: readonly unknown[], kind: WeeklySitting["kind"]): unknown {
  const share = kitchen.energySharePct[kind] ?? SHARES_PCT[kind];
  return { ...kitchen, sittings, energySharePct: { ...kitchen.energySharePct, [kind]: share } };
}

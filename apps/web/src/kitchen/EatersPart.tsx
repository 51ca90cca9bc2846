import { energyNeed } from "halfloaf/intake";
import type { Eater } from "halfloaf/kitchen";
import type { EditedKitchen } from "halfloaf/kitchen/record";
import { type ReactNode, useState } from "react";
import { Allowed } from "../sharing/Allowed.tsx";
import { RoleNote } from "../sharing/RoleNote.tsx";
import { BehindNote } from "../thinking/BehindNote.tsx";
import { useFurther } from "../words/useFurther.ts";
import { type EaterDraft, newEater } from "./EaterDraft.ts";
import { EaterFields } from "./EaterFields.tsx";
import { Fold } from "./Fold.tsx";
import { Issues } from "./Issues.tsx";
import { useKitchen } from "./KitchenProvider.tsx";
import { newId } from "./newId.ts";
import { PartForm } from "./PartForm.tsx";
import { useSaving } from "./useSaving.ts";

/** Who eats here. */
export function EatersPart(): ReactNode {
  const { further } = useFurther("kitchen");
  const { view } = useKitchen();
  const [open, setOpen] = useState<EaterDraft>();
  const [gone, setGone] = useState<string>();
  const { issues, save } = useSaving();
  const { eaters } = view.edited;
  const close = (): void => setOpen(undefined);
  const take = (draft: EaterDraft): void => {
    const ids = eaters.map(({ id }) => id);
    const eater = draft.id === "" ? { ...draft, id: newId(draft.name, ids, "eater") } : draft;
    if (save((kitchen) => withEater(kitchen, eater))) close();
  };
  const remove = ({ id, name }: Eater): void => {
    if (save((edited) => withoutEater(edited, id))) setGone(name);
  };
  const { kitchen } = further;
  return (
    <Fold title={kitchen.eaters} brief={eaters.map(({ name }) => name).join(", ")}>
      <p className="small soft">{kitchen.eatersNote}</p>
      {open === undefined ? (
        <>
          <ul className="lines">
            {eaters.map((eater) => (
              <li key={eater.id}>
                <EaterLine
                  eater={eater}
                  onEdit={() => setOpen(eater)}
                  onRemove={eaters.length > 1 ? () => remove(eater) : undefined}
                />
              </li>
            ))}
          </ul>
          {eaters.length === 1 && <p className="small soft">{kitchen.lastEater}</p>}
          <Issues issues={issues} />
          {gone !== undefined && <p role="status">{kitchen.removed(gone)}</p>}
          <Allowed to="edited" otherwise={<RoleNote />}>
            <div>
              <button type="button" className="button" onClick={() => setOpen(newEater("", ""))}>
                {kitchen.addEater}
              </button>
            </div>
          </Allowed>
        </>
      ) : (
        <PartForm issues={issues} onSave={() => take(open)} onCancel={close}>
          <EaterFields eater={open} onChange={setOpen} />
        </PartForm>
      )}
      <BehindNote later="eaters" />
    </Fold>
  );
}

interface EaterLineProps {
  readonly eater: Eater;
  readonly onEdit: () => void;
  readonly onRemove: (() => void) | undefined;
}

function EaterLine({ eater, onEdit, onRemove }: EaterLineProps): ReactNode {
  const { further, formats } = useFurther("kitchen");
  const { kitchen, diets } = further;
  const need = energyNeed(eater);
  const energy =
    need.kind === "need"
      ? kitchen.need(
          `${formats.number(Math.round(need.energyKj / 100) * 100, 0)} kJ (${formats.number(Math.round(need.energyKcal / 10) * 10, 0)} kcal)`,
        )
      : need.kind === "refer"
        ? kitchen.refer[need.reason]
        : further.unknown;
  const avoided = eater.avoids.allergens.map((each) => further.allergens[each]);
  return (
    <div className="line-with-ways two-ways">
      <div>
        {eater.name}
        <div className="small soft">
          {[diets[eater.diet], ...avoided.map((each) => `− ${each}`), energy].join(", ")}
        </div>
      </div>
      <Allowed to="edited">
        <div className="row">
          <button type="button" className="button" onClick={onEdit}>
            {further.edit}
            <span className="unseen"> {eater.name}</span>
          </button>
          {onRemove !== undefined && (
            <button type="button" className="button" onClick={onRemove}>
              {further.remove}
              <span className="unseen"> {eater.name}</span>
            </button>
          )}
        </div>
      </Allowed>
    </div>
  );
}

/** The kitchen with an eater in the place of the one of the same id; somebody new sits down wherever a seat is free. */
function withEater(kitchen: EditedKitchen, eater: EaterDraft): unknown {
  if (kitchen.eaters.some(({ id }) => id === eater.id))
    return { ...kitchen, eaters: kitchen.eaters.map((each) => (each.id === eater.id ? eater : each)) };
  const taken = new Set<string>();
  const sittings = kitchen.sittings.map((sitting) => {
    const seats = sitting.on.map((day) => `${day} ${sitting.kind}`);
    if (seats.some((seat) => taken.has(seat))) return sitting;
    for (const seat of seats) taken.add(seat);
    return { ...sitting, eaters: [...sitting.eaters, eater.id] };
  });
  return { ...kitchen, eaters: [...kitchen.eaters, eater], sittings };
}

/** The kitchen without an eater, and without the sittings at which nobody else sits. */
function withoutEater(kitchen: EditedKitchen, gone: string): EditedKitchen {
  const sittings = kitchen.sittings
    .map((sitting) => ({ ...sitting, eaters: sitting.eaters.filter((id) => id !== gone) }))
    .filter(({ eaters }) => eaters.length > 0);
  return { ...kitchen, eaters: kitchen.eaters.filter(({ id }) => id !== gone), sittings };
}

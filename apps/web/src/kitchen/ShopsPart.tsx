import { SITTING_KINDS } from "halfloaf/dish";
import type { EditedKitchen } from "halfloaf/kitchen/record";
import type { Shop } from "halfloaf/price";
import { type ReactNode, useState } from "react";
import { Allowed } from "../sharing/Allowed.tsx";
import { RoleNote } from "../sharing/RoleNote.tsx";
import { useFurther } from "../words/useFurther.ts";
import { DaysField } from "./DaysField.tsx";
import { Fold } from "./Fold.tsx";
import { ChoiceField } from "./fields/ChoiceField.tsx";
import { MoneyField } from "./fields/MoneyField.tsx";
import { NumberField } from "./fields/NumberField.tsx";
import { TextField } from "./fields/TextField.tsx";
import { useKitchen } from "./KitchenProvider.tsx";
import { newId } from "./newId.ts";
import { PartForm } from "./PartForm.tsx";
import { useSaving } from "./useSaving.ts";

type Trip = Shop["trip"];

/** A shop while the form is filled in: a figure may be missing or no number yet. */
type ShopDraft = Omit<Shop, "trip"> & {
  readonly trip: { readonly [Key in keyof Trip]: Trip[Key] | undefined };
};

const NEW: ShopDraft = {
  id: "",
  name: "",
  openDays: [1, 2, 3, 4, 5, 6],
  trip: { costMinor: 0, minutes: 30, carryKg: 10 },
  beforeSitting: "evening",
};

/** Where packs are bought, and what a trip there takes. */
export function ShopsPart(): ReactNode {
  const { further, formats } = useFurther("kitchen");
  const { view } = useKitchen();
  const [open, setOpen] = useState<ShopDraft>();
  const [gone, setGone] = useState<{ readonly name: string; readonly packs: number }>();
  const { issues, save } = useSaving();
  const { shops, packs } = view.edited;
  const { kitchen } = further;
  const keep = (draft: ShopDraft): void => {
    const ids = shops.map(({ id }) => id);
    const shop = draft.id === "" ? { ...draft, id: newId(draft.name, ids, "shop") } : draft;
    if (save((edited) => withShop(edited, shop))) setOpen(undefined);
  };
  const countPacks = ({ id }: Pick<Shop, "id">): number => packs.filter((pack) => pack.shop === id).length;
  const taken = open === undefined ? 0 : countPacks(open);
  const remove = (shop: ShopDraft): void => {
    if (!save((edited) => withoutShop(edited, shop.id))) return;
    setGone({ name: shop.name, packs: taken });
    setOpen(undefined);
  };
  return (
    <Fold title={kitchen.shops} brief={shops.map(({ name }) => name).join(", ")}>
      <p className="small soft">{kitchen.shopsNote}</p>
      {open === undefined ? (
        <>
          <ul className="lines">
            {shops.map((shop) => (
              <li key={shop.id} className="line-with-ways">
                <div>
                  {shop.name}
                  <div className="small soft">
                    {[
                      shop.openDays.map((day) => further.weekdaysShort[day - 1]).join(" "),
                      formats.minutes(shop.trip.minutes),
                      kitchen.packsHere(countPacks(shop)),
                    ].join("; ")}
                  </div>
                </div>
                <Allowed to="edited">
                  <button type="button" className="button" onClick={() => setOpen(shop)}>
                    {further.edit}
                    <span className="unseen"> {shop.name}</span>
                  </button>
                </Allowed>
              </li>
            ))}
          </ul>
          {gone !== undefined && <p role="status">{kitchen.shopRemoved(gone.name, gone.packs)}</p>}
          <Allowed to="edited" otherwise={<RoleNote />}>
            <div>
              <button type="button" className="button" onClick={() => setOpen(NEW)}>
                {kitchen.addShop}
              </button>
            </div>
          </Allowed>
        </>
      ) : (
        <PartForm
          issues={issues}
          onSave={() => keep(open)}
          onCancel={() => setOpen(undefined)}
          removal={taken === 0 ? undefined : kitchen.removeShop(taken)}
          onRemove={open.id !== "" && shops.length > 1 ? () => remove(open) : undefined}
        >
          <ShopFields shop={open} onChange={setOpen} />
        </PartForm>
      )}
    </Fold>
  );
}

interface ShopFieldsProps {
  readonly shop: ShopDraft;
  readonly onChange: (shop: ShopDraft) => void;
}

function ShopFields({ shop, onChange }: ShopFieldsProps): ReactNode {
  const { further, words } = useFurther("kitchen");
  const { view } = useKitchen();
  const { kitchen } = further;
  const setTrip = (changed: Partial<ShopDraft["trip"]>): void => {
    const { carryKg, ...trip } = { ...shop.trip, ...changed };
    onChange({ ...shop, trip: carryKg === undefined ? (trip as ShopDraft["trip"]) : { ...trip, carryKg } });
  };
  const before = SITTING_KINDS.find((kind) => kind === shop.beforeSitting) ?? "evening";
  return (
    <>
      <div className="fields">
        <TextField label={kitchen.shopName} value={shop.name} onChange={(name) => onChange({ ...shop, name })} />
        <NumberField
          label={kitchen.tripMinutes}
          value={shop.trip.minutes}
          onChange={(minutes) => setTrip({ minutes })}
          isWhole
        />
        <MoneyField
          label={kitchen.fare}
          value={shop.trip.costMinor}
          currency={view.edited.currency}
          onChange={(costMinor) => setTrip({ costMinor })}
        />
        <NumberField label={kitchen.carry} value={shop.trip.carryKg} onChange={(carryKg) => setTrip({ carryKg })} />
        <ChoiceField
          label={kitchen.homeBefore}
          value={before}
          choices={SITTING_KINDS.map((kind) => [kind, words.sittings[kind]] as const)}
          onChange={(beforeSitting) => onChange({ ...shop, beforeSitting })}
        />
      </div>
      <DaysField days={shop.openDays} onChange={(openDays) => onChange({ ...shop, openDays })} />
    </>
  );
}

function withShop(kitchen: EditedKitchen, shop: ShopDraft): unknown {
  const isKnown = kitchen.shops.some(({ id }) => id === shop.id);
  const shops = isKnown ? kitchen.shops.map((each) => (each.id === shop.id ? shop : each)) : [...kitchen.shops, shop];
  return { ...kitchen, shops };
}

/** Packs of a shop are nowhere without it. */
function withoutShop(kitchen: EditedKitchen, gone: string): EditedKitchen {
  return {
    ...kitchen,
    shops: kitchen.shops.filter(({ id }) => id !== gone),
    packs: kitchen.packs.filter(({ shop }) => shop !== gone),
  };
}

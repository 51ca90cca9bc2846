import type { ReactNode } from "react";
import { writeShared } from "../sharing/shared.ts";
import { forgetShown } from "../shown/ShownBefore.ts";
import { useFurther } from "../words/useFurther.ts";
import type { KitchenOnDevice } from "./device.ts";
import { Fold } from "./Fold.tsx";
import { ChoiceField } from "./fields/ChoiceField.tsx";
import { useDevice, useKitchen } from "./KitchenProvider.tsx";
import { KitchenSession } from "./KitchenSession.ts";
import { saveBackup } from "./saveBackup.ts";

/** Who uses this device, and which kitchens are on it. */
export function DevicePart(): ReactNode {
  const { further } = useFurther("kitchen");
  const { view } = useKitchen();
  const { device, change } = useDevice();
  const { kitchen } = further;
  const { by, ...withoutBy } = device;
  const { open, ...closed } = device;
  const { removed = [] } = device;
  const titleOf = ({ id, title }: KitchenOnDevice): string => (id === open ? view.edited.name : title);
  const takeOff = (gone: KitchenOnDevice): void =>
    change({ ...device, kitchens: device.kitchens.filter(({ id }) => id !== gone.id), removed: [...removed, gone] });
  const bringBack = (back: KitchenOnDevice): void =>
    change({ ...device, kitchens: [...device.kitchens, back], removed: removed.filter(({ id }) => id !== back.id) });
  const deleteForGood = async (gone: KitchenOnDevice): Promise<void> => {
    if (!confirm(kitchen.deleteSure(gone.title)) || !(await saveBackupOf(gone))) return;
    indexedDB.deleteDatabase(gone.id);
    forgetShown();
    writeShared(gone.id, undefined);
    change({ ...device, removed: removed.filter(({ id }) => id !== gone.id) });
  };
  /** Saves a closed kitchen into a file; false where it can't be opened, so that nothing is deleted unsaved. */
  const saveBackupOf = async ({ id, title }: KitchenOnDevice): Promise<boolean> => {
    const opened = await KitchenSession.open(id, { starter: view.tables, device: device.name, expected: true });
    if ("ok" in opened) return false;
    saveBackup(opened.kept, title, view.day);
    await opened.close();
    return true;
  };
  return (
    <Fold title={kitchen.device} brief={view.edited.name}>
      <div className="fields">
        <ChoiceField
          label={kitchen.usedBy}
          value={view.edited.eaters.some(({ id }) => id === by) ? (by ?? "") : ""}
          choices={[["", kitchen.usedByNobody], ...view.edited.eaters.map(({ id, name }) => [id, name] as const)]}
          onChange={(id) => change(id === "" ? withoutBy : { ...device, by: id })}
        />
      </div>
      <h3>{kitchen.kitchens}</h3>
      <ul className="lines">
        {device.kitchens.map((each) => (
          <li key={each.id} className="line-with-ways two-ways">
            <span>{titleOf(each)}</span>
            {each.id === open ? (
              <span className="soft">{kitchen.open}</span>
            ) : (
              <span className="row">
                <button type="button" className="button" onClick={() => change({ ...withoutBy, open: each.id })}>
                  {kitchen.openIt}
                  <span className="unseen"> {each.title}</span>
                </button>
                <button type="button" className="button" onClick={() => takeOff(each)}>
                  {further.remove}
                  <span className="unseen"> {each.title}</span>
                </button>
              </span>
            )}
          </li>
        ))}
      </ul>
      <div>
        <button type="button" className="button" onClick={() => change(closed)}>
          {kitchen.another}
        </button>
      </div>
      {removed.length > 0 && <h3>{kitchen.removedKitchens}</h3>}
      <ul className="lines">
        {removed.map((each) => (
          <li key={each.id} className="line-with-ways two-ways">
            <span>{each.title}</span>
            <span className="row">
              <button type="button" className="button" onClick={() => bringBack(each)}>
                {kitchen.bringBack}
                <span className="unseen"> {each.title}</span>
              </button>
              <button type="button" className="button" onClick={() => void deleteForGood(each)}>
                {kitchen.deleteForGood}
                <span className="unseen"> {each.title}</span>
              </button>
            </span>
          </li>
        ))}
      </ul>
    </Fold>
  );
}

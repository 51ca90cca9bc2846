import type { ReactNode } from "react";
import { BehindNote } from "../thinking/BehindNote.tsx";
import { useFurther } from "../words/useFurther.ts";
import { Fold } from "./Fold.tsx";
import { useKitchen } from "./KitchenProvider.tsx";
import { type KitDraft, KitForm } from "./KitForm.tsx";
import { PartForm } from "./PartForm.tsx";
import { useDraft } from "./useDraft.ts";
import { useSaving } from "./useSaving.ts";

/** What there is to cook with, to be changed. */
export function KitPart(): ReactNode {
  const { further, formats } = useFurther("kitchen");
  const { view } = useKitchen();
  const { draft, setDraft, version } = useDraft<KitDraft>(view.edited.kit);
  const { issues, isSaved, save } = useSaving();
  const { rings } = view.edited.kit;
  return (
    <Fold title={further.kitchen.kit} brief={`${further.kitchen.rings}: ${formats.number(rings)}`}>
      <PartForm issues={issues} isSaved={isSaved} onSave={() => save((kitchen) => ({ ...kitchen, kit: draft }))}>
        <KitForm key={version} kit={draft} onChange={setDraft} />
      </PartForm>
      <BehindNote later="kit" />
    </Fold>
  );
}

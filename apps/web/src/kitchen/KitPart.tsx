import type { ReactNode } from "react";
import { useFurther } from "../words/useFurther.ts";
import { Fold } from "./Fold.tsx";
import { Issues } from "./Issues.tsx";
import { useKitchen } from "./KitchenProvider.tsx";
import { type KitDraft, KitForm } from "./KitForm.tsx";
import { useDraft } from "./useDraft.ts";
import { useSaving } from "./useSaving.ts";

/** What there is to cook with, to be changed. */
export function KitPart(): ReactNode {
  const { further, formats } = useFurther();
  const { view } = useKitchen();
  const { draft, setDraft, version } = useDraft<KitDraft>(view.edited.kit);
  const { issues, isSaved, save } = useSaving();
  const { rings } = view.edited.kit;
  return (
    <Fold title={further.kitchen.kit} brief={`${further.kitchen.rings}: ${formats.number(rings)}`}>
      <form
        className="stack tight"
        onSubmit={(event) => {
          event.preventDefault();
          save((kitchen) => ({ ...kitchen, kit: draft }));
        }}
      >
        <KitForm key={version} kit={draft} onChange={setDraft} />
        <Issues issues={issues} isSaved={isSaved} />
        <div>
          <button type="submit" className="button main">
            {further.save}
          </button>
        </div>
      </form>
    </Fold>
  );
}

import type { ReactNode } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useFurther } from "../words/useFurther.ts";
import { useSyncView } from "./useSyncView.ts";

/** What the server sent back: each with what it was, why, and that it stays on this device. */
export function Returned(): ReactNode {
  const { further } = useFurther("kitchen", "sharing");
  const { session } = useKitchen();
  const { sharing } = further;
  const returned = useSyncView()?.returned ?? [];
  if (returned.length === 0) return null;
  return (
    <section className="stack tight" aria-labelledby="sharing-returned">
      <h3 id="sharing-returned">{sharing.returned(returned.length)}</h3>
      <p>{sharing.returnedRemedy}</p>
      <ul className="lines">
        {returned.map(({ id = "", reason }) => {
          const row = session.kept.events.find(id) ?? session.kept.edits.find(id);
          return (
            <li key={id}>
              {row === undefined ? id : further.kitchen.acts[row.kind]}: {sharing.refusals[reason]}
            </li>
          );
        })}
      </ul>
    </section>
  );
}

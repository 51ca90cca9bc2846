import type { LedgerRow } from "@halfloaf/keep";
import type { Refusal } from "@halfloaf/keep/sync";
import type { ReactNode } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useThingsOf } from "../kitchen/useThingsOf.ts";
import { useFurther } from "../words/useFurther.ts";
import { syncRun } from "./SyncRun.ts";
import { useSyncView } from "./useSyncView.ts";

/** What the server sent back, act by act: what it was and why; to be offered again once that is mended, or dropped here. */
export function Returned(): ReactNode {
  const { further } = useFurther("kitchen", "sharing");
  const { session } = useKitchen();
  const thingsOf = useThingsOf();
  const { sharing } = further;
  const returned = useSyncView()?.returned ?? [];
  if (returned.length === 0) return null;
  const find = (id: string): LedgerRow | undefined => session.kept.events.find(id) ?? session.kept.edits.find(id);
  const acts = new Map<string, Refusal[]>();
  for (const refusal of returned) {
    const act = find(refusal.id ?? "")?.act ?? refusal.id ?? "";
    acts.set(act, [...(acts.get(act) ?? []), refusal]);
  }
  const tell = (refusals: readonly Refusal[]): string => {
    const kinds = refusals.flatMap(({ id = "" }) => find(id)?.kind ?? []);
    const whole = refusals.some(({ reason }) => reason !== "act");
    const reasons = refusals.filter(({ reason }) => !whole || reason !== "act").map(({ reason }) => reason);
    const what = [...new Set(kinds.map((kind) => further.kitchen.acts[kind]))];
    const things = new Set(refusals.flatMap(({ id = "" }) => find(id) ?? []).flatMap(thingsOf));
    const about = things.size === 0 ? "" : ` (${[...things].join(", ")})`;
    return `${what.join(", ")}${about}: ${[...new Set(reasons)].map((reason) => sharing.refusals[reason]).join("; ")}`;
  };
  const drop = (refusals: readonly Refusal[]): void => {
    if (confirm(sharing.dropSure)) void session.kept.drop(refusals.flatMap(({ id }) => id ?? []));
  };
  return (
    <section className="stack tight" aria-labelledby="sharing-returned">
      <h3 id="sharing-returned">{sharing.returned(returned.length)}</h3>
      <p>{sharing.returnedRemedy}</p>
      <ul className="lines">
        {[...acts].map(([act, refusals]) => (
          <li key={act} className="line-with-ways two-ways">
            <span>{tell(refusals)}</span>
            <span className="row">
              <button type="button" className="button" onClick={() => drop(refusals)}>
                {sharing.drop}
              </button>
            </span>
          </li>
        ))}
      </ul>
      <div>
        <button type="button" className="button" onClick={() => syncRun.offerAgain()}>
          {sharing.offerAgain}
        </button>
      </div>
    </section>
  );
}

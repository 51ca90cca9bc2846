import type { Act } from "@halfloaf/keep";
import { type ReactNode, useMemo, useState } from "react";
import { Undo } from "../today/Undo.tsx";
import { useFurther } from "../words/useFurther.ts";
import { Fold } from "./Fold.tsx";
import { useKitchen } from "./KitchenProvider.tsx";
import { today } from "./today.ts";
import { useNames } from "./useNames.ts";

/** So many acts are shown more each time. */
const PAGE = 30;

/** Who did what when, the latest first, and a way to take back the last. */
export function HistoryPart(): ReactNode {
  const { further } = useFurther();
  return (
    <Fold title={further.kitchen.history}>
      <div className="row spread">
        <p className="small soft">{further.kitchen.historyNote}</p>
        <Undo />
      </div>
      <Acts />
    </Fold>
  );
}

function Acts(): ReactNode {
  const { further } = useFurther();
  const { session, view } = useKitchen();
  const [shown, setShown] = useState(PAGE);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new picture of the kitchen is what tells of new acts.
  const acts = useMemo(() => session.kept.history().toReversed(), [session, view]);
  return (
    <>
      <ul className="lines">
        {acts.slice(0, shown).map((act) => (
          <li key={act.id}>
            <ActLine act={act} />
          </li>
        ))}
      </ul>
      {acts.length > shown && (
        <div>
          <button type="button" className="button" onClick={() => setShown(shown + PAGE)}>
            {further.kitchen.earlier}
          </button>
        </div>
      )}
    </>
  );
}

function ActLine({ act: { rows, atMs, by, undoes } }: { readonly act: Act }): ReactNode {
  const { further, formats, language } = useFurther();
  const names = useNames();
  const { acts } = further.kitchen;
  const kinds = [...new Set(rows.map(({ kind }) => acts[kind]))];
  const things = [...new Set(rows.flatMap((row) => aboutWhat(row)))];
  const when = new Date(atMs);
  // What comes from a kitchen's file has no time of its own.
  const time =
    atMs === 0
      ? ""
      : `${formats.day(today(when))}, ${when.toLocaleTimeString(language, { hour: "2-digit", minute: "2-digit" })}`;
  return (
    <div>
      {undoes !== undefined && `${further.kitchen.takenBack}: `}
      {kinds.join(", ")}
      {things.length > 0 && `: ${things.slice(0, 4).join(", ")}${things.length > 4 ? " …" : ""}`}
      <div className="small soft">{[time, by === undefined ? "" : names.eater(by)].filter(Boolean).join(", ")}</div>
    </div>
  );

  function aboutWhat(row: Act["rows"][number]): string[] {
    if (row.kind === "edited") return [row.thing.split("/")[1] ?? row.thing];
    if ("dish" in row && row.dish !== undefined) return [names.dish(row.dish)];
    return "food" in row && row.food !== undefined ? [names.food(row.food)] : [];
  }
}

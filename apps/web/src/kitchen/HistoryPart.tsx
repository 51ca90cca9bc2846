import type { Act } from "@halfloaf/keep";
import { type ReactNode, useMemo, useState } from "react";
import { useFurther } from "../words/useFurther.ts";
import { Fold } from "./Fold.tsx";
import { useKitchen } from "./KitchenProvider.tsx";
import { today } from "./today.ts";
import { useNames } from "./useNames.ts";

/** So many acts are shown more each time. */
const PAGE = 30;
/** So many things that an act was about are named. */
const NAMED = 4;

/** Who did what when, the latest first. */
export function HistoryPart(): ReactNode {
  const { further } = useFurther("kitchen");
  return (
    <Fold title={further.kitchen.history}>
      <p className="small soft">{further.kitchen.historyNote}</p>
      <Acts />
    </Fold>
  );
}

function Acts(): ReactNode {
  const { further } = useFurther("kitchen");
  const { session, view } = useKitchen();
  const [shown, setShown] = useState(PAGE);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new picture of the kitchen is what tells of new acts.
  const [acts, fromFile] = useMemo(() => {
    const all = session.kept.history().toReversed();
    // What comes from a kitchen's file has no time of its own.
    const timed = all.filter(({ atMs }) => atMs > 0);
    return [timed, all.length - timed.length];
  }, [session, view]);
  const isAll = acts.length <= shown;
  return (
    <>
      <ul className="lines">
        {acts.slice(0, shown).map((act) => (
          <li key={act.id}>
            <ActLine act={act} />
          </li>
        ))}
        {isAll && fromFile > 0 && <li>{further.kitchen.fromFile(fromFile)}</li>}
      </ul>
      {!isAll && (
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
  const { further, formats } = useFurther("kitchen");
  const { view } = useKitchen();
  const names = useNames();
  const { acts } = further.kitchen;
  const kinds = [...new Set(rows.map(({ kind }) => acts[kind]))];
  const things = [...new Set(rows.flatMap(aboutWhat))];
  const when = new Date(atMs);
  const time = formats.clock(when.getHours() * 60 + when.getMinutes());
  return (
    <div>
      {undoes !== undefined && `${further.kitchen.takenBack}: `}
      {kinds.join(", ")}
      {things.length > 0 && `: ${things.slice(0, NAMED).join(", ")}${things.length > NAMED ? " …" : ""}`}
      <div className="small soft">
        {[formats.day(today(when)), time, ...(by === undefined ? [] : [names.eater(by)])].join(", ")}
      </div>
    </div>
  );

  function aboutWhat(row: Act["rows"][number]): string[] {
    if (row.kind === "edited") return [nameOfThing(row.thing)];
    if ("dish" in row && row.dish !== undefined) return [names.dish(row.dish)];
    return "food" in row && row.food !== undefined ? [names.food(row.food)] : [];
  }

  function nameOfThing(thing: string): string {
    const [list = "", id] = thing.split("/");
    if (id === undefined) return further.kitchen.things[list] ?? ownName(list);
    if (list === "eaters") return names.eater(id);
    if (list === "shops") return names.shop(id);
    if (list === "packs") return view.edited.packs.find((pack) => pack.id === id)?.label ?? id;
    return list === "foods" || list === "overrides" ? names.food(id) : names.dish(id);
  }

  function ownName(key: string): string {
    const name = further.kitchen[key as keyof typeof further.kitchen];
    return typeof name === "string" ? name : key;
  }
}

import type { Act } from "@halfloaf/keep";
import { type ReactNode, useMemo, useState } from "react";
import { useFurther } from "../words/useFurther.ts";
import { Fold } from "./Fold.tsx";
import { useKitchen } from "./KitchenProvider.tsx";
import { today } from "./today.ts";
import { useNames } from "./useNames.ts";
import { useThingsOf } from "./useThingsOf.ts";

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
  const names = useNames();
  const thingsOf = useThingsOf();
  const { acts } = further.kitchen;
  const kinds = [...new Set(rows.map(({ kind }) => acts[kind]))];
  const things = [...new Set(rows.flatMap(thingsOf))];
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
}

import { type PaceOfKind, paceFactor } from "halfloaf/kitchen";
import { forgetPace, pacesOf } from "halfloaf/kitchen/record";
import type { ReactNode } from "react";
import { Allowed } from "../sharing/Allowed.tsx";
import { RoleNote } from "../sharing/RoleNote.tsx";
import { useFurther } from "../words/useFurther.ts";
import { useKitchen } from "./KitchenProvider.tsx";
import { useNames } from "./useNames.ts";

/** How long steps take each cook against what dishes state, and the way back. */
export default function PaceList(): ReactNode {
  const { further, formats } = useFurther("pace");
  const { session, view } = useKitchen();
  const names = useNames();
  const { pace: said } = further;
  const { edited, state } = view;
  const cooks = pacesOf(edited, state);
  const byHand = Object.entries(edited.pace ?? {});
  const setBack = (kind?: PaceOfKind["kind"]): void => {
    void session.edit((kitchen) => forgetPace(kitchen, state, kind));
  };
  const reckoned = (kind: PaceOfKind["kind"], factor: number): string =>
    said.reckoned(formats.percent(paceFactor(kind, { [kind]: factor })));
  const tell = ({ kind, count, median, factor }: PaceOfKind): string =>
    [said.steps(count), said.took(formats.percent(median)), reckoned(kind, factor)].join("; ");
  const back = (kind: PaceOfKind["kind"]): ReactNode => (
    <Allowed to="edited">
      <button type="button" className="button" onClick={() => setBack(kind)}>
        {said.back}
        <span className="unseen"> {said.kinds[kind]}</span>
      </button>
    </Allowed>
  );
  if (cooks.length === 0 && byHand.length === 0) return <p>{said.none}</p>;
  return (
    <>
      <p className="small soft">{said.note}</p>
      {cooks.map(({ by, learned }) => (
        <section key={by ?? ""} className="stack tight" aria-label={by === undefined ? said.someone : names.eater(by)}>
          <h3>{by === undefined ? said.someone : names.eater(by)}</h3>
          <ul className="lines">
            {learned.map((line) => (
              <li key={line.kind} className="line-with-ways">
                <div>
                  {said.kinds[line.kind]}
                  <div className="small soft">{tell(line)}</div>
                </div>
                {back(line.kind)}
              </li>
            ))}
          </ul>
        </section>
      ))}
      {byHand.length > 0 && (
        <section className="stack tight" aria-label={said.byHand}>
          <h3>{said.byHand}</h3>
          <ul className="lines">
            {byHand.map(([kind, factor]) => (
              <li key={kind} className="line-with-ways">
                <div>
                  {said.kinds[kind as PaceOfKind["kind"]]}
                  <div className="small soft">{reckoned(kind as PaceOfKind["kind"], factor)}</div>
                </div>
                {back(kind as PaceOfKind["kind"])}
              </li>
            ))}
          </ul>
        </section>
      )}
      <Allowed to="edited" otherwise={<RoleNote />}>
        <div>
          <button type="button" className="button" onClick={() => setBack()}>
            {said.allBack}
          </button>
        </div>
      </Allowed>
    </>
  );
}

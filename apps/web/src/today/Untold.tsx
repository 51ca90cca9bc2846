import { type UntoldJob, untoldJobs } from "halfloaf/kitchen/record";
import { type ReactNode, useMemo, useState } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { Unfolding } from "../kitchen/Unfolding.tsx";
import { Allowed } from "../sharing/Allowed.tsx";
import { useFurther } from "../words/useFurther.ts";
import { Job } from "./Job.tsx";
import { tellDone } from "./tellDone.ts";

/** What was planned on the days before and nobody told anything of, to be told now: accounts and stores are right only then. */
export function Untold(): ReactNode {
  const { further, formats } = useFurther("today");
  const { session, view } = useKitchen();
  const { edited, state, tables, day } = view;
  const [isBusy, setBusy] = useState(false);
  const untold = useMemo(() => untoldJobs(edited, state, tables, day), [edited, state, tables, day]);
  if (untold.length === 0) return null;
  // Each takes from what the one before left.
  const tellAll = async (): Promise<void> => {
    setBusy(true);
    for (const { job, week } of untold)
      await session.write((pen) => (session.view === undefined ? [] : tellDone(job, week, session.view, pen)));
    setBusy(false);
  };
  return (
    <Unfolding
      className="fold sheet"
      summary={
        <>
          <h2>{further.untold.title}</h2>
          <span className="small soft">{further.untold.count(untold.length)}</span>
        </>
      }
    >
      <div className="stack fold-body">
        <p className="small soft">{further.untold.about}</p>
        {untold.some(({ job, shortPortions = 0 }) => shortPortions < job.portions) && (
          <Allowed to="cooked">
            <div>
              <button type="button" className="button" disabled={isBusy} onClick={() => void tellAll()}>
                {further.untold.all}
              </button>
            </div>
          </Allowed>
        )}
        <ul className="lines">
          {untold.map((each) => (
            <li key={keyOf(each)}>
              <Job
                job={each.job}
                week={each.week}
                day={formats.day(each.job.date)}
                shortPortions={each.shortPortions}
                isToCook={each.isToCook}
              />
            </li>
          ))}
        </ul>
      </div>
    </Unfolding>
  );
}

function keyOf({ job: { date, sitting, kind, dish } }: UntoldJob): string {
  return [date, sitting, kind, dish].join(" ");
}

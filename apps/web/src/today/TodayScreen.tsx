import { useUpList as listUseUp, menuOn, remindersOf } from "halfloaf/kitchen/record";
import { type ReactNode, useMemo } from "react";
import { Link } from "wouter";
import { tripsDue } from "../buying/tripsDue.ts";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { LongList } from "../kitchen/LongList.tsx";
import { useNames } from "../kitchen/useNames.ts";
import { Awaited } from "../loading/Awaited.tsx";
import { lazily } from "../loading/lazily.ts";
import { useWords } from "../words/WordsContext.tsx";
import { cookingsOf } from "../work/cookingsOf.ts";
import "../kitchen/fields/fields.css";
import { Follow } from "./Follow.tsx";
import { Job } from "./Job.tsx";
import { ToBuy } from "./ToBuy.tsx";
import { Undo } from "./Undo.tsx";
import { Untold } from "./Untold.tsx";
import { UseUp } from "./UseUp.tsx";

const WeekBehind = lazily(() => import("../thinking/WeekBehind.tsx"));

/** What to do next, and what must be used up. */
export default function TodayScreen(): ReactNode {
  const { words, formats } = useWords();
  const { view } = useKitchen();
  const names = useNames();
  const { edited, state, tables, day, menu } = view;
  const reminders = useMemo(() => remindersOf(edited, state, tables, day), [edited, state, tables, day]);
  const useUp = useMemo(() => listUseUp(state, day).filter(({ daysLeft }) => daysLeft !== undefined), [state, day]);
  // What is begun ahead may be for a week that begins tomorrow.
  const jobs = reminders.flatMap((reminder) => {
    const week = reminder.kind === "job" ? menuOn(state, reminder.job.date)?.week : undefined;
    return reminder.kind === "job" && week !== undefined ? [{ ...reminder, week }] : [];
  });
  const cookings = cookingsOf(jobs.map(({ job }) => job));
  const trips = useMemo(() => (menu === undefined ? [] : tripsDue(state, menu.week, day)), [state, menu, day]);
  const counts = reminders.flatMap((reminder) => (reminder.kind === "to-count" ? [reminder.count] : []));
  const nameOf = (id: string): string => {
    const lot = state.lots.get(id);
    return names.food(lot?.food ?? lot?.cooked?.dish ?? id);
  };
  const next = (
    <section className="stack tight" aria-labelledby="jobs">
      <h2 id="jobs">{words.today.next}</h2>
      {jobs.length + trips.length === 0 && <p className="soft">{words.today.allDone}</p>}
      <ul className="lines">
        {trips.map((due) => (
          <li key={due.at}>
            <ToBuy due={due} />
          </li>
        ))}
        {jobs.map(({ job, week, isLate = false, shortPortions, isToCook }) => (
          <li key={`${job.kind} ${job.date} ${job.sitting} ${job.dish} ${"step" in job ? job.step : ""}`}>
            <Job
              job={job}
              isLate={isLate}
              shortPortions={shortPortions}
              isToCook={isToCook}
              week={week}
              together={cookings.find(({ sitting }) => sitting === job.sitting)?.wanted ?? []}
            />
          </li>
        ))}
      </ul>
    </section>
  );
  return (
    <div className="stack broad-page">
      <div className="row spread">
        <h1>{formats.longDay(day)}</h1>
        <Undo />
      </div>
      <Awaited isQuiet>
        <WeekBehind isUrgentOnly />
      </Awaited>
      <div className="stack beside">
        {menu === undefined ? (
          <div className="stack">
            <p className="sheet">
              {words.today.noMenu} <Link href="/menu">{words.menu.plan}</Link>
            </p>
            {jobs.length > 0 && next}
          </div>
        ) : (
          next
        )}
        <div className="stack">
          <Untold />
          <Follow />
          <UseUp lines={useUp} />
          {counts.length > 0 && (
            <section className="stack tight" aria-labelledby="counts">
              <h2 id="counts">{words.today.toCount}</h2>
              <LongList className="lines">
                {counts.map(({ lot, shortG }) => (
                  <li key={lot}>{words.today.short(nameOf(lot), formats.mass(shortG))}</li>
                ))}
              </LongList>
              <Link href="/stores" className="way-back">
                {words.today.countThere}
              </Link>
            </section>
          )}
        </div>
      </div>
    </div>
  );
}

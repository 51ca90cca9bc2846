import type { DayJob, WeekPlan } from "halfloaf/kitchen";
import { beginAhead } from "halfloaf/kitchen/record";
import type { ReactNode } from "react";
import { Link } from "wouter";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useNames } from "../kitchen/useNames.ts";
import { Allowed } from "../sharing/Allowed.tsx";
import type { DishWanted } from "../thinking/Thinker.ts";
import { useWords } from "../words/WordsContext.tsx";
import { CautionText } from "../work/CautionText.tsx";
import { workPath } from "../work/workPath.ts";
import { Otherwise } from "./Otherwise.tsx";
import { tellDone } from "./tellDone.ts";

interface JobProps {
  readonly job: DayJob;
  readonly week: WeekPlan;
  /** All that is cooked for the sitting of the job, itself among it; absent where it is over. */
  readonly together?: readonly DishWanted[];
  /** Its day, where that is not today. */
  readonly day?: string;
  /** True where it should have begun before its week was accepted. */
  readonly isLate?: boolean;
  /** Portions of it that the stores do not have; absent where all are there or it is cooked anew. */
  readonly shortPortions?: number | undefined;
  /** True where its cooking is among the jobs of the day and comes first. */
  readonly isToCook?: boolean | undefined;
}

/** One thing to do today, and what to tell of it when it is done. */
export function Job({
  job,
  week,
  together,
  day,
  isLate = false,
  shortPortions = 0,
  isToCook = false,
}: JobProps): ReactNode {
  const { words, formats } = useWords();
  const { session, view } = useKitchen();
  const names = useNames();
  const tellPortions = (portions: number): string => words.today.portions(portions, formats.number(portions));
  const sitting = words.sittings[job.sitting];
  const eaters = week.sittings
    .filter(({ date, kind }) => date === job.date && kind === job.sitting)
    .flatMap((each) => each.eaters);
  if (!("portions" in job)) {
    const foods = job.foods.map((food) => names.food(food)).join(", ");
    const { cautions } = job;
    const kind = cautions === undefined ? job.kind : "thawAtOnce";
    return (
      <div className="stack tight">
        <h3>{words.today.jobs[kind](foods === "" ? names.dish(job.dish) : foods)}</h3>
        {job.text !== undefined && <p>{job.text}</p>}
        {cautions !== undefined && <CautionsOfJob cautions={cautions} />}
        {isLate && <p className="small caution">{words.today.late}</p>}
        <p className="soft small">{words.today.for(names.dish(job.dish), formats.weekday(job.date), sitting)}</p>
        <Allowed to="begun">
          <div>
            <button
              type="button"
              className="button"
              onClick={() => void session.write((pen) => [...beginAhead(view.state, week, job, view.day, pen)])}
            >
              {words.today.begun}
            </button>
          </div>
        </Allowed>
      </div>
    );
  }
  const isNone = shortPortions >= job.portions;
  return (
    <div className="stack tight">
      <p className="soft small">{day === undefined ? sitting : `${day}, ${sitting}`}</p>
      <h3>{words.today.jobs[job.kind](names.dish(job.dish))}</h3>
      <p className="small">{tellPortions(job.portions)}</p>
      {"cautions" in job && <CautionsOfJob cautions={job.cautions} />}
      {shortPortions > 0 && !isNone && (
        <p className="small">{words.today.part(tellPortions(job.portions - shortPortions))}</p>
      )}
      {isNone && isToCook ? (
        <p className="small soft">{words.today.cookFirst}</p>
      ) : isNone ? (
        <p className="small">
          {words.today.none} <Link href="/menu">{words.today.planRest}</Link>.
        </p>
      ) : (
        <div className="row">
          <Allowed to="cooked">
            <button
              type="button"
              className="button main"
              onClick={() => void session.write((pen) => tellDone(job, week, view, pen))}
            >
              {job.kind === "cook" ? words.today.cooked : words.today.eaten}
            </button>
          </Allowed>
          {job.kind === "cook" && together !== undefined && (
            <Link className="button way" href={workPath(together)}>
              {words.screens.work}
            </Link>
          )}
        </div>
      )}
      <Allowed to="skipped">
        <Otherwise job={job} eaters={eaters} />
      </Allowed>
    </div>
  );
}

interface CautionsOfJobProps {
  readonly cautions: readonly Pick<WeekPlan["cautions"][number], "code" | "text" | "authority">[];
}

function CautionsOfJob({ cautions }: CautionsOfJobProps): ReactNode {
  return cautions.map((caution) => (
    <p key={`${caution.code} ${caution.text}`} className="small caution">
      <CautionText caution={caution} />
    </p>
  ));
}

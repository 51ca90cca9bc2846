import { tellCount, tellDay, tellMinutes, tellWeekday } from "@halfloaf/words/en";
import type { WeekPlan } from "halfloaf/kitchen";
import { keepTogether, spread, wrapBehind } from "../output/layout.ts";
import { pad } from "../output/textWidth.ts";
import { tellTaken } from "../words/takenWords.ts";
import { headingOf, moneyOf, type WeekPage } from "./WeekPage.ts";

type Sitting = WeekPlan["sittings"][number];

/** Room of the longest kind of sitting and a gap. */
const LEAD = 11;

/** The menu by day: each sitting with its dish, its minutes and what each plate costs. */
export function layMenu(page: WeekPage): string[] {
  const { sittings } = page.plan;
  const dates = [...new Set(sittings.map(({ date }) => date))];
  return [
    headingOf(page, "Menu"),
    ...dates.flatMap((date) => [
      "",
      ...layDay(
        page,
        sittings.filter((sitting) => sitting.date === date),
      ),
    ]),
  ];
}

function layDay(page: WeekPage, sittings: readonly Sitting[]): string[] {
  const [first] = sittings;
  if (first === undefined) return [];
  const handsOn = sittings.reduce((sum, { handsOnMinutes }) => sum + handsOnMinutes, 0);
  const head = spread(tellDay(first.date), `${tellMinutes(handsOn)} hands-on`, page.width);
  return [...head.map(page.paint.strong), ...sittings.flatMap((sitting) => laySitting(page, sitting))];
}

function laySitting(page: WeekPage, sitting: Sitting): string[] {
  const { names, width, paint } = page;
  const title = wrapBehind(pad(`  ${sitting.kind}`, LEAD), names.dish(sitting.dish), width);
  const plates = sitting.eaters.map((id, at) =>
    keepTogether(`${names.eater(id)} ${moneyOf(page, sitting.plateMinor[at] ?? 0)}`),
  );
  const details = [...tellWork(page, sitting), ...(plates.length > 0 ? [plates.join(", ")] : [])].join("; ");
  return [...title, ...wrapBehind(" ".repeat(LEAD), details, width).map(paint.quiet)];
}

function tellWork({ plan, begunAhead, names }: WeekPage, sitting: Sitting): string[] {
  const batch = plan.batches[sitting.batch];
  const servings = plan.sittings.filter((other) => other.batch === sitting.batch);
  const work = sitting.leftover
    ? `left over from ${batch === undefined ? "before" : `${tellWeekday(batch.date)} ${batch.kind}`}`
    : batch?.putBy !== undefined
      ? `put by, from the ${batch.putBy}`
      : `${keepTogether(`${tellMinutes(sitting.handsOnMinutes)} hands-on`)}, ${keepTogether(`ready in ${tellMinutes(sitting.elapsedMinutes)}`)}`;
  const beside = (sitting.leftover ? [] : (batch?.together ?? [])).flatMap((at) => plan.batches[at]?.dish ?? []);
  const later = servings.length - 1;
  const taken = batch === undefined || sitting.leftover ? "" : tellTaken(batch, names);
  return [
    ...(sitting.packed ? ["packed"] : []),
    ...(!sitting.leftover && begunAhead.has(sitting.dish) ? [keepTogether("begun ahead")] : []),
    ...(taken === "" ? [] : [`with ${taken}`]),
    work,
    ...(beside.length > 0 ? [`cooked at once with ${beside.map(names.dish).join(" and ")}`] : []),
    ...(!sitting.leftover && later > 0 ? [`cooked for ${tellCount(later, "more sitting")}`] : []),
  ];
}

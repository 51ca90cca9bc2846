import { tellCount } from "@halfloaf/words/en";
import { type WhyNot, whyNot } from "halfloaf/menu";
import { tellImpossible } from "../week/tellNoPlan.ts";
import { listHindrances } from "../words/unfitWords.ts";
import type { WhyReport } from "./WhyReport.ts";
import { REASON_SEARCH, refer, tellExtra, tellSitting, type WhyTask } from "./WhyTask.ts";

type OtherDishReason = NonNullable<WhyReport["otherDishes"]>[number];

/** Why a dish does not stand at the sitting of an index, and what it would do there. */
export function reasonOtherDish(task: WhyTask, id: string, sitting: number): OtherDishReason {
  const { problem } = task.stated;
  const dish = (problem.sittings[sitting]?.dishes ?? []).find((at) => problem.dishes[at]?.id === id);
  const base = { sitting: refer(task, sitting), dish: id };
  if (dish === undefined) return { ...base, outcome: "unfit", sentences: [tellUnfit(task, id, sitting)] };
  const why = whyNot(problem, task.plan, dish, sitting, REASON_SEARCH);
  return {
    ...base,
    outcome: why.kind,
    ...(why.kind === "dearer" && { extraMinor: Math.round(why.extraMinor) }),
    sentences: tell(task, why, sitting),
  };
}

/** A dish of the tables that is none of the problem's at this sitting, by what hinders it alone. */
function tellUnfit({ kitchen, tables, stated, names }: WhyTask, id: string, sitting: number): string {
  const own = tables.dishes.filter((dish) => dish.id === id);
  const [hindrance] = listHindrances(
    kitchen,
    { ...tables, dishes: own },
    { ...stated, problem: { ...stated.problem, sittings: [] } },
    sitting,
    names,
  );
  const kind = stated.sittings[sitting]?.kind ?? "such a sitting";
  if (hindrance === undefined) return `It is not meant for "${kind}".`;
  return `It can't be had there: ${hindrance.text}.`;
}

function tell(task: WhyTask, why: WhyNot, sitting: number): string[] {
  switch (why.kind) {
    case "served":
      return ["It stands there."];
    case "unfit":
      return [`It can't be served at ${tellSitting(task, sitting)}: ${why.faults.map(tellUnfitFault).join("; ")}.`];
    case "dearer": {
      const changed = countChanges(task, why.found.plan, sitting);
      const others = changed === 0 ? "with all else as it is" : `with ${tellCount(changed, "other sitting")} changed`;
      return [`The best plan found with it there is ${tellExtra(task, why.extraMinor)}, ${others}.`];
    }
    case "breaks":
      return ["No plan was found with it there.", ...tellImpossible(why.why, task).map(({ sentence }) => sentence)];
  }
}

function tellUnfitFault({ code }: { readonly code: string }): string {
  return code === "packed" ? "it must be eaten cold there and taken along" : "it does not suit that sitting";
}

function countChanges({ plan }: WhyTask, other: WhyTask["plan"], but: number): number {
  const dishesOf = (one: WhyTask["plan"]): Map<number, number> =>
    new Map(one.batches.flatMap(({ dish, sittings }) => sittings.map((k) => [k, dish] as const)));
  const before = dishesOf(plan);
  return [...dishesOf(other)].filter(([k, dish]) => k !== but && before.get(k) !== dish).length;
}

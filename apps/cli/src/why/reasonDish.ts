import { tellMass } from "@halfloaf/words/en";
import { type FoundPlan, type SharedLot, type WhyDish, whyDish } from "halfloaf/menu";
import type { WhyReport } from "./WhyReport.ts";
import { REASON_SEARCH, refer, tellExtra, tellSitting, type WhyTask } from "./WhyTask.ts";

type DishReason = NonNullable<WhyReport["dishes"]>[number];

/** Less than this of a food is not worth a word (g). */
const LEAST_G = 1;

/** Why the plan has the dish that it has at the sitting of an index; plans met on the way are added to `known`. */
export function reasonDish(task: WhyTask, sitting: number, known: FoundPlan[]): DishReason {
  const why = whyDish(task.stated.problem, task.plan, sitting, { ...REASON_SEARCH, known });
  if (why === undefined) throw new RangeError(`the plan serves nothing at sitting ${sitting}`);
  const { withoutHere, withoutAnywhere } = why;
  for (const { found } of [withoutHere, withoutAnywhere]) if (found) known.push(found);
  return {
    sitting: refer(task, sitting),
    dish: task.stated.problem.dishes[why.dish]?.id ?? "",
    shares: why.lots.map((lot) => toShare(task, lot)),
    ...(withoutHere.extraMinor !== undefined && { withoutHereMinor: Math.round(withoutHere.extraMinor) }),
    ...(withoutAnywhere.extraMinor !== undefined && { withoutAnywhereMinor: Math.round(withoutAnywhere.extraMinor) }),
    sentences: [...tellShares(task, why), ...tellWithout(task, why)],
  };
}

function toShare(
  task: WhyTask,
  { lot, food, massG, withBatches, finishes, savedFromWasteG }: SharedLot,
): DishReason["shares"][number] {
  return {
    food: task.stated.foods[food]?.id ?? "",
    from: "stock" in lot ? "stores" : "bought",
    massG,
    with: withBatches.map((batch) => refer(task, firstOf(task, batch))),
    finishes,
    savedFromWasteG,
  };
}

function firstOf({ plan }: WhyTask, batch: number): number {
  return plan.batches[batch]?.sittings[0] ?? -1;
}

function tellShares(task: WhyTask, { lots, batch }: WhyDish): string[] {
  const { names, stated, plan } = task;
  const nameOf = ({ food }: SharedLot): string => names.food(stated.foods[food]?.id ?? "");
  const servings = plan.batches[batch]?.sittings ?? [];
  const shared = lots.filter(({ withBatches, isLasting }) => !isLasting && withBatches.length > 0);
  const finished = lots.filter(({ finishes, isLasting }) => finishes && !isLasting).map(nameOf);
  const saved = lots
    .filter(({ savedFromWasteG }) => savedFromWasteG >= LEAST_G)
    .map((lot) => `${tellMass(lot.savedFromWasteG)} of ${nameOf(lot)}`);
  const others = [...new Set(shared.flatMap(({ withBatches }) => withBatches))].map((one) => firstOf(task, one));
  return [
    ...(servings.length > 1 ? [`Cooked once for ${servings.map((k) => tellSitting(task, k)).join(" and ")}.`] : []),
    ...(shared.length > 0
      ? [
          `Shares packs of ${listed([...new Set(shared.map(nameOf))])} with ${others.length === 1 ? `another cooking, for ${tellSitting(task, others[0] as number)}` : `${others.length} other cookings`}.`,
        ]
      : []),
    ...(finished.length > 0 ? [`Finishes ${listed([...new Set(finished)])}.`] : []),
    ...(saved.length > 0 ? [`Uses up what would go off: ${listed(saved)}.`] : []),
  ];
}

function tellWithout(task: WhyTask, { withoutHere, withoutAnywhere }: WhyDish): string[] {
  const tell = (what: string, extraMinor: number | undefined): string =>
    extraMinor === undefined
      ? `No plan was found ${what}.`
      : `The best plan found ${what} is ${tellExtra(task, extraMinor)}.`;
  return [
    tell("with another dish at this sitting", withoutHere.extraMinor),
    tell("with this dish at no sitting", withoutAnywhere.extraMinor),
  ];
}

/** "a, b and c". */
export function listed(texts: readonly string[]): string {
  return texts.length < 2 ? texts.join("") : `${texts.slice(0, -1).join(", ")} and ${texts.at(-1)}`;
}

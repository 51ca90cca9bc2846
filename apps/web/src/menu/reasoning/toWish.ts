import type { WeekChange, WeekPlan } from "halfloaf/kitchen";

/** What is asked of a week whose sitting at a position is to have a dish; its eaters tell it from others of its kind. */
export function toWish(
  { sittings }: Pick<WeekPlan, "sittings">,
  to: number,
  dish: string,
): Extract<WeekChange, { kind: "want" }> | undefined {
  const target = sittings[to];
  if (target === undefined) return undefined;
  const { date, kind, eaters } = target;
  return { kind: "want", dish, at: { date, kind, eater: eaters[0] as string } };
}

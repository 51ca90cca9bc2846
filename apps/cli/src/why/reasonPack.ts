import { tellCount, tellMass } from "@halfloaf/words/en";
import { type PackHindrance, type PackOption, whyPack } from "halfloaf/menu";
import { harmless } from "../output/harmless.ts";
import { listed } from "./reasonDish.ts";
import type { WhyReport } from "./WhyReport.ts";
import { REASON_SEARCH, tellAmount, tellExtra, type WhyTask } from "./WhyTask.ts";

type PackReason = NonNullable<WhyReport["packs"]>[number];
type PackChoice = PackReason["chosen"];

/** Packs tried with a menu that stays have little to search. */
const MOVES = 1000;

const HINDRANCES: Readonly<Record<PackHindrance, string>> = {
  "no-trip": "the plan does not go there when it is sold, and no plan with this menu was found that does",
  "too-late": "the plan goes there after it is first needed, and no plan with this menu was found that goes sooner",
  limits: "no plan with this menu was found that keeps the other limits",
};

/** Why a food is bought in the packs that it is bought in; undefined where the plan buys none of it. */
export function reasonPack(task: WhyTask, food: number): PackReason | undefined {
  const why = whyPack(task.stated.problem, task.plan, food, { ...REASON_SEARCH, moves: MOVES });
  if (why === undefined) return undefined;
  const chosen = toChoice(task, why.chosen);
  const others = why.others.map((option) => toChoice(task, option));
  const impossible = why.impossible.flatMap(({ pack, hindrance }) => {
    const facts = task.stated.packs[pack];
    return facts === undefined ? [] : [{ facts, hindrance }];
  });
  return {
    food: task.stated.foods[food]?.id ?? "",
    chosen,
    others,
    impossible: impossible.map(({ facts, hindrance }) => ({ pack: facts.id, hindrance })),
    sentences: [
      `Bought: ${tellChoice(task, chosen)}.`,
      ...others.map((other) => `Instead ${tellChoice(task, other)}: the plan is ${tellExtra(task, other.extraMinor)}.`),
      ...impossible.map(({ facts, hindrance }) => {
        return `Not with ${harmless(facts.label)} (${task.names.shop(facts.shop)}) alone: ${HINDRANCES[hindrance]}.`;
      }),
      ...(others.length + impossible.length === 0 ? ["No other pack of it is for sale."] : []),
    ],
  };
}

function toChoice({ stated }: WhyTask, { packs, tillMinor, leftG, wasteG, extraMinor }: PackOption): PackChoice {
  return {
    packs: packs.map(({ pack, count }) => {
      const facts = stated.packs[pack];
      if (facts === undefined) throw new RangeError(`there is no pack ${pack}`);
      return { pack: facts.id, label: facts.label, shop: facts.shop, count };
    }),
    tillMinor: Math.round(tillMinor),
    leftG,
    wasteG,
    extraMinor: Math.round(extraMinor),
  };
}

function tellChoice(task: WhyTask, { packs, tillMinor, leftG, wasteG }: PackChoice): string {
  const bought = packs.map(
    ({ label, shop, count }) => `${tellCount(count, "pack")} of ${harmless(label)} (${task.names.shop(shop)})`,
  );
  const rests = [
    ...(leftG >= 1 ? [`${tellMass(leftG)} left over`] : []),
    ...(wasteG >= 1 ? [`${tellMass(wasteG)} thrown away`] : []),
  ];
  const rest = rests.length === 0 ? "nothing left" : listed(rests);
  return `${listed(bought)}, ${tellAmount(task, tillMinor)} at the till, ${rest}`;
}

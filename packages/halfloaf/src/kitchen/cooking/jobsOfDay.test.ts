import { expect, test } from "vitest";
import { makeStep } from "../../dish/dish.testing.ts";
import type { WeekPlan } from "../weekPlan.ts";
import { dishOf, wishFor } from "./cooking.testing.ts";
import { type DayJob, jobsOfDay } from "./jobsOfDay.ts";

const { tables } = wishFor([]);
const keeps = { fridgeDays: 2, authority: "common practice, no source" };
const stew = dishOf(
  "stew",
  [
    makeStep("soak", 720, { kind: "soak", hands: "none", ahead: true, foods: ["barley"] }),
    makeStep("simmer", 40, { kind: "simmer", hands: "eye", kit: ["ring", "pot"], after: ["soak"], foods: ["chicken"] }),
  ],
  { keeps, served: ["hot", "cold"] },
);
const overnight = dishOf("overnight", [
  makeStep("stir", 5, { foods: ["barley"] }),
  makeStep("swell", 480, { kind: "chill", hands: "none", after: ["stir"], ahead: true }),
]);

const sitting = (date: string, kind: "morning" | "midday" | "evening", batch: number, leftover: boolean, heat = true) =>
  ({ date, kind, batch, leftover, heat, packed: !heat, portions: 2 }) as WeekPlan["sittings"][number];
const batch = (
  dish: string,
  date: string,
  kind: "morning" | "evening",
  elapsedMinutes: number,
  uses: readonly object[] = [],
) => ({ dish, date, kind, portions: 4, elapsedMinutes, uses }) as WeekPlan["batches"][number];

const week = {
  from: "2026-12-01",
  batches: [
    batch("stew", "2026-12-01", "evening", 40, [{ lot: "cold-chicken", food: "chicken", massG: 300, costMinor: 200 }]),
    batch("overnight", "2026-12-02", "morning", 0),
    batch("unheard-of", "2026-12-01", "evening", 10),
  ],
  sittings: [
    sitting("2026-12-01", "evening", 0, false),
    sitting("2026-12-02", "morning", 1, false),
    sitting("2026-12-02", "midday", 0, true, false),
    sitting("2026-12-02", "evening", 0, true),
  ],
};
const kitchen = {
  authorities: { intake: "efsa" as const, safety: "strictest" as const },
  putBy: [],
  stores: [
    {
      id: "cold-chicken",
      food: "chicken",
      place: "freezer" as const,
      boughtOn: "2026-11-20",
      massG: 300,
      costMinor: 200,
    },
  ],
};
const jobs = (date: string) => jobsOfDay(week, kitchen, { ...tables, dishes: [stew, overnight] }, date);
const brief = (job: DayJob) => `${job.kind} ${job.dish} ${job.beforeMinutes} for ${job.date} ${job.sitting}`;

test("soaks and what thaws come on the day they must be begun, at the latest", () => {
  expect(jobs("2026-11-30").map(brief)).toEqual(["thaw stew 1480 for 2026-12-01 evening"]);
  expect(jobs("2026-11-30")[0]).toMatchObject({ foods: ["chicken"], batch: 0 });
});

test("raw food from the freezer that no evening before was there to thaw is told on the first day, with how it thaws at once", () => {
  const [thaw] = jobs("2026-12-01").filter(({ kind }) => kind === "thaw");
  expect(thaw && brief(thaw)).toBe("thaw stew 160 for 2026-12-01 evening");
  expect(thaw).toMatchObject({ foods: ["chicken"], cautions: [{ code: "thaw-at-once" }] });
  const at = { ...tables, dishes: [stew, overnight] };
  const early = { ...week, from: "2026-11-30" };
  expect(jobsOfDay(early, kitchen, at, "2026-12-01").filter(({ kind }) => kind === "thaw")).toEqual([]);
  const fromFrozen = new Map(tables.foods);
  const chicken = fromFrozen.get("chicken");
  if (chicken === undefined) throw new Error("no chicken");
  fromFrozen.set("chicken", { ...chicken, keeping: { ...chicken.keeping, unopened: { freezer: 90 } } });
  const fingers = jobsOfDay(week, kitchen, { ...at, foods: fromFrozen }, "2026-12-01");
  expect(fingers.filter(({ kind }) => kind === "thaw")).toEqual([]);
  const inFridge = { ...kitchen, stores: kitchen.stores.map((lot) => ({ ...lot, place: "fridge" as const })) };
  expect(jobsOfDay(week, inFridge, at, "2026-12-01").filter(({ kind }) => kind === "thaw")).toEqual([]);
});

test("a day has its cooking, what is soaked for it, and what the next morning wants the evening before", () => {
  expect(jobs("2026-12-01").map(brief)).toEqual([
    "soak stew 760 for 2026-12-01 evening",
    "thaw stew 160 for 2026-12-01 evening",
    "cook stew 40 for 2026-12-01 evening",
    "ahead overnight 485 for 2026-12-02 morning",
    "ahead overnight 480 for 2026-12-02 morning",
  ]);
});

test("leftovers are heated through where there is heat, else taken out cold, each with its cautions", () => {
  const left = jobs("2026-12-02").filter(({ kind }) => kind === "re-heat" || kind === "take-out");
  expect(left.map(brief)).toEqual(["take-out stew 0 for 2026-12-02 midday", "re-heat stew 0 for 2026-12-02 evening"]);
  const codes = left.map((job) => ("cautions" in job && job.cautions ? job.cautions.map(({ code }) => code) : []));
  expect(codes).toEqual([["eat-within"], ["eat-within", "re-heat", "re-heat-times"]]);
  expect(left[1]).toMatchObject({ cookedOn: "2026-12-01", portions: 2 });
});

test("a day outside the plan has nothing to do", () => {
  expect(jobs("2026-12-09")).toEqual([]);
});

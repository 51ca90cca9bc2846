import { loadDemoKitchens, loadStarterTables } from "@halfloaf/data";
import fc from "fast-check";
import { type Kitchen, type KitchenProblem, parseKitchen, parseTables, toMenuProblem } from "halfloaf/kitchen";
import type { LimitReading, MenuLimit } from "halfloaf/menu";
import { describe, expect, test } from "vitest";
import type { Knob } from "./Told.ts";
import { keepShort, nameKnob, toWayOut } from "./toKnobs.ts";
import { turnKnobs } from "./turnKnobs.ts";

const tables = parseTables(loadStarterTables());
const kitchen = parseKitchen(loadDemoKitchens().find(({ name }) => name === "one-ring")?.content);
if (!tables.ok || !kitchen.ok) throw new Error("the starter data are faulty");
const state = (of: Kitchen): KitchenProblem => toMenuProblem(of, tables.value, of.startsOn, 7);

const LIMITS: readonly MenuLimit[] = [
  { kind: "budget" },
  { kind: "hands-on", day: 2 },
  { kind: "elapsed", sitting: 3 },
  { kind: "energy", profile: 0, day: 4 },
  { kind: "uses", dish: 0 },
  { kind: "main", main: 0 },
  { kind: "distinct" },
  { kind: "trips" },
  { kind: "pot", dish: 0, sitting: 0 },
  { kind: "fridge" },
  { kind: "carry", trip: 0 },
];

/** What the problem allows of each limit. */
function allowedIn({ problem }: KitchenProblem, limit: MenuLimit): number | undefined {
  const { limits } = problem;
  switch (limit.kind) {
    case "budget":
      return limits.budgetMinor;
    case "hands-on":
      return limits.handsOnMinutes[limit.day];
    case "elapsed":
      return problem.sittings[limit.sitting]?.minutes;
    case "energy":
      return limits.energyTolerance;
    case "uses":
      return problem.dishes[limit.dish]?.maxUses;
    case "main":
      return limits.mainMax;
    case "distinct":
      return -limits.distinct;
    case "trips":
      return limits.maxTrips;
    case "pot":
      return limits.batchPortions;
    case "fridge":
      return limits.fridgeLitres;
    case "carry":
      return problem.trips[limit.trip]?.carryG;
    default:
      return undefined;
  }
}

describe("figures set to what is enough", () => {
  const excessOf = (limit: MenuLimit): number =>
    limit.kind === "energy" ? 0.013 : limit.kind === "carry" ? 1300 : limit.kind === "budget" ? 321.4 : 2;
  const readings = LIMITS.map(
    (limit): LimitReading => ({ limit, allowed: 0, reached: excessOf(limit), excess: excessOf(limit) }),
  );
  const before = state(kitchen.value);
  const way = toWayOut(readings, kitchen.value, before);
  const turned = turnKnobs(
    kitchen.value,
    way.knobs.map((knob) => ({ knob, value: knob.enough })),
  );
  const after = state({ ...kitchen.value, ...turned });

  test.each(LIMITS.map((limit) => [limit.kind, limit] as const))("loosen %s by at least the excess", (_, limit) => {
    const [was, is] = [allowedIn(before, limit), allowedIn(after, limit)];
    expect(is).toBeGreaterThanOrEqual((was as number) + excessOf(limit) - 1e-9);
  });

  test("name what hangs on no single figure, and turn nothing for it", () => {
    const bound: LimitReading = {
      limit: { kind: "bound", profile: 0, bound: 0 },
      allowed: 1,
      reached: 2,
      excess: 1,
    };
    expect(toWayOut([bound], kitchen.value, before)).toEqual({ knobs: [], otherwise: ["bound"] });
  });
});

test("of several ways none is kept that asks for all that another asks for and more", () => {
  const knob = fc
    .record({
      limit: fc.constantFrom("budget" as const, "trips" as const, "main" as const),
      enough: fc.integer({ min: 1, max: 4 }),
    })
    .map((drawn): Knob => ({ now: 0, ...drawn }));
  const way = fc
    .uniqueArray(knob, { selector: nameKnob, minLength: 1, maxLength: 3 })
    .map((knobs) => ({ knobs, otherwise: [] }));
  const asksNoMore = (one: { knobs: readonly Knob[] }, other: { knobs: readonly Knob[] }): boolean =>
    one.knobs.every((a) => other.knobs.some((b) => nameKnob(a) === nameKnob(b) && a.enough <= b.enough));
  fc.assert(
    fc.property(fc.array(way, { maxLength: 5 }), (ways) => {
      const kept = keepShort(ways);
      for (const each of ways) expect(kept.some((one) => asksNoMore(one, each))).toBe(true);
      for (const one of kept) expect(kept.filter((other) => other !== one && asksNoMore(other, one))).toEqual([]);
    }),
    { endOnFailure: true },
  );
});

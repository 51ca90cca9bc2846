import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { SITTING_KINDS } from "../dish/index.ts";
import { addDays, weekday } from "../quantity/index.ts";
import { datedSittings, orderInDay } from "./datedSittings.ts";
import { makeKitchen } from "./kitchen.testing.ts";

const FROM = "2026-02-26";

const weekly = fc.record({
  kind: fc.constantFrom(...SITTING_KINDS),
  on: fc.uniqueArray(fc.integer({ min: 1, max: 7 }), { minLength: 1 }),
  eaters: fc.constant<string[]>(["ada"]),
  minutes: fc.nat(90),
  heat: fc.boolean(),
  packed: fc.boolean(),
});

describe("the sittings of some days", () => {
  it("are those of each weekday, in order of time, each as the kitchen has it", () => {
    fc.assert(
      fc.property(
        fc.array(weekly, { minLength: 1, maxLength: 6 }),
        fc.integer({ min: 1, max: 20 }),
        (sittings, days) => {
          const dated = datedSittings(makeKitchen({ sittings }), FROM, days);
          const wanted = Array.from({ length: days }, (_, day) => weekday(addDays(FROM, day))).reduce(
            (sum, today) => sum + sittings.filter(({ on }) => on.includes(today)).length,
            0,
          );
          expect(dated).toHaveLength(wanted);
          dated.forEach(({ day, date, kind, ...rest }, k) => {
            expect(date).toBe(addDays(FROM, day));
            const like = sittings.filter((one) => one.kind === kind && one.on.includes(weekday(date)));
            expect(like.map(({ kind: _kind, on: _on, ...facts }) => facts)).toContainEqual(rest);
            const before = dated[k - 1];
            if (before === undefined) return;
            const [earlier, later] = [before, { day, kind }].map((one) => one.day * 10 + orderInDay(one.kind));
            expect(earlier).toBeLessThanOrEqual(later as number);
          });
        },
      ),
    );
  });

  it("of one time stay in the order of the kitchen's list, and a weekday named twice is one", () => {
    const base = { kind: "midday" as const, minutes: 10, heat: true, packed: false };
    const sittings = [
      { ...base, on: [1, 1], eaters: ["bea"] },
      { ...base, on: [1], eaters: ["ada"] },
    ];
    const dated = datedSittings({ sittings }, "2026-03-02", 7);
    expect(dated.map(({ day, eaters }) => [day, ...eaters])).toEqual([
      [0, "bea"],
      [0, "ada"],
    ]);
  });
});

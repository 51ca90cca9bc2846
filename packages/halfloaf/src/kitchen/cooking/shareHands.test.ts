import fc from "fast-check";
import { expect, test } from "vitest";
import { methods } from "../../dish/dish.testing.ts";
import { dishOf, makeKit, timeWork, wishFor } from "./cooking.testing.ts";
import { shareHands } from "./shareHands.ts";
import { shareKit } from "./shareKit.ts";

const kit = makeKit({ pans: 4, pots: 4, rings: 3 });

test("no cook ever has more than two hands, and every job for hands has its cook", () => {
  fc.assert(
    fc.property(methods(6), methods(5), fc.constantFrom<1 | 2>(1, 2), (first, second, cooks) => {
      const { cooking, plan } = timeWork(wishFor([dishOf("first", first), dishOf("second", second)], { kit, cooks }));
      const { steps } = shareHands(cooking.problem, plan);
      for (const [i, { hands, minutes }] of cooking.problem.steps.entries()) {
        expect((steps[i] as number[]).length > 0).toBe(hands > 0 && minutes > 0);
      }
      for (let minute = 0; minute < plan.serveMinutes; minute++) {
        for (let cook = 1; cook <= cooks; cook++) {
          const both = cooking.problem.steps.filter(({ hands, minutes }, i) => {
            const start = plan.starts[i] as number;
            return hands === 2 && start <= minute && minute < start + minutes && steps[i]?.includes(cook);
          });
          expect(both.length).toBeLessThanOrEqual(1);
        }
      }
    }),
    { numRuns: 60 },
  );
});

test("two steps never share a ring at the same time", () => {
  fc.assert(
    fc.property(methods(6), methods(5), (first, second) => {
      const timed = timeWork(wishFor([dishOf("first", first), dishOf("second", second)], { kit }));
      const { problem } = timed.cooking;
      const rings = shareKit(timed).map((parts) => parts.find(({ part }) => part === "ring")?.number);
      for (const [i, ring] of rings.entries()) {
        if (ring === undefined) continue;
        expect(ring).toBeLessThanOrEqual(3);
        for (const [j, other] of rings.entries()) {
          const [a, b] = [timed.plan.starts[i] as number, timed.plan.starts[j] as number];
          const [ma, mb] = [problem.steps[i]?.minutes as number, problem.steps[j]?.minutes as number];
          if (i < j && ring === other && ma > 0 && mb > 0) expect(a + ma <= b || b + mb <= a).toBe(true);
        }
      }
    }),
    { numRuns: 60 },
  );
});

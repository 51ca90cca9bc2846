import fc from "fast-check";
import { toEventId } from "halfloaf/kitchen/record";
import { expect, it } from "vitest";
import { isInRuns, toNumberRuns } from "./numberRuns.ts";

it("Runs of numbers hold exactly the rows they were made of", () => {
  const ids = fc.array(fc.tuple(fc.constantFrom("phone-a1", "old-laptop-2"), fc.integer({ min: 1, max: 30 })));
  fc.assert(
    fc.property(ids, (pairs) => {
      const runs = toNumberRuns(pairs.map(([writer, number]) => toEventId(writer, number)));
      for (const writer of ["phone-a1", "old-laptop-2"])
        for (let number = 1; number <= 31; number++) {
          const isThere = pairs.some(([by, each]) => by === writer && each === number);
          expect(isInRuns(runs[writer] ?? "", number)).toBe(isThere);
        }
    }),
  );
});

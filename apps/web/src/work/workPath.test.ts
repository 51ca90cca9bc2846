import fc from "fast-check";
import { expect, test } from "vitest";
import { parseWorkSearch, workPath } from "./workPath.ts";

const wanted = fc.array(
  fc.record({ dish: fc.string({ minLength: 1 }), portions: fc.double({ min: 0.1, max: 500, noNaN: true }) }),
);

test("dishes asked for in an address are the dishes the screen reads there", () => {
  fc.assert(
    fc.property(wanted, (dishes) => {
      const { searchParams } = new URL(workPath(dishes), "http://halfloaf.invalid");
      expect(parseWorkSearch(searchParams)).toEqual(dishes);
    }),
  );
});

test.each(["0", "-2", "many", ""])("portions of '%s' in an address are one", (portions) => {
  expect(parseWorkSearch(new URLSearchParams({ dish: "broth", portions }))).toEqual([{ dish: "broth", portions: 1 }]);
});

import fc from "fast-check";
import { expect, it } from "vitest";
import { isTooDeep } from "./isTooDeep.ts";

const depthOf = (value: unknown): number =>
  typeof value === "object" && value !== null ? 1 + Math.max(0, ...Object.values(value).map(depthOf)) : 0;

it("A text is too deep exactly where its value is", () => {
  fc.assert(
    fc.property(fc.jsonValue({ maxDepth: 6 }), fc.nat(7), (value, most) => {
      expect(isTooDeep(JSON.stringify(value), most)).toBe(depthOf(value) > most);
    }),
  );
});

it("A text that nests without end is told before it is read", () => {
  expect(isTooDeep("[".repeat(500_000), 64)).toBe(true);
});

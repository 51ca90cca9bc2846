import fc from "fast-check";
import { expect, test } from "vitest";
import { holdsMoreThan } from "./holdsMoreThan.ts";

const count = (value: unknown): number =>
  typeof value === "object" && value !== null
    ? Object.values(value).reduce<number>((sum, member) => sum + count(member), 1)
    : 1;

test("counts every value of a JSON text, those that hold others too", () => {
  fc.assert(
    fc.property(fc.jsonValue(), (value) => {
      expect([holdsMoreThan(value, count(value) - 1), holdsMoreThan(value, count(value))]).toEqual([true, false]);
    }),
    { endOnFailure: true },
  );
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { distanceWithin } from "./distanceWithin.ts";

const word = fc.string({ unit: fc.constantFrom("a", "b", "c"), maxLength: 5 });

/** The distance by its definition, trying every first edit. */
function slowly(one: string, other: string): number {
  if (one === "" || other === "") return one.length + other.length;
  const rest = slowly(one.slice(1), other.slice(1)) + (one[0] === other[0] ? 0 : 1);
  const ways = [rest, slowly(one.slice(1), other) + 1, slowly(one, other.slice(1)) + 1];
  if (one.length > 1 && other.length > 1 && one[0] === other[1] && one[1] === other[0]) {
    ways.push(slowly(one.slice(2), other.slice(2)) + 1);
  }
  return Math.min(...ways);
}

describe("distanceWithin", () => {
  it("is the least number of edits, or undefined where that is more than asked", () => {
    fc.assert(
      fc.property(word, word, fc.nat(5), (one, other, most) => {
        const distance = slowly(one, other);
        expect(distanceWithin(one, other, most)).toBe(distance <= most ? distance : undefined);
      }),
      { endOnFailure: true },
    );
  });
});

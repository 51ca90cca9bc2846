import fc from "fast-check";
import { expect, test } from "vitest";
import { sharePortions } from "./sharePortions.ts";

const eatersOf = (count: number) => Array.from({ length: count }, (_, at) => `eater-${at}`);

test("portions of a sitting go to its eaters as their plates cost, and none is lost", () => {
  fc.assert(
    fc.property(
      fc.array(fc.integer({ min: 1, max: 500 }), { minLength: 1, maxLength: 6 }),
      fc.double({ min: 0.5, max: 12, noNaN: true }),
      (plateMinor, portions) => {
        const eaters = eatersOf(plateMinor.length);
        const shared = sharePortions({ eaters, plateMinor, portions });
        expect(shared.map(({ eater }) => eater)).toEqual(eaters);
        expect(shared.reduce((sum, plate) => sum + plate.portions, 0)).toBeCloseTo(portions, 9);
        shared.forEach((plate, at) => {
          expect(plate.portions * (plateMinor[0] as number)).toBeCloseTo(
            (shared[0]?.portions ?? 0) * (plateMinor[at] as number),
            6,
          );
        });
      },
    ),
    { endOnFailure: true },
  );
});

test("where a plate costs nothing all have the same, and nobody goes without", () => {
  for (const plateMinor of [[0, 0], [1, 0], []])
    expect(sharePortions({ eaters: eatersOf(2), plateMinor, portions: 3 }).map(({ portions }) => portions)).toEqual([
      1.5, 1.5,
    ]);
});

import { expect, test } from "vitest";
import { findWeek } from "../sheet.testing.ts";
import { toWeekSheet } from "../week/toWeekSheet.ts";
import type { Claim } from "./Claim.ts";
import { checkClaims } from "./checkClaims.ts";

const { days } = toWeekSheet(findWeek("port-ansel", { days: 3, moves: 3000 }));

/** The largest figure of each kind of claim, found anew from the sheets. */
const largest: Readonly<Record<Claim["kind"], number>> = {
  plate: Math.max(
    ...days.flatMap(({ sittings }) => sittings.flatMap(({ plates }) => plates.map((one) => one.costMinor))),
  ),
  day: Math.max(...days.flatMap(({ eaters }) => eaters.map((one) => one.costMinor))),
  ready: Math.max(...days.flatMap(({ sittings }) => sittings.map((one) => one.elapsedMinutes))),
  "hands-on": Math.max(...days.flatMap(({ sittings }) => sittings.map((one) => one.handsOnMinutes))),
  waste: Math.max(...days.map(({ flow }) => flow.wasteMinor)),
};

test.each(Object.entries(largest) as [Claim["kind"], number][])(
  "a claim about %s holds just above the largest figure, and at it names that line, which is not below it",
  (kind, most) => {
    expect(checkClaims([{ kind, below: most + 1 }], days)).toEqual([]);
    const broken = checkClaims([{ kind, below: most }], days);
    expect(broken.length).toBeGreaterThan(0);
    for (const { value, over, claim } of broken) expect([value, over, claim.below]).toEqual([most, 0, most]);
  },
);

test("every line that breaks a claim comes back with what it is too much by", () => {
  const broken = checkClaims([{ kind: "plate", below: 1 }], days);
  const dear = days
    .flatMap(({ sittings }) => sittings.flatMap(({ plates }) => plates))
    .filter((one) => one.costMinor >= 1);
  expect(broken).toHaveLength(dear.length);
  for (const { value, over } of broken) expect(over).toBe(value - 1);
});

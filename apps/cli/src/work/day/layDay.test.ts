import { expect, test } from "vitest";
import { layJobs } from "./layDay.ts";

const names = { dish: () => "Red pot", food: (id: string) => id, shop: (id: string) => id, eater: (id: string) => id };

test("of what is left over the page says where the stores have none of it or only a part, and nothing where all is there", () => {
  const job = {
    date: "2027-03-02",
    sitting: "midday",
    dish: "red-pot",
    batch: 0,
    beforeMinutes: 0,
    portions: 2,
  } as const;
  const lay = (shortPortions?: number, isToCook?: true): string =>
    layJobs([{ kind: "take-out", ...job, shortPortions, isToCook }], { width: 100, names }, job.date)
      .join(" ")
      .replaceAll(/\s+/g, " ");
  expect(lay(2)).toContain(
    'The stores have none of it that is still good. Tell the cooking first with "halfloaf cooked"',
  );
  expect(lay(1.5)).toContain("Only 0.5 portions of it in the stores.");
  expect(lay()).not.toContain("stores");
  expect(lay(2, true)).not.toContain("stores");
});

import { applyRetention, parseRetentionTable } from "halfloaf/dish";
import { expect, test } from "vitest";
import { readDataFile } from "./readDataFile.ts";

const parsed = parseRetentionTable(readDataFile("retention.json"));
if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
const table = parsed.value;

/** **Source**: USDA Table of Nutrient Retention Factors, Release 6 (2007), by code. */
test.each([
  [
    "3455",
    "root vegetables boiled under water that is thrown away",
    { vitaminCMg: 65, folateFoodUg: 65, potassiumMg: 90 },
  ],
  ["0522", "pulses boiled 45 to 75 minutes, water used", { thiaminMg: 65, folateFoodUg: 50 }],
])("code %s, %s, leaves of 100: %j", (code, _, left) => {
  const raw = Object.fromEntries(Object.keys(left).map((name) => [name, 100]));
  const cooked = applyRetention(raw, code, table);
  for (const [name, amount] of Object.entries(left)) expect(cooked[name as keyof typeof cooked]).toBeCloseTo(amount, 9);
});

test("there is no factor for vitamins D, E and K, selenium, fibre, protein and fat: they are kept whole", () => {
  const raw = { vitaminDUg: 1, vitaminEMg: 2, vitaminKUg: 3, seleniumUg: 4, fibreG: 5, proteinG: 6, fatG: 7 };
  for (const code of table.rows.keys()) expect(applyRetention(raw, code, table)).toEqual(raw);
});

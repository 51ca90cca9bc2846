import { existsSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect, it } from "vitest";

const pathOf = (path: string) => fileURLToPath(new URL(path, import.meta.url));
const page = readFileSync(pathOf("../../../docs/threats.md"), "utf8");
const rows = [...page.matchAll(/^\| (\d[^|]*) \| ([^|]*) \| ([^|]*) \|$/gm)].map(
  ([, numbers = "", how = "", test = ""]) => ({
    numbers: numbers.trim(),
    how: how.trim(),
    test: test.trim(),
  }),
);

/** How many requirements of levels 1 and 2 each section has; those that were deleted or are of level 3 are named. **Source**: OWASP ASVS 4.0.3. */
const SECTIONS: Readonly<Record<string, number>> = {
  "2.1": 12,
  "2.2": 3,
  "2.3": 3,
  "2.4": 6,
  "2.5": 7,
  "2.6": 3,
  "2.7": 6,
  "2.8": 7,
  "2.9": 3,
  "2.10": 4,
  "3.1": 1,
  "3.2": 4,
  "3.3": 4,
  "3.4": 5,
  "3.5": 3,
  "3.7": 1,
  "4.1": 5,
  "4.2": 2,
  "4.3": 3,
  "5.1": 5,
  "5.2": 8,
  "5.3": 10,
  "5.4": 3,
  "5.5": 4,
  "6.1": 3,
  "6.2": 6,
  "6.3": 2,
  "6.4": 2,
  "7.1": 4,
  "7.2": 2,
  "7.3": 4,
  "7.4": 3,
  "8.1": 4,
  "8.2": 3,
  "8.3": 8,
  "9.1": 3,
  "9.2": 4,
  "10.2": 2,
  "10.3": 3,
  "11.1": 8,
  "12.1": 3,
  "12.2": 1,
  "12.3": 6,
  "12.4": 2,
  "12.5": 2,
  "12.6": 1,
  "13.1": 5,
  "13.2": 6,
  "13.3": 2,
  "13.4": 2,
  "14.1": 4,
  "14.2": 6,
  "14.3": 3,
  "14.4": 7,
  "14.5": 4,
};
const LEFT_OUT = ["4.1.4", "7.3.2", "13.1.2", "13.2.4", "14.3.1"];

function expand(numbers: string): string[] {
  return numbers.split(", ").flatMap((part) => {
    const [first = "", last = first] = part.split(" to ");
    const section = first.slice(0, first.lastIndexOf("."));
    const [from, to] = [first, last].map((each) => Number(each.slice(each.lastIndexOf(".") + 1)));
    return Array.from({ length: (to ?? 0) - (from ?? 0) + 1 }, (_, at) => `${section}.${(from ?? 0) + at}`);
  });
}

it("The table names every requirement of levels 1 and 2 once", () => {
  const all = Object.entries(SECTIONS).flatMap(([section, count]) =>
    Array.from({ length: count }, (_, at) => `${section}.${at + 1}`),
  );
  const named = rows.flatMap(({ numbers }) => expand(numbers));
  expect(named.slice().sort()).toEqual(all.filter((each) => !LEFT_OUT.includes(each)).sort());
});

it("Each row of the table names tests that are there, or says why there is none", () => {
  for (const { numbers, test } of rows) {
    const named = [...test.matchAll(/`([\w/]+\.(?:test|testing)\.ts)`: (.+?)(?=; `|$)/g)];
    if (named.length === 0) expect(test, numbers).toMatch(/^(Does not (apply|hold)|Shown )/);
    for (const [, file = "", title = ""] of named) {
      const path = pathOf(`./${file}`);
      expect(existsSync(path) && readFileSync(path, "utf8").includes(title), `${numbers}: ${file}: ${title}`).toBe(
        true,
      );
    }
  }
});

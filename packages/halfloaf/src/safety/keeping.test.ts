import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { judgeRoomTime, leftoverDays, parseKeepingRules, pickRule } from "./keeping.ts";
import { readSafetyFile, readSafetyTables } from "./safetyTables.testing.ts";

const { keepingRules: rules } = readSafetyTables();
const stays = fc.array(fc.double({ min: 0, max: 90, noNaN: true }), { maxLength: 6 });
const keeps = { fridgeDays: 3, authority: "the dish" };

describe("laws", () => {
  test("stays out of the cold count together, in any order", () => {
    fc.assert(
      fc.property(stays, (minutes) => {
        const sum = minutes.reduce((total, each) => total + each, 0);
        fc.pre(Math.abs(sum - 120) > 1e-6);
        const together = judgeRoomTime([sum], rules);
        expect(judgeRoomTime(minutes, rules)).toEqual(together);
        expect(judgeRoomTime(minutes.toReversed(), rules).kind).toBe(together.kind);
      }),
    );
  });

  test("great heat never gives more time", () => {
    fc.assert(
      fc.property(stays, fc.double({ min: -10, max: 50, noNaN: true }), (minutes, airC) => {
        if (judgeRoomTime(minutes, rules, { airC }).kind === "within") {
          expect(judgeRoomTime(minutes, rules).kind).toBe("within");
        }
      }),
    );
  });

  test("the strictest figure is that of one of the authorities and no laxer than any", () => {
    for (const name of new Set(rules.map(({ rule }) => rule))) {
      const figures = rules.filter(({ rule }) => rule === name).map(({ value }) => value);
      const { value } = pickRule(rules, name, "strictest");
      const isHigh = ["danger-high-c", "hot-holding-c", "kidney-bean-soak-hours", "kidney-bean-boil-minutes"].includes(
        name,
      );
      if (name !== "cooling-start-c")
        expect([name, value]).toEqual([name, isHigh ? Math.max(...figures) : Math.min(...figures)]);
    }
  });

  test("leftovers never keep longer than the dish itself allows", () => {
    fc.assert(
      fc.property(fc.nat(10), fc.boolean(), fc.constantFrom("us", "uk", "strictest"), (fridgeDays, hasRice, choice) => {
        const { days } = leftoverDays({ ...keeps, fridgeDays }, hasRice, rules, choice as "us");
        expect(days).toBeLessThanOrEqual(fridgeDays);
        expect(days).toBeLessThanOrEqual(leftoverDays({ ...keeps, fridgeDays }, false, rules, choice as "us").days);
      }),
    );
  });
});

describe("both sides of each bound", () => {
  test.each([
    [[120], undefined, "within"],
    [[120.1], undefined, "exceeded"],
    [[60, 30, 30], undefined, "within"],
    [[60, 30, 31], undefined, "exceeded"],
    [[60], 33, "within"],
    [[61], 33, "exceeded"],
    [[61], 32.2, "within"],
    [[], 33, "within"],
  ])("stays %j with air %j: %s", (minutes, airC, kind) => {
    expect(judgeRoomTime(minutes, rules, airC === undefined ? {} : { airC }).kind).toBe(kind);
  });

  test("what is left and what is too much is said", () => {
    expect(judgeRoomTime([45], rules)).toMatchObject({ leftMinutes: 75, rule: { authority: "US FSIS" } });
    expect(judgeRoomTime([145], rules)).toMatchObject({ byMinutes: 25 });
  });

  test.each([-1, Number.NaN])("a stay of %d minutes is a defect", (minutes) => {
    expect(() => judgeRoomTime([10, minutes], rules)).toThrow(RangeError);
  });
});

describe("leftovers", () => {
  test.each([
    ["strictest", false, 2, "UK FSA"],
    ["strictest", true, 1, "UK FSA"],
    ["uk", false, 2, "UK FSA"],
    ["us", false, 3, "the dish"],
    ["us", true, 1, "UK FSA"],
  ] as const)("%s, with rice %s: %d days by %s", (choice, hasRice, days, authority) => {
    expect(leftoverDays(keeps, hasRice, rules, choice)).toEqual({ days, authority });
  });

  test("a dish that keeps less says so itself", () => {
    expect(leftoverDays({ fridgeDays: 0, authority: "the dish" }, true, rules)).toEqual({
      days: 0,
      authority: "the dish",
    });
  });
});

describe("choosing", () => {
  test("the authority chosen wins over a stricter one, and a silent one is stood in for", () => {
    expect(pickRule(rules, "fridge-c", "uk").value).toBe(5);
    expect(pickRule(rules, "fridge-c", "us").value).toBe(4.4);
    expect(pickRule(rules, "fridge-c", "strictest").value).toBe(4.4);
    expect(pickRule(rules, "hot-holding-c", "strictest").value).toBe(63);
    expect(pickRule(rules, "kidney-bean-boil-minutes", "strictest").value).toBe(30);
    expect(pickRule(rules, "room-minutes", "uk")).toMatchObject({ value: 120, authority: "US FSIS" });
    expect(() => pickRule([], "room-minutes", "uk")).toThrow(RangeError);
  });

  test("reading names every rule without a figure, and every faulty row, at once", () => {
    const { title, rows } = readSafetyFile("rules");
    const lacking = parseKeepingRules({
      title,
      rows: rows.filter(({ rule }) => rule !== "rice-days" && rule !== "fridge-c"),
    });
    expect(lacking.ok ? [] : lacking.issues.map(({ expected }) => expected)).toEqual([
      "a figure for fridge-c",
      "a figure for rice-days",
    ]);
    const faulty = parseKeepingRules({
      title,
      rows: [
        { ...rows[0], value: "2" },
        { ...rows[1], source: "" },
      ],
    });
    expect(faulty.ok ? [] : faulty.issues.map(({ path }) => path.join("."))).toEqual(["rows.0.value", "rows.1.source"]);
  });
});

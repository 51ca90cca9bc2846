import { expect, test } from "vitest";
import { COLOURED } from "../output/paint.ts";
import { textWidth } from "../output/textWidth.ts";
import { layAccounts } from "./layAccounts.ts";
import { layBuying } from "./layBuying.ts";
import { layIntake } from "./layIntake.ts";
import { layMenu } from "./layMenu.ts";
import { layUsed, layWaste } from "./layStores.ts";
import { layWeek } from "./layWeek.ts";
import { layWishes } from "./layWishes.ts";
import { toTestPage } from "./week.testing.ts";

const COLOUR = new RegExp(`${String.fromCharCode(0x1b)}\\[\\d+m`, "g");

test.each([60, 80, 100])("no line is wider than the page (%i columns), with colours or without", (width) => {
  for (const line of layWeek(toTestPage(width))) expect(textWidth(line), line).toBeLessThanOrEqual(width);
  const coloured = layWeek(toTestPage(width, { paint: COLOURED }));
  expect(coloured.map((line) => line.replace(COLOUR, ""))).toEqual(layWeek(toTestPage(width)));
});

test("the menu shows each plate by day with minutes and cost", () => {
  expect(layMenu(toTestPage(60))).toEqual([
    "MENU",
    "",
    "Monday 30 November                           12 min hands-on",
    "  evening  Red lentil pot with carrots and a spoon of yogurt",
    "           stirred in at the end",
    "           12 min hands-on, ready in 30 min; cooked for 1",
    "           more sitting; Ada 0.62, Bo 0.48",
    "",
    "Tuesday 1 December                           10 min hands-on",
    "  midday   Red lentil pot with carrots and a spoon of yogurt",
    "           stirred in at the end",
    "           packed; left over from Monday evening; Ada 0.62",
    "  evening  Oats fried with onion",
    "           begun ahead; 8 min hands-on, ready in 10 min;",
    "           Ada 0.31, Bo 0.24",
  ]);
});

test("the buying list goes by trip and section; offers and estimates are marked, control characters harmless", () => {
  expect(layBuying(toTestPage(60))).toEqual([
    "TO BUY",
    "",
    "Trip 1: Quay Stores, Mon 30 Nov               1.5 kg, 20 min",
    "  dry goods",
    "      2 x  Red lentils, 500 g (offer, 0.11 less)        2.09",
    "  breakfast",
    "      1 x  Oats\\u{1b}[2J, 500 g (estimate)              0.59",
    "  Till, 3 packs; of it 0.59 estimated; fare 1.20",
    "  besides                                               2.68",
    "",
    "estimate: a price that was guessed, not seen.",
  ]);
});

test("the accounts write the identity out and add up on both sides", () => {
  const lines = layAccounts(toTestPage(60)).join("\n");
  expect(lines).toMatch(/\+ +Paid at the tills +2\.68 +3\.16\n += {2}On the plates +2\.27/);
  expect(lines).toMatch(/\+ +Carried over +0\.81 +3\.16/);
  expect(lines).toContain("Budget 6.00, paid 3.88 (tills 2.68, fares 1.20): 2.12 left.");
});

test("an overrun budget says by how much", () => {
  const page = toTestPage(100);
  const accounts = { ...page.plan.accounts, budgetMinor: 300 };
  expect(layAccounts({ ...page, plan: { ...page.plan, accounts } }).join("\n")).toContain("0.88 too much");
});

test("intake tells verdict, distance and how much is known; what is unknown is not zero", () => {
  const text = layIntake(toTestPage(100)).join("\n");
  expect(text).toMatch(/short +fibre \(PRI\) +19 g +>= 25 g +-6 g +100 %/);
  expect(text).toMatch(/above +sodium \(PRI\) +2300 mg +<= 2000 mg +\+300 mg +90 %/);
  expect(text).toMatch(/open +iodine \(PRI\) +unknown +>= 150 µg +0 %/);
  expect(text).toMatch(/met +protein 71 g \(>= 50 g\)/);
  expect(text).toContain("which is 98 %; 50 % of the days' energy is");
});

test("an eater in pregnancy is left to care", () => {
  expect(layIntake(toTestPage(100)).join("\n")).toContain(
    "Bo is pregnant: needs are left to a midwife, doctor or dietitian",
  );
});

test("stores used say what is left, waste says why", () => {
  expect(layUsed(toTestPage(60)).at(-1)).toMatch(/^ {2}carrot +250 g +0\.40 +50 g thrown away$/);
  expect(layWaste(toTestPage(100)).at(-1)).toBe("  50 g of carrot, 0.08: opened Mon 30 Nov, keeps until Tue 1 Dec.");
  const goneOff = [{ id: "x", food: "yogurt", massG: 200, costMinor: 40 }];
  expect(layWaste(toTestPage(100, { goneOff })).at(-1)).toContain("past its time on the first day; not counted");
});

test("the last line says who comes first", () => {
  expect(layWeek(toTestPage(100)).at(-1)).toBe(
    "The label on the pack, local rules and a doctor or dietitian come before anything said here.",
  );
});

test("wishes say what is served and what was wanted; one that is not met, what it would cost more than", () => {
  const base = toTestPage(80);
  const days = { from: "2026-11-30", to: "2026-12-01" };
  const wishes = [
    { what: { manner: "soup" as const }, ...days, least: 1, served: 1 },
    { what: { group: "fish" as const }, from: "2026-12-01", to: "2026-12-01", most: 0, missMinor: 150, served: 2 },
  ];
  expect(layWishes({ ...base, plan: { ...base.plan, wishes } })).toEqual([
    "WISHES",
    "",
    "  - soup, Mon 30 Nov to Tue 1 Dec: 1 serving, wanted at least 1: met",
    "  - fish, Tue 1 Dec: 2 servings, wanted at most 0: not met, it would cost more",
    "    than 1.50 a serving",
  ]);
  expect(layWishes(base)).toEqual([]);
});

import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { WeekPlan } from "halfloaf/kitchen";
import { addDays } from "halfloaf/quantity";
import * as v from "valibot";
import { afterAll, beforeAll, expect, test } from "vitest";
import { widenLimits, writeKitchen } from "../input/draftKitchen.testing.ts";
import { MendReport } from "../mend/MendReport.ts";
import { textWidth } from "../output/textWidth.ts";
import { AccountsReport } from "./AccountsReport.ts";
import { ActReport } from "./ActReport.ts";
import { type Ran, runnerIn } from "./keep.testing.ts";
import { StoresReport } from "./StoresReport.ts";
import { TodayReport } from "./TodayReport.ts";

const FIRST = "2026-12-07";
let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "halfloaf-story-"));
  writeKitchen(join(folder, "easy.json"), "port-ansel", widenLimits);
});
afterAll(() => rmSync(folder, { recursive: true }));

test("a week settled, accepted, bought, cooked, eaten and counted adds up to the cent, and comes back from its backup", async () => {
  const run = runnerIn(folder, FIRST);
  expect((await run(`settle home --from easy.json --on ${FIRST}`)).code).toBe(0);
  const planned = await run("week --effort quick --proof 0 --accept --out week.json");
  expect([planned.code, planned.talked]).toEqual([0, expect.stringContaining("Accepted in home.")]);
  const week = v.parse(WeekPlan, JSON.parse(readFileSync(join(folder, "week.json"), "utf8")));
  expect(week.from).toBe(FIRST);
  for (let at = 0; at < 7; at++) await liveDay(addDays(FIRST, at), week);

  const counted = v.parse(ActReport, JSON.parse((await run("count salt=100 --as used --json")).printed));
  expect(counted.differences).toHaveLength(1);
  const last = addDays(FIRST, 6);
  const told = await run(`accounts --each week --to ${last} --on ${last} --kwh 0.32 --json`);
  const accounts = v.parse(AccountsReport, JSON.parse(told.printed));
  for (const line of accounts.lines)
    expect(line.openingMinor + line.enteredMinor + line.tillMinor).toBe(
      line.platesMinor + line.wasteMinor + line.carryOverMinor,
    );
  const sum = (key: "tillMinor" | "faresMinor") => accounts.lines.reduce((total, line) => total + line[key], 0);
  expect(sum("tillMinor")).toBe(week.accounts.tillMinor);
  expect(sum("faresMinor")).toBe(week.accounts.faresMinor);
  const stores = v.parse(StoresReport, JSON.parse((await run(`stores --on ${last} --json`)).printed));
  expect(stores.lots.reduce((total, { costMinor }) => total + costMinor, 0)).toBe(
    accounts.lines.at(-1)?.carryOverMinor,
  );
  expect(stores.lots.filter(({ toCountG }) => toCountG !== undefined)).toEqual([]);
  expect(accounts.cookings).toHaveLength(week.batches.length);

  expect((await run("backup all.json")).code).toBe(0);
  expect((await run("restore all.json --kitchen other")).printed).toMatch(/brought \d+ rows/);
  expect((await run("restore all.json --kitchen other")).printed).toContain("nothing that was not there already");
  const [here, there] = [
    await run("history --last 1000 --json"),
    await run("history --last 1000 --json --kitchen other"),
  ];
  expect(JSON.parse(there.printed)).toEqual(JSON.parse(here.printed));
  expect((await run(`stores --on ${last} --json --kitchen other`)).printed).toBe(
    (await run(`stores --on ${last} --json`)).printed,
  );

  const narrow = runnerIn(folder, last, { HALFLOAF_KITCHEN: "home" }, 60);
  for (const words of ["today", "stores", "accounts --each day", "accounts", "prices oats-rolled", "history"]) {
    const { code, lines } = await narrow(words);
    expect(code, words).toBe(0);
    for (const line of lines) expect(textWidth(line), line).toBeLessThanOrEqual(60);
  }
}, 180_000);

test("the plan follows what was told: the accepted week is mended, accepted again and mended once more", async () => {
  const run = runnerIn(folder, FIRST);
  expect((await run(`settle mended --from easy.json --on ${FIRST}`)).code).toBe(0);
  expect((await run("week mended --effort quick --proof 0 --accept --json")).code).toBe(0);
  const { toBuy } = v.parse(TodayReport, JSON.parse((await run("today --kitchen mended --json")).printed));
  const none = toBuy[0]?.pack as string;
  const both = await run(`bought ${none} --not-there ${none} --kitchen mended`);
  expect([both.code, both.talked]).toEqual([2, expect.stringContaining("as bought and as not there")]);
  const shopping = `bought --all --not-there ${none} --best-before ${toBuy[1]?.pack}=2027-01-31 --kitchen mended`;
  const { rows } = v.parse(ActReport, JSON.parse((await run(`${shopping} --json`)).printed));
  expect(rows[0]).toMatchObject({ kind: "at-shelf", pack: none, isThere: false, trip: FIRST });
  const home = rows.flatMap((row) => (row.kind === "bought" ? [row] : []));
  expect(new Set(home.map(({ pack }) => pack))).toEqual(new Set(toBuy.slice(1).map(({ pack }) => pack)));
  expect(home.find(({ pack }) => pack === toBuy[1]?.pack)?.bestBefore).toBe("2027-01-31");
  expect((await run("today --kitchen mended")).printed.replace(/\s+/g, " ")).toMatch(
    /otherwise than the accepted week has it: "halfloaf mend mended --accept"/,
  );
  const third = runnerIn(folder, addDays(FIRST, 2));
  const evening = addDays(FIRST, 4);
  await third(`sitting evening --skipped maris --on ${evening} --kitchen mended`);
  await third(`sitting midday --guests 1 --on ${FIRST} --kitchen mended`);
  const now = v.parse(TodayReport, JSON.parse((await third("today --kitchen mended --json")).printed));
  expect(now.news).toBeGreaterThan(0);
  const find = JSON.parse((await third("found onion=3kg --cost 2.10 --kitchen mended --json")).printed).rows[0].stock;
  const first = await third("mend mended --accept --json");
  const report = v.parse(MendReport, JSON.parse(first.printed));
  expect(report.week.besides).toEqual([{ stock: expect.objectContaining({ id: find.id, massG: 3000 }), paidMinor: 0 }]);
  const { openingMinor, tillMinor, platesMinor, wasteMinor, carryOverMinor } = report.week.accounts;
  expect(openingMinor + tillMinor).toBe(platesMinor + wasteMinor + carryOverMinor);
  expect(report.week.lots.find(({ id }) => id === find.id)?.costMinor).toBe(210);
  expect([first.code, first.talked]).toEqual([0, expect.stringContaining("Accepted in mended.")]);
  const seats = ({ week }: Pick<MendReport, "week">) =>
    week.sittings.find(({ date, kind }) => date === evening && kind === "evening")?.eaters;
  expect(seats(report)).toEqual(["joren"]);
  const again = await third("mend mended --out again.json");
  const week = v.parse(WeekPlan, JSON.parse(readFileSync(join(folder, "again.json"), "utf8")));
  for (const words of ["the plan stands as it was", "AT HAND BESIDES", "onion, 3 kg: "])
    expect(again.printed).toContain(words);
  expect([seats({ week }), week.besides]).toEqual([["joren"], report.week.besides]);
  // The limits of the kitchen as it is now are those of the rest of the week.
  const kitchen = JSON.parse((await third("kitchen --kitchen mended")).printed);
  kitchen.limits.budgetMinor += 700;
  writeFileSync(join(folder, "now.json"), JSON.stringify(kitchen));
  const set = await third("kitchen --set now.json --kitchen mended");
  expect([set.code, set.printed.replace(/\s+/g, " ")]).toEqual([0, expect.stringContaining("mend mended --accept")]);
  const after = v.parse(MendReport, JSON.parse((await third("mend mended --json")).printed));
  expect(after.week.accounts.budgetMinor).toBe((week.accounts.budgetMinor ?? 0) + 700);
  // What an eater does not take any more is told at once, and is on no plate of what is left.
  const last = addDays(FIRST, 6);
  const plate = after.week.sittings.find(({ date, eaters }) => date === last && eaters.includes("joren"));
  const [use] = after.week.batches[plate?.batch ?? -1]?.uses ?? [];
  const joren = kitchen.eaters.find(({ id }: { id: string }) => id === "joren");
  joren.avoids = { ...joren.avoids, foods: [use?.food] };
  kitchen.limits = { ...kitchen.limits, budgetMinor: 30_000, tripsPerWeek: 14, energyTolerancePct: 20 };
  writeFileSync(join(folder, "now.json"), JSON.stringify(kitchen));
  const told = await third("kitchen --set now.json --kitchen mended");
  expect(told.printed.replace(/\s+/g, " ")).toMatch(/is not for Joren Pell, as it has: .*mend mended --accept/);
  const askToday = async () => v.parse(TodayReport, JSON.parse((await third("today --kitchen mended --json")).printed));
  const { against } = await askToday();
  expect(against).toContainEqual(expect.objectContaining({ date: last, eater: "joren", foods: [use?.food] }));
  expect((await third("today --kitchen mended")).printed).toContain("NOT FOR EVERYONE");
  const safe = v.parse(MendReport, JSON.parse((await third("mend mended --accept --json")).printed));
  expect(safe.sittings.map(({ why }) => why.kind)).toContain("not-for-eaters");
  expect((await askToday()).against).toEqual([]);
  expect((await third("today --kitchen mended")).printed).not.toContain("NOT FOR EVERYONE");
  const late = await runnerIn(folder, addDays(FIRST, 30))("mend mended");
  expect([late.code, late.talked]).toEqual([2, expect.stringContaining("No accepted week holds")]);
});

test("a day planned in the afternoon has nothing of its morning and midday, unless it is named", async () => {
  const name = "late";
  const run = runnerIn(folder, `${FIRST}T16:30:00`);
  expect((await run(`settle ${name} --from easy.json --on ${FIRST}`)).code).toBe(0);
  const kindsOf = ({ printed }: Ran): string[] => [
    ...new Set(v.parse(WeekPlan, JSON.parse(printed)).sittings.map(({ kind }) => kind)),
  ];
  const planned = await run(`week ${name} --days 1 --effort quick --proof 0 --json`);
  expect(planned.talked).toContain("Over for today and not planned: morning, midday.");
  expect(kindsOf(planned)).not.toContain("morning");
  expect(kindsOf(planned)).not.toContain("midday");
  expect(kindsOf(planned)).toContain("evening");
  const named = await run(`week ${name} --from ${FIRST} --days 1 --effort quick --proof 0 --json`);
  expect(named.talked).not.toContain("Over for today");
  expect(kindsOf(named)).toEqual(expect.arrayContaining(["morning", "midday", "evening"]));
});

/** One day as planned: shopping, cooking, eating. */
async function liveDay(day: string, week: WeekPlan): Promise<void> {
  const run = runnerIn(folder, day);
  const read = async () => v.parse(TodayReport, JSON.parse((await run("today --json")).printed));
  const before = await read();
  const trips = week.trips.filter(({ date }) => date === day);
  expect(before.toBuy.length).toBe(trips.reduce((sum, { lines }) => sum + lines.length, 0));
  if (trips.length > 0) expect((await run("bought --all")).talked).toBe("");
  const batches = week.batches.filter(({ date, putBy }) => date === day && putBy === undefined);
  expect(before.jobs.filter(({ kind }) => kind === "cook")).toHaveLength(batches.length);
  if (batches.length > 0) expect((await run("cooked --by joren")).talked).toBe("");
  for (const sitting of new Set(week.sittings.filter(({ date }) => date === day).map(({ kind }) => kind))) {
    const ate = await run(`sitting ${sitting} --as-planned --json`);
    const { doubts, short, rows } = v.parse(ActReport, JSON.parse(ate.printed));
    expect([ate.code, doubts, short]).toEqual([0, [], undefined]);
    expectPlatesAsPlanned(rows, week, day, sitting);
    const twice = await run(`sitting ${sitting} --as-planned`);
    expect([twice.code, twice.talked]).toEqual([2, expect.stringContaining("told already")]);
  }
  expect((await run("wasted --gone-off")).code).toBe(0);
  const after = await read();
  expect([after.toBuy, after.jobs.filter(({ kind }) => kind === "cook"), after.goneOff]).toEqual([[], [], []]);
}

/** Whoever eats of one dish gets so much of it as their plate was planned to cost of all. */
function expectPlatesAsPlanned(rows: ActReport["rows"], week: WeekPlan, day: string, sitting: string): void {
  const plates = rows.flatMap((row) => (row.kind === "eaten" ? row.plates : []));
  const massOf = (eater: string): number =>
    plates.reduce((sum, plate) => (plate.eater === eater ? sum + plate.massG : sum), 0);
  for (const { eaters, plateMinor } of week.sittings.filter(({ date, kind }) => date === day && kind === sitting)) {
    const eaten = eaters.map(massOf);
    const add = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);
    for (const [at, massG] of eaten.entries())
      expect(massG / add(eaten)).toBeCloseTo((plateMinor[at] as number) / add(plateMinor), 6);
  }
}

import { spawn } from "node:child_process";
import { copyFileSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { openKitchenFolder } from "@halfloaf/keep/node";
import * as v from "valibot";
import { afterEach, beforeEach, expect, test } from "vitest";
import { TWO_DAYS } from "../week/week.testing.ts";
import { FaultReport } from "../words/FaultReport.ts";
import { AccountsReport } from "./AccountsReport.ts";
import { ActReport } from "./ActReport.ts";
import { HistoryReport } from "./HistoryReport.ts";
import { runnerIn } from "./keep.testing.ts";
import { PricesReport } from "./PricesReport.ts";
import { StoresReport } from "./StoresReport.ts";
import { TodayReport } from "./TodayReport.ts";

const DAY = "2026-12-07";
const bin = fileURLToPath(new URL("../../bin/halfloaf.mjs", import.meta.url));
const frozen = fileURLToPath(
  new URL("../../../../packages/halfloaf/src/kitchen/record/frozen/record-1.json", import.meta.url),
);
let folder = "";
let run: ReturnType<typeof runnerIn>;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "halfloaf-keep-"));
  run = runnerIn(folder, DAY);
});
afterEach(() => rmSync(folder, { recursive: true }));

const stores = async (words = "stores") => v.parse(StoresReport, JSON.parse((await run(`${words} --json`)).printed));
const act = async (words: string) => v.parse(ActReport, JSON.parse((await run(`${words} --json`)).printed));
const massOf = async (food: string) =>
  (await stores()).lots.filter((lot) => lot.food === food).reduce((sum, { massG }) => sum + massG, 0);

test("a demo begins today, a file on its own day, and a folder that holds a kitchen is left alone", async () => {
  expect((await run("settle home --from port-ansel")).printed).toContain("is kept in home from Mon 7 Dec on");
  const again = await run("settle home --from one-ring");
  expect([again.code, again.talked]).toEqual([2, expect.stringContaining("holds a kitchen already")]);
  expect((await run("settle other --from one-ring --on 2027-01-04")).printed).toContain("from Mon 4 Jan on");
  expect((await stores()).lots.length).toBeGreaterThan(20);
});

test("what is used and thrown away leaves the stores, is taken back and done again, and history says who did what", async () => {
  await run("settle home --from port-ansel");
  const before = await massOf("oats-rolled");
  expect((await act("used oats-rolled=100g --by maris")).by).toBe("maris");
  expect(await massOf("oats-rolled")).toBeCloseTo(before - 100);
  await act("wasted oats-rolled=0.05kg --why wet");
  expect(await massOf("oats-rolled")).toBeCloseTo(before - 150);
  expect((await run("undo")).printed).toContain("Threw away 50 g of rolled oats (wet).");
  expect(await massOf("oats-rolled")).toBeCloseTo(before - 100);
  await run("redo");
  expect(await massOf("oats-rolled")).toBeCloseTo(before - 150);
  const { acts } = v.parse(HistoryReport, JSON.parse((await run("history --last 4 --json")).printed));
  expect(acts.map(({ by, undoes }) => [by, undoes !== undefined])).toEqual([
    ["maris", false],
    [undefined, false],
    [undefined, true],
    [undefined, true],
  ]);
  expect((await run("history")).printed).toContain("Maris Oake, laptop");
});

test("what is soaked for tomorrow is told begun, is off the day's jobs, and is to be done again once it is taken back", async () => {
  await run("settle home --from port-ansel");
  const [sitting] = TWO_DAYS.sittings;
  const beans = { dish: "red-beans-walnut-coriander", date: "2026-12-08", elapsedMinutes: 92 };
  const week = {
    ...TWO_DAYS,
    kitchen: "Port Ansel",
    from: DAY,
    sittings: [{ ...sitting, ...beans, eaters: ["joren"], plateMinor: [50] }],
    batches: [{ ...TWO_DAYS.batches[0], ...beans, uses: [] }],
    trips: [],
    lots: [],
  };
  writeFileSync(join(folder, "week.json"), JSON.stringify(week));
  expect((await run("accept week.json")).code).toBe(0);
  const jobs = async () => v.parse(TodayReport, JSON.parse((await run("today --json")).printed)).jobs;
  expect(await jobs()).toMatchObject([{ kind: "soak", dish: beans.dish, step: "soak" }]);
  expect((await run(`begun red-lentil-cumin-soup-pitta`)).talked).toContain("nothing like that");
  const told = await act("begun");
  expect(told.rows).toMatchObject([{ kind: "begun", dish: beans.dish, servedOn: beans.date, step: "soak" }]);
  expect(await jobs()).toEqual([]);
  expect((await run("history")).printed.replace(/\s+/g, " ")).toMatch(
    /Begun ahead \(soak\): .*for Tue 8 Dec, evening\./,
  );
  await run("undo");
  expect(await jobs()).toHaveLength(1);
});

test("whoever is named wrongly, all else that is wrong is told as well, and nothing is written", async () => {
  await run("settle home --from port-ansel");
  const rows = (await run("history --last 1000 --json")).printed;
  const faultsOf = async (words: string) => {
    const { code, printed } = await run(`${words} --by nobody --json`);
    return [code, ...v.parse(FaultReport, JSON.parse(printed)).faults.map(({ sentence }) => sentence)];
  };
  const nobody = expect.stringContaining('no eater "nobody"');
  const food = expect.stringContaining('"oats-roled"');
  expect(await faultsOf("used oats-roled=5g oats-rolled=5kg")).toEqual([
    2,
    nobody,
    food,
    expect.stringContaining("only 300 g"),
  ]);
  expect(await faultsOf("sitting evening --ate noone:oats-roled=5g")).toEqual([
    2,
    nobody,
    expect.stringContaining('no eater "noone"'),
    food,
  ]);
  expect(await faultsOf("rated no-such-dish=5")).toEqual([2, nobody, expect.stringContaining('"no-such-dish"')]);
  for (const words of ["used oats-rolled=5g", "undo", "stores"]) expect(await faultsOf(words)).toEqual([2, nobody]);
  expect((await run("history --last 1000 --json")).printed).toBe(rows);
});

test("more than there is, what nobody knows and who does not eat here are refused with code 2, and nothing is written", async () => {
  await run("settle home --from port-ansel");
  const rows = JSON.parse((await run("history --last 1000 --json")).printed);
  for (const [words, message] of [
    ["used oats-rolled=5kg", "of it are in the stores"],
    ["used oats-roled=5g", "Nearest to it: oats-rolled"],
    ["used oats-rolled=5 --by nobody", 'There is no eater "nobody"'],
    ["used butter=5g", "Nearest to it: peanut-butter, butter-salted"],
    ["found butter=5g", "Nearest to it: peanut-butter, butter-salted"],
    ["found onion", "says no amount"],
    ["found onion=0", "is no amount of a food"],
    ["found onion=2portions", "is no amount of a food"],
    ["found red-lentil-cumin-soup-pitta=2", "is a dish, not a food"],
    ["found onion=5 lemon=80 --cost 1", "--cost is of one"],
    ["found onion=5 --since 2026-12-08", "no day after 2026-12-07"],
    ["found onion=5 --opened 2026-12-06", "no day before 2026-12-07"],
    ["found onion=5 --use-by 2026-13-01", "is no day of the calendar"],
    ["found onion=5 --in attic", "Allowed choices are"],
    ["labelled onion", "which date the label bears"],
    ["labelled onion --no-date --use-by 2026-12-09", "a date and none"],
    ["labelled lard --use-by 2026-12-09", 'No pack of "lard" is in the stores'],
    ["bought --not-there onion-1000g-tally-store", "No trip of the accepted week has"],
    ["wasted", "Nothing is named."],
    ["count oats-rolled", "says no amount"],
    ["bought --all", "No accepted week has anything left to buy"],
    ["bought oats-rolled", "means more than one pack"],
    ["bought oats-rolled-500g-tally-store=x", "is not written as PACK"],
    ["cooked", 'No accepted week holds 2026-12-07. Accept one with "halfloaf week FOLDER --accept", or name the dish.'],
    ["cooked red-lentil-cumin-soup-pitta --portions 0", "is no number of portions up to"],
    ["begun", "No accepted week holds 2026-12-07."],
    ["begun no-such-dish", "no-such-dish"],
    ["cooked red-lentil-cumin-soup-pitta --ate joren=1", "at which sitting"],
    ["sitting evening --as-planned", "or say what was eaten with --ate"],
    ["sitting supper --as-planned", "is no kind of sitting"],
    ["accounts --from 2026-12-09 --to 2026-12-08", "is before the first"],
    ["stores --kitchen nowhere", 'There is no folder "nowhere"'],
    ["undo", "nothing that could be taken back"],
    ["accept no.json", "There is no file"],
    ["restore no.json", "There is no file"],
  ] as const) {
    const { code, talked } = await run(words);
    expect([words, code, talked.replace(/\s+/g, " ")]).toEqual([words, 2, expect.stringContaining(message)]);
  }
  const unnamed = runnerIn(folder, DAY, {});
  const { code, printed } = await unnamed("stores --json");
  expect([code, v.parse(FaultReport, JSON.parse(printed)).faults[0]?.code]).toEqual([2, "kitchen-unnamed"]);
  expect(JSON.parse((await run("history --last 1000 --json")).printed)).toEqual(rows);
});

test("who is told to be away has eaten nothing as planned, and what guests ate is asked for", async () => {
  await run("settle home --from port-ansel");
  expect((await run("today")).printed).toContain('"halfloaf week home --accept" plans one');
  const [sitting] = TWO_DAYS.sittings;
  const [batch] = TWO_DAYS.batches;
  const at = { dish: "red-lentil-cumin-soup-pitta", date: DAY };
  const sittings = [{ ...sitting, ...at, eaters: ["joren", "maris"], plateMinor: [50, 40] }];
  const week = { ...TWO_DAYS, kitchen: "Port Ansel", from: DAY, sittings, batches: [{ ...batch, ...at, uses: [] }] };
  writeFileSync(join(folder, "week.json"), JSON.stringify({ ...week, trips: [], lots: [] }));
  await run("accept week.json");
  expect((await run("today")).printed).not.toContain("No accepted week");
  await run("sitting evening --out joren=6.50");
  const eatenBy = ({ rows }: ActReport) =>
    rows.flatMap((row) => (row.kind === "eaten" ? row.plates.map(({ eater }) => eater) : []));
  const cooked = await act("cooked --portions 2.2 --ate-as-planned");
  expect(cooked.rows).toMatchObject([{ kind: "cooked", portions: 2.2 }, { kind: "eaten" }]);
  expect(eatenBy(cooked)).toEqual(["maris"]);
  expect((await run("sitting evening --as-planned")).talked).toMatch(/they\s+ate\s+or\s+were\s+not\s+here/);
  const told = (await run("sitting", "evening", "--ate", "maris:red-lentil-cumin-soup-pitta=0.5", "--guests", "1"))
    .printed;
  expect(told.replace(/\s+/g, " ")).toContain('"halfloaf sitting evening --ate guest:DISH=PORTIONS" tells it.');
  const hers = (await run("sitting", "evening", "--ate", "guest:red-lentil-cumin-soup-pitta=0.2", "--guests", "1"))
    .printed;
  expect(hers).not.toContain("guest:DISH");
});

test("a pack goes by what the buying list calls it, and one that was not there is told as such on the day", async () => {
  await run("settle home --from port-ansel");
  const bought = await run("bought", "Ebbing Mill Rolled oats, 1 kg", "--shop", "tally-store");
  expect(bought.printed).toContain("Bought Rolled oats, 1 kg");
  expect((await run("week --from 2026-12-07 --effort quick --proof 0 --accept --out week.json")).code).toBe(0);
  const { trips } = JSON.parse(readFileSync(join(folder, "week.json"), "utf8"));
  const { date, lines } = trips[0];
  const { pack } = lines[0];
  expect((await run(`bought --not-there ${pack} --on ${date}`)).code).toBe(0);
  const { toBuy } = v.parse(TodayReport, JSON.parse((await run(`today --on ${date} --json`)).printed));
  expect(toBuy.filter(({ notThere }) => notThere).map((line) => line.pack)).toEqual([pack]);
  expect((await run(`today --on ${date}`)).printed).toContain("(was not there)");
});

test("packs come home as found: their price is learned, their label counts, and the way has its cost", async () => {
  await run("settle home --from port-ansel");
  const pack = "oats-rolled-500g-tally-store";
  const told = await act(`bought ${pack}:2=0.95 --size ${pack}=480 --fare 1.20`);
  const bought = told.rows.flatMap((row) => (row.kind === "bought" ? [row] : []));
  expect(bought.map(({ massG, costMinor }) => [massG, costMinor])).toEqual([
    [480, 95],
    [480, 95],
  ]);
  const prices = v.parse(PricesReport, JSON.parse((await run("prices oats-rolled --json")).printed));
  const seen = prices.packs.find((one) => one.pack === pack);
  expect([seen?.priceMinor, seen?.sureness, seen?.ageDays]).toEqual([95, "seen", 0]);
  expect(seen?.perKgMinor).toBeCloseTo(95 / 0.48);
  expect((await run(`prices --seen ${pack}=0.60`)).printed).toContain("Price seen: Rolled oats, 500 g 0.60");
});

test("a count tells differences, finds what the record did not know, and clears doubts; what moves keeps its cost", async () => {
  await run("settle home --from port-ansel");
  const told = await act("count oats-rolled=120 cocoa-powder=80");
  expect(told.differences?.map(({ countedG }) => countedG)).toEqual([120]);
  expect(await massOf("oats-rolled")).toBeCloseTo(120);
  expect(await massOf("cocoa-powder")).toBeCloseTo(80);
  expect((await run("count oats-rolled=120")).printed).toContain("as the record has it");
  await act("moved bread-wholemeal=200 --to freezer");
  expect((await run("moved cocoa-powder --to freezer")).printed).toContain("Nobody here knows how long");
  const bread = (await stores()).lots.filter(({ food }) => food === "bread-wholemeal");
  expect(bread.map(({ place }) => place).sort()).toEqual(["dry-store", "freezer"]);
});

test("what was found enters with all that is told of it, at no known cost where none is", async () => {
  await run("settle home --from port-ansel");
  const before = await massOf("onion");
  const told = await act("found onion=0.3kg --by joren");
  expect(told.rows).toEqual([
    expect.objectContaining({
      kind: "stocked",
      by: "joren",
      stock: expect.objectContaining({ food: "onion", massG: 300, boughtOn: DAY, costMinor: 0, costUnknown: true }),
    }),
  ]);
  expect(await massOf("onion")).toBeCloseTo(before + 300);
  const words = "--in fridge --since 2026-12-05 --opened 2026-12-06 --use-by 2026-12-10 --cost 1.80";
  const { rows } = await act(`found butter-salted=250g ${words}`);
  expect(rows).toEqual([
    expect.objectContaining({
      stock: expect.objectContaining({
        place: "fridge",
        boughtOn: "2026-12-05",
        openedOn: "2026-12-06",
        useBy: "2026-12-10",
        costMinor: 180,
      }),
    }),
  ]);
  const line = (await stores()).lots.find(({ food }) => food === "butter-salted");
  expect([line?.costMinor, line?.until]).toEqual([180, "2026-12-10"]);
  expect((await run("found onion=5")).printed).toContain("what it cost is not known");
  expect((await run("found onion=5 --in freezer")).printed).toContain("Nobody here knows how long");
});

test("the date on a label holds for all lots of a food in place of the one before, and may be taken away", async () => {
  await run("settle home --from port-ansel");
  const until = async () => (await stores()).lots.filter(({ food }) => food === "onion").map((lot) => lot.until);
  const before = await until();
  const told = await act("labelled onion --use-by 2026-12-08");
  expect(told.rows.map(({ kind }) => kind)).toEqual(before.map(() => "labelled"));
  expect(await until()).toEqual(before.map(() => "2026-12-08"));
  expect((await run("labelled onion --no-date")).printed).toContain("says no date");
  expect(await until()).toEqual(before);
  const [lot] = (await stores()).lots.filter(({ food }) => food === "milk-semi-skimmed");
  expect((await run(`labelled ${lot?.lot} --best-before 2026-12-09`)).printed).toContain("best before Wed 9 Dec");
});

test("the kitchen is printed as a file that is sound, and set to what a changed copy says, as one act", async () => {
  await run("settle home --from port-ansel");
  await run("used oats-rolled=100g");
  const file = join(folder, "mine.json");
  const { printed } = await run("kitchen");
  writeFileSync(file, printed);
  expect((await run("check mine.json")).code).toBe(0);
  expect((await run("kitchen --set mine.json")).printed).toContain("nothing was written");
  const kitchen = JSON.parse(printed);
  kitchen.limits.budgetMinor = 5000;
  kitchen.eaters[0].name = "Maris Elm";
  kitchen.packs = kitchen.packs.slice(1);
  kitchen.stores = [];
  kitchen.useUp = [];
  writeFileSync(file, JSON.stringify(kitchen));
  const lots = await stores();
  const { rows } = await act("kitchen --set mine.json --by joren");
  const things = rows.flatMap((row) => (row.kind === "edited" ? [row.thing.split("/")[0]] : []));
  expect(new Set(things)).toEqual(new Set(["eaters", "limits", "packs"]));
  const now = JSON.parse((await run("kitchen")).printed);
  expect([now.limits.budgetMinor, now.eaters[0].name, now.packs.length]).toEqual([
    5000,
    "Maris Elm",
    kitchen.packs.length,
  ]);
  expect(await stores()).toEqual(lots);
  await run("undo");
  expect((await run("kitchen")).printed).toBe(printed);
  for (const [change, message] of [
    [{ currency: "SEK" }, "is booked in EUR"],
    [{ sittings: [] }, "sittings"],
  ] as const) {
    writeFileSync(file, JSON.stringify({ ...kitchen, ...change }));
    const { code, talked } = await run("kitchen --set mine.json");
    expect([code, talked]).toEqual([2, expect.stringContaining(message)]);
  }
  expect((await run("kitchen --set port-ansel")).talked).toContain("is a demo kitchen");
  expect((await run("kitchen")).printed).toBe(printed);
});

test("waste is told by reason, and the reasons add up to what the accounts call wasted", async () => {
  await run("settle home --from port-ansel");
  await run("wasted onion=100g --why spoilt");
  await run("wasted onion=50g --why spoilt");
  await run("wasted", "oats-rolled=40g", "--why", "the cat");
  await run("wasted banana=100g");
  await run("count rice-white-long=0");
  const { lines, wasteByReason } = v.parse(AccountsReport, JSON.parse((await run("accounts --json")).printed));
  expect(new Set(wasteByReason.map(({ why }) => why))).toEqual(new Set(["spoilt", "the cat", undefined, "missing"]));
  expect(wasteByReason.find(({ why }) => why === "spoilt")?.massG).toBeCloseTo(150);
  const wasted = lines.reduce((sum, { wasteMinor }) => sum + wasteMinor, 0);
  expect(wasteByReason.reduce((sum, { costMinor }) => sum + costMinor, 0)).toBe(wasted);
  expect(wasted).toBeGreaterThan(0);
  const { printed } = await run("accounts");
  for (const words of ["WASTE BY REASON", "went bad", "the cat", "nobody said why", "found missing"])
    expect(printed).toContain(words);
});

test("several faults at once are all told, and nothing is written", async () => {
  await run("settle home --from port-ansel");
  const rows = (await run("history --last 1000 --json")).printed;
  const { code, printed } = await run("found onin=5 lemon=0 --cost x --since 2026-12-09 --json");
  const codes = v.parse(FaultReport, JSON.parse(printed)).faults.map((fault) => fault.code);
  expect([code, codes]).toEqual([2, ["thing-unknown", "amount", "cost-of-which", "day-at-odds"]]);
  const codesOf = async (words: string) =>
    v.parse(FaultReport, JSON.parse((await run(`${words} --json`)).printed)).faults.map((fault) => fault.code);
  expect(await codesOf("bought --all foo=1.234 bar --use-by odd=2026-12-08 --fare two --shop Nowhere")).toEqual([
    "shop-unknown",
    "nothing-planned",
    "pack-unknown",
    "price",
    "pack-unknown",
    "pack-unknown",
    "price",
  ]);
  expect(await codesOf("prices --seen foo --seen bar=1.234 --size odd=5")).toEqual([
    "pack-unknown",
    "price-missing",
    "pack-unknown",
    "price",
    "pack-unknown",
  ]);
  expect(await codesOf("accounts --from 2026-12-09 --to 2026-12-08 --kwh dear")).toEqual(["days-turned", "price"]);
  const { talked } = await run("used onion=x lemon=y");
  expect(talked).toContain('"onion=x" is not written');
  expect(talked).toContain('"lemon=y" is not written');
  expect((await run("history --last 1000 --json")).printed).toBe(rows);
});

test("the frozen record of version 1 is restored, and merging it once more changes nothing", async () => {
  copyFileSync(frozen, join(folder, "record-1.json"));
  const first = await run("restore record-1.json");
  expect([first.code, first.printed]).toEqual([0, expect.stringMatching(/brought \d+ rows/)]);
  expect((await run("restore record-1.json")).printed).toContain("nothing that was not there already");
  expect((await run("stores")).code).toBe(0);
  expect((await run("accounts --each month")).code).toBe(0);
  writeFileSync(
    join(folder, "newer.json"),
    '{"format": "halfloaf-backup", "version": 99, "writtenAtMs": 0, "rows": []}',
  );
  expect((await run("restore newer.json")).talked).toContain("by a newer Halfloaf");
  expect((await run("backup record-1.json")).talked.replace(/\s+/g, " ")).toContain(
    "is no backup; it is left as it is",
  );
});

test("a kitchen that was settled twice alike is one; one that began apart is refused and nothing of it is taken", async () => {
  for (const home of ["home", "same"]) await run(`settle ${home} --from port-ansel`);
  await run("settle later --from port-ansel --on 2026-12-09");
  await run("used oats-rolled=100g");
  await run("used oats-rolled=50g --kitchen same");
  const before = await massOf("oats-rolled");
  for (const home of ["same", "later"]) await run(`backup ${home}.json --kitchen ${home}`);
  expect((await run("restore same.json")).printed).toMatch(/brought 1 row/);
  expect(await massOf("oats-rolled")).toBeCloseTo(before - 50);
  const refused = await run("restore later.json");
  expect([refused.code, refused.talked.replace(/\s+/g, " ")]).toEqual([2, expect.stringContaining("began apart")]);
  expect((await stores()).lots.filter(({ toCountG }) => toCountG !== undefined)).toEqual([]);
  expect(await massOf("oats-rolled")).toBeCloseTo(before - 50);
});

test("what was thought of dishes is kept, and the latest points steer the next plan", async () => {
  await run("settle home --from port-ansel");
  const dish = "red-lentil-cumin-soup-pitta";
  expect((await run(`rated ${dish}=9.5`)).printed).toContain("9.5 of 10.");
  await run(`rated ${dish}=2 --on 2026-12-08`);
  const opened = await openKitchenFolder(join(folder, "home"), { foods: new Map(), device: "test" });
  if (!opened.ok) throw new Error(opened.reason);
  expect(opened.kept.events.state.ratings).toEqual(new Map([[dish, 2]]));
  await opened.kept.close();
  for (const words of [`rated ${dish}`, `rated ${dish}=11`, "rated no-such-dish=5"])
    expect((await run(words)).code).toBe(2);
});

test("a file of a newer version stays untouched", async () => {
  await run("settle home --from port-ansel");
  const file = join(folder, "home", "kitchen.sqlite");
  const newer = readFileSync(file);
  // The version stands in the header of the file. **Source**: sqlite.org, "Database File Format", 1.3.
  newer.writeUInt32BE(9, 60);
  writeFileSync(file, newer);
  const refused = await run("used oats-rolled=1");
  expect([refused.code, refused.talked]).toEqual([2, expect.stringContaining("kept by a newer Halfloaf (version 9)")]);
  expect(readFileSync(file).equals(newer)).toBe(true);
});

test("a damaged file is made anew from the newest snapshot, and that is told", async () => {
  await run("settle home --from port-ansel");
  // A snapshot is written once a day.
  await runnerIn(folder, "2026-12-09")("stores");
  for (const end of ["", "-wal", "-shm"]) {
    const path = join(folder, "home", `kitchen.sqlite${end}`);
    if (existsSync(path)) writeFileSync(path, "half written");
  }
  const mended = await runnerIn(folder, "2026-12-10")("stores --json");
  expect([mended.code, mended.talked.replace(/\s+/g, " ")]).toEqual([
    0,
    expect.stringContaining("was damaged and was made anew"),
  ]);
  expect(JSON.parse(mended.printed).lots.length).toBeGreaterThan(20);
  expect(readdirSync(join(folder, "home")).some((name) => name.includes("damaged"))).toBe(true);
});

test("processes that write to one kitchen at once lose nothing", async () => {
  await run("settle home --from port-ansel");
  const before = await massOf("oats-rolled");
  const spawned = Array.from({ length: 4 }, () => {
    const env = { ...process.env, HALFLOAF_KITCHEN: "home" };
    const child = spawn(process.execPath, [bin, "used", "oats-rolled=10", "--on", DAY], { cwd: folder, env });
    return new Promise<number | null>((resolve) => child.on("close", resolve));
  });
  expect(await Promise.all(spawned)).toEqual([0, 0, 0, 0]);
  expect(await massOf("oats-rolled")).toBeCloseTo(before - 40);
});

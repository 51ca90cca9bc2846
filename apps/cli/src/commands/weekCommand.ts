import type { Planner } from "@halfloaf/engine";
import { startNodePlanner } from "@halfloaf/engine/node";
import { tellCount, tellDayShort, tellMoney } from "@halfloaf/words/en";
import { type KitchenProblem, toWeekPlan, type WeekPlan, withStandRise } from "halfloaf/kitchen";
import { EFFORTS, type Effort } from "halfloaf/menu";
import { checkPlan } from "halfloaf/menu/check";
import { addDays, type CivilDate } from "halfloaf/quantity";
import { EXIT, type ExitCode } from "../exitCodes.ts";
import { loadTables } from "../input/loadTables.ts";
import type { OpenKitchen } from "../input/openKitchen.ts";
import { acceptWeek } from "../keep/acceptCommand.ts";
import { civilDayOf } from "../keep/civilDayOf.ts";
import { openAnyKitchen } from "../keep/openAnyKitchen.ts";
import { isKept } from "../keep/openFolder.ts";
import { harmless, toJsonText } from "../output/harmless.ts";
import { wrap } from "../output/layout.ts";
import type { Terminal } from "../output/Terminal.ts";
import { layNoPlan } from "../week/layNoPlan.ts";
import { layWeek } from "../week/layWeek.ts";
import { findPlace, nameWeekFile, saveWeek } from "../week/saveWeek.ts";
import { type SearchOutcome, searchWeek } from "../week/searchWeek.ts";
import { settleFound } from "../week/settleFound.ts";
import { stateFromNow } from "../week/stateFromNow.ts";
import { tellNoPlan } from "../week/tellNoPlan.ts";
import { WeekProof } from "../week/WeekProof.ts";
import { type Fault, type Found, refuse } from "../words/Fault.ts";
import { toFaultReport } from "../words/FaultReport.ts";
import { tellNothingToAccept } from "../words/keepFaultWords.ts";
import { type Names, toNames } from "../words/Names.ts";
import { tellPace } from "../work/pace/tellPace.ts";
import { refuseInput } from "./refuseInput.ts";

/** What `halfloaf week` was asked. */
export interface WeekWish {
  readonly kitchen: string;
  /** Absent: the day the kitchen says. */
  readonly from?: CivilDate;
  readonly days: number;
  readonly seed: number;
  readonly effort: Effort;
  /** Searches from different seeds, the best of which is taken; absent: as many as the machine has room for. */
  readonly searches?: number;
  /** Seconds to prove how close to the best the plan is; 0 = not at all. */
  readonly proof: number;
  /** Percent by which estimated prices may rise and the budget still holds; absent: as the kitchen says. */
  readonly stand?: number;
  /** Absent: a file named after kitchen and day, or none where data was asked for. */
  readonly out?: string;
  /** True: the plan becomes that of its days in the kept kitchen. */
  readonly accept: boolean;
  readonly json: boolean;
}

/** The days of a kitchen, stated and ready to be searched. */
interface Task {
  readonly opened: OpenKitchen;
  readonly stated: KitchenProblem;
  readonly names: Names;
  /** Where the plan goes, as named and as a path; absent where it is only printed. */
  readonly out: { readonly name: string; readonly path: string } | undefined;
}

/** Plans the days, keeps the plan as a file and prints it; or says why there is none. */
export async function weekCommand(wish: WeekWish, terminal: Terminal): Promise<ExitCode> {
  const task = await prepare(wish, terminal);
  if (!task.ok) return refuseInput(wish.kitchen, task.faults, wish.json, terminal);
  const { stated, opened } = task.value;
  const { kitchen } = opened;
  const planner = startNodePlanner();
  const proof = new WeekProof(planner, stated.problem, wish.proof);
  terminal.talk(
    `Planning ${harmless(kitchen.name)}, ${tellCount(wish.days, "day")} from ${tellDayShort(stated.from)}: ${tellCount(stated.sittings.filter(({ putBy }) => !putBy).length, "sitting")}, ` +
      `${tellCount(stated.problem.dishes.length, "dish", "dishes")}, ${tellCount(stated.packs.length, "pack")}.`,
  );
  const pace = tellPace(kitchen);
  if (pace !== undefined) terminal.talk(pace);
  try {
    return await planAndProve(wish, task.value, { planner, proof }, terminal);
  } finally {
    planner.dispose();
  }
}

async function planAndProve(
  wish: WeekWish,
  task: Task,
  { planner, proof }: { readonly planner: Planner; readonly proof: WeekProof },
  terminal: Terminal,
): Promise<ExitCode> {
  const { currency } = task.opened.kitchen;
  const { seed, effort, searches = planner.mostSearches } = wish;
  const beside = searches > 1 && { beside: { planner, searches } };
  const search = { stated: task.stated, currency, seed, moves: EFFORTS[effort], ...beside };
  const found = await searchWeek({ ...search, onBetter: (moneyMinor) => proof.hear(moneyMinor) }, terminal);
  if (found.kind !== "found") return endWithoutPlan(wish, task, found, terminal);
  const { stated, outcome } = settleFound(task.opened, task.stated, found);
  if (outcome.kind !== "found") return endWithoutPlan(wish, { ...task, stated }, outcome, terminal);
  const plan = toSoundWeek({ ...task, stated }, outcome);
  const accepted = wish.accept ? await accept(wish, plan, terminal) : undefined;
  if (accepted?.ok === false) return refuseInput(wish.kitchen, accepted.faults, wish.json, terminal);
  const code = finish(wish, task, plan, { ...outcome, searches }, terminal);
  if (code === EXIT.done) await proof.tell(outcome.plan, outcome.moneyMinor, currency, terminal);
  return code;
}

/** Takes the plan as that of its days, from today on or from its first day where that is earlier. */
async function accept({ kitchen }: WeekWish, plan: WeekPlan, terminal: Terminal): Promise<Found<unknown>> {
  const [on = plan.from] = [plan.from, civilDayOf(terminal.nowMs())].sort();
  const accepted = await acceptWeek({ kitchen, on, json: false }, plan, terminal);
  if (accepted.ok) terminal.talk(`Accepted in ${harmless(kitchen)}.`);
  return accepted;
}

/** Everything that can be refused before the search: the kitchen, the days, the place of the file. */
async function prepare(wish: WeekWish, terminal: Terminal): Promise<Found<Task>> {
  const { cwd } = terminal;
  if (wish.accept && !isKept(wish.kitchen, cwd)) return refuse(tellNothingToAccept(wish.kitchen));
  const opened = await openAnyKitchen(wish.kitchen, terminal, loadTables(), wish.from);
  if (!opened.ok) return opened;
  const { tables, name, kitchen: written } = opened.value;
  const kitchen = wish.stand === undefined ? written : withStandRise(written, wish.stand);
  const from = wish.from ?? kitchen.startsOn;
  if (!endsInTime(from, wish.days)) return refuse(tellTooLate(from));
  const file = wish.out ?? (wish.json ? undefined : nameWeekFile(name, from));
  const place = file === undefined ? undefined : findPlace(file, cwd);
  if (place !== undefined && !place.ok) return place;
  const asked = { name: wish.kitchen, days: wish.days, ...(wish.from && { from: wish.from }) };
  const stated = stateFromNow({ kitchen, tables }, asked, terminal);
  if (stated.sittings.length === 0) return refuse(tellNoSittings(from));
  const out = file === undefined || place === undefined ? undefined : { name: file, path: place.value };
  return { ok: true, value: { opened: { ...opened.value, kitchen }, stated, names: toNames(kitchen, tables), out } };
}

/** The plan with names and sums. What does not hold here is a defect of the program, never of what was given. */
function toSoundWeek(task: Task, found: Extract<SearchOutcome, { kind: "found" }>): WeekPlan {
  const { stated, opened } = task;
  const { faults } = checkPlan(stated.problem, found.plan);
  if (faults.length > 0)
    throw new Error(`the search gave a plan that breaks its limits: ${JSON.stringify(faults.slice(0, 5))}`);
  const { seed, moves, moneyMinor } = found;
  const week = toWeekPlan(opened.kitchen, opened.tables, stated, found.plan, { seed, moves, moneyMinor });
  const { openingMinor, tillMinor, platesMinor, wasteMinor, carryOverMinor } = week.accounts;
  if (openingMinor + tillMinor !== platesMinor + wasteMinor + carryOverMinor) {
    throw new Error(`the accounts do not add up: ${JSON.stringify(week.accounts)}`);
  }
  return week;
}

function finish(
  wish: WeekWish,
  { names, stated, out, opened: { tables } }: Task,
  plan: WeekPlan,
  { seed, moves, moneyMinor, stopped, searches }: Extract<SearchOutcome, { kind: "found" }> & { searches: number },
  terminal: Terminal,
): ExitCode {
  const money = `${tellMoney(Math.round(moneyMinor), plan.currency)} ${plan.currency}`;
  const best = searches > 1 ? `, the best of ${searches} searches` : "";
  terminal.talk(
    `${stopped ? "Stopped" : "Searched"} after ${moves} moves from seed ${seed}${best}; weighed with minutes, dislikes and shortfalls ${money}.`,
  );
  if (out !== undefined) {
    const saved = saveWeek(plan, out.path, out.name);
    if (!saved.ok) return refuseInput(wish.kitchen, saved.faults, wish.json, terminal);
    terminal.talk(`Kept as ${harmless(out.name)}.`);
  }
  const begunAhead = new Set(
    tables.dishes.filter(({ method }) => method.some(({ ahead }) => ahead)).map(({ id }) => id),
  );
  const page = { ...terminal.page, plan, names, goneOff: stated.goneOff, begunAhead };
  if (wish.json) terminal.print(toJsonText(plan));
  else for (const line of layWeek(page)) terminal.print(line);
  return EXIT.done;
}

function endWithoutPlan(
  wish: WeekWish,
  { opened: { kitchen, tables }, stated, names }: Task,
  outcome: Exclude<SearchOutcome, { kind: "found" }>,
  terminal: Terminal,
): ExitCode {
  const { page, print } = terminal;
  const reasons = tellNoPlan({ kitchen, tables, stated, names }, outcome);
  if (wish.json) print(toJsonText(toFaultReport(wish.kitchen, [...reasons.why, ...reasons.nearest], "no-plan")));
  else {
    for (const line of wrap(tellWhyNone(outcome), page.width)) print(page.paint.strong(line));
    for (const line of ["", ...layNoPlan(reasons, page)]) print(line);
  }
  terminal.talk("No plan was found that keeps every limit; no file was written.");
  return EXIT.noPlan;
}

function tellWhyNone(outcome: Exclude<SearchOutcome, { kind: "found" }>): string {
  if (outcome.kind === "gaps") return "No plan: there are sittings without any dish.";
  const stopped = outcome.stopped ? "The search was stopped before" : `In ${outcome.moves} moves`;
  const found = outcome.stopped ? "any plan kept every limit" : "no plan was found that keeps every limit";
  return `${stopped} ${found}. What stands in the way and what would be enough, as far as short searches tell; a longer --effort may find a plan all the same:`;
}

function endsInTime(from: CivilDate, days: number): boolean {
  return from <= addDays("9999-12-31", -days);
}

function tellTooLate(from: CivilDate): Fault {
  const sentence = `The days from ${from} on run past the end of the year 9999.`;
  return { code: "from-late", path: [], value: from, sentence, remedy: "Name an earlier day with --from." };
}

function tellNoSittings(from: CivilDate): Fault {
  const sentence = `The kitchen has no sitting in the days from ${from} on.`;
  const remedy = 'Plan more days with --days, or give "sittings" more weekdays.';
  return { code: "no-sittings", path: ["sittings"], sentence, remedy };
}

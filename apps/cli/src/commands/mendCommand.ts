import {
  type ChangedKitchenWeek,
  changeWeek,
  platesAgainst,
  replanWeek,
  type WeekChange,
  type WeekPlan,
  writeWeek,
} from "halfloaf/kitchen";
import { followWeek } from "halfloaf/kitchen/record";
import { EFFORTS, type Effort, priceKeeping, type ReplanOutcome } from "halfloaf/menu";
import { checkPlan } from "halfloaf/menu/check";
import type { CivilDate } from "halfloaf/quantity";
import { EXIT, type ExitCode } from "../exitCodes.ts";
import { loadTables } from "../input/loadTables.ts";
import { acceptWeek } from "../keep/acceptCommand.ts";
import { civilDayOf } from "../keep/civilDayOf.ts";
import { type AcceptedWeek, openAccepted } from "../keep/openAccepted.ts";
import { isKept } from "../keep/openFolder.ts";
import { layMend } from "../mend/layMend.ts";
import { openWeekFile, type WeekFile } from "../mend/openWeekFile.ts";
import type { AskedChange } from "../mend/parseMendOptions.ts";
import { toMendReport } from "../mend/toMendReport.ts";
import { tellChangeIssue, toWeekChanges } from "../mend/toWeekChanges.ts";
import { harmless, toJsonText } from "../output/harmless.ts";
import { wrap } from "../output/layout.ts";
import type { Terminal } from "../output/Terminal.ts";
import { layNoPlan } from "../week/layNoPlan.ts";
import { layWeek } from "../week/layWeek.ts";
import { findPlace, nameWeekFile, saveWeek } from "../week/saveWeek.ts";
import { tellNoRest } from "../week/tellNoPlan.ts";
import { type Found, refuse } from "../words/Fault.ts";
import { toFaultReport } from "../words/FaultReport.ts";
import { tellNothingToAccept } from "../words/keepFaultWords.ts";
import { type Names, toNames } from "../words/Names.ts";
import { refuseInput } from "./refuseInput.ts";

/** What `halfloaf mend` was asked. */
export interface MendWish {
  /** A week's file, or the folder of a kept kitchen, whose accepted week is meant. */
  readonly file: string;
  /** Absent: the demo kitchen of the name in the week. */
  readonly kitchen?: string;
  readonly changes: readonly AskedChange[];
  /** First day that is not over; absent: the week has not begun. */
  readonly today?: CivilDate;
  readonly seed: number;
  /** How long to look for a cheaper plan made afresh. */
  readonly effort: Effort;
  /** Absent: a file named after the week's, or none where data was asked for. */
  readonly out?: string;
  /** True: the new week becomes the plan of its days in the kept kitchen. */
  readonly accept: boolean;
  readonly all: boolean;
  readonly json: boolean;
}

interface Task {
  readonly file: WeekFile;
  readonly changes: readonly WeekChange[];
  readonly changed: ChangedKitchenWeek;
  /** First day that is not over. */
  readonly today: CivilDate;
  readonly names: Names;
  readonly out: { readonly name: string; readonly path: string } | undefined;
}

/** Plans a kept week again after changes, keeps the new week as a file and prints what changed. */
export async function mendCommand(wish: MendWish, terminal: Terminal): Promise<ExitCode> {
  const task = await prepare(wish, terminal);
  if (!task.ok) return refuseInput(wish.file, task.faults, wish.json, terminal);
  const { kitchen, tables } = task.value.file.opened;
  const { changed, outcome } = replanWeek(kitchen, tables, task.value.changed, {
    judge: checkPlan,
    seed: wish.seed,
    farMoves: EFFORTS[wish.effort],
  });
  if (outcome.kind === "none") return tellNone(wish, { ...task.value, changed }, outcome, terminal);
  terminal.talk(
    outcome.kept
      ? "The old plan still stands and is kept."
      : `Planned again in ${outcome.moves} moves; looking for a cheaper plan made afresh.`,
  );
  await terminal.pause();
  return finish(wish, { ...task.value, changed }, outcome, terminal);
}

/** Everything that can be refused before any search: the file, the kitchen, the changes, the place of the new file. */
async function prepare(wish: MendWish, terminal: Terminal): Promise<Found<Task>> {
  const { cwd } = terminal;
  const isOfKept = isKept(wish.file, cwd);
  if (wish.accept && !isOfKept) return refuse(tellNothingToAccept(wish.file));
  const today = wish.today ?? (isOfKept ? civilDayOf(terminal.nowMs()) : undefined);
  const read: Found<WeekFile & Partial<AcceptedWeek>> = isOfKept
    ? await openAccepted(wish.file, today ?? "", terminal)
    : await openWeekFile(wish.file, wish.kitchen, terminal, loadTables());
  if (!read.ok) return read;
  const { week, opened } = read.value;
  const { kitchen, tables } = opened;
  const changes = toWeekChanges(wish.changes, { kitchen, tables, week });
  if (!changes.ok) return changes;
  const file =
    wish.out ?? (wish.json ? undefined : nameMended(isOfKept ? nameWeekFile(opened.name, week.from) : wish.file));
  const place = file === undefined ? undefined : findPlace(file, cwd);
  if (place !== undefined && !place.ok) return place;
  const known = read.value.changes ?? [];
  const change = (all: readonly WeekChange[]) => changeWeek(kitchen, tables, week, all, today);
  const changed = followWeek(change, changes.value, known);
  if (!changed.ok) return { ok: false, faults: changed.issues.map((issue) => tellChangeIssue(issue, wish.changes)) };
  const out = file === undefined || place === undefined ? undefined : { name: file, path: place.value };
  const names = toNames(kitchen, tables);
  return { ok: true, value: { file: read.value, ...changed.value, today: today ?? week.from, names, out } };
}

/** The usual name of a mended week: that of the week with an ending, which is not put there twice. */
function nameMended(file: string): string {
  return `${file.replace(/\.json$/i, "").replace(/-mended$/, "")}-mended.json`;
}

async function finish(
  wish: MendWish,
  { file, changes, changed, today, names, out }: Task,
  outcome: Extract<ReplanOutcome, { kind: "planned" }>,
  terminal: Terminal,
): Promise<ExitCode> {
  const { kitchen, tables } = file.opened;
  const { faults } = checkPlan(changed.week.problem, outcome.plan);
  if (faults.length > 0)
    throw new Error(`a plan was made that breaks its limits: ${JSON.stringify(faults.slice(0, 5))}`);
  const search = { judge: checkPlan, seed: wish.seed, moves: EFFORTS[wish.effort] };
  const keeping = priceKeeping(changed.week, outcome.plan, search);
  const { moves, moneyMinor } = outcome;
  const week = toSoundWeek(writeWeek(kitchen, tables, changed, outcome.plan, { seed: wish.seed, moves, moneyMinor }));
  const { eaters } = changes.flatMap((change) => (change.kind === "kitchen" ? [change.now] : [])).at(-1) ?? kitchen;
  const against = platesAgainst(file.week, { ...kitchen, eaters }, tables, today);
  const report = toMendReport({ old: file.week, changed, changes, today, outcome, keeping, against, week });
  const accepted = wish.accept
    ? await acceptWeek({ kitchen: wish.file, on: today, json: false }, week, terminal)
    : undefined;
  if (accepted?.ok === false) return refuseInput(wish.file, accepted.faults, wish.json, terminal);
  if (accepted !== undefined) terminal.talk(`Accepted in ${harmless(wish.file)}.`);
  if (out !== undefined) {
    const saved = saveWeek(week, out.path, out.name);
    if (!saved.ok) return refuseInput(wish.file, saved.faults, wish.json, terminal);
    terminal.talk(`Kept as ${harmless(out.name)}.`);
  }
  if (wish.json) terminal.print(toJsonText(report));
  else {
    const ahead = tables.dishes.filter(({ method }) => method.some((step) => step.ahead)).map(({ id }) => id);
    const weekPage = {
      ...terminal.page,
      plan: week,
      names,
      goneOff: changed.stated.goneOff,
      begunAhead: new Set(ahead),
    };
    const lines = [...layMend({ ...terminal.page, report, names }), ...(wish.all ? ["", ...layWeek(weekPage)] : [])];
    for (const line of lines) terminal.print(line);
  }
  return EXIT.done;
}

/** The week as it is. Accounts that do not add up are a defect of the program. */
function toSoundWeek(week: WeekPlan): WeekPlan {
  const { openingMinor, tillMinor, platesMinor, wasteMinor, carryOverMinor } = week.accounts;
  if (openingMinor + tillMinor !== platesMinor + wasteMinor + carryOverMinor)
    throw new Error(`the accounts do not add up: ${JSON.stringify(week.accounts)}`);
  return week;
}

async function tellNone(
  wish: MendWish,
  { file, changed, names }: Task,
  outcome: Extract<ReplanOutcome, { kind: "none" }>,
  { page, print, showProgress, pause, talk }: Terminal,
): Promise<ExitCode> {
  const { kitchen, tables } = file.opened;
  showProgress("Looking for what stands in the way");
  await pause();
  const reasons = tellNoRest({ kitchen, tables, stated: changed.stated, names }, changed.week, outcome);
  showProgress("");
  if (wish.json) print(toJsonText(toFaultReport(wish.file, [...reasons.why, ...reasons.nearest], "no-plan")));
  else {
    const sentence =
      "No plan was found that keeps every limit after these changes; a longer --effort may find one, or loosen a limit:";
    for (const line of wrap(sentence, page.width)) print(page.paint.strong(line));
    for (const line of ["", ...layNoPlan(reasons, page)]) print(line);
  }
  talk("The week is as it was; no file was written.");
  return EXIT.noPlan;
}

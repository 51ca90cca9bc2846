import type { Kitchen } from "halfloaf/kitchen";
import { type FoundPlan, listLots } from "halfloaf/menu";
import { checkPlan } from "halfloaf/menu/check";
import type { CivilDate } from "halfloaf/quantity";
import { findDish } from "../card/findDish.ts";
import { type Found, refuse } from "../words/Fault.ts";
import { findNearest } from "../words/nearest.ts";
import { quote } from "../words/valueWords.ts";
import { reasonDish } from "./reasonDish.ts";
import { reasonLimits } from "./reasonLimits.ts";
import { reasonOtherDish } from "./reasonOtherDish.ts";
import { reasonPack } from "./reasonPack.ts";
import type { WhyReport } from "./WhyReport.ts";
import type { WhyTask } from "./WhyTask.ts";

/** What is asked of a plan; nothing at all asks for the limits and the most telling dishes. */
export interface WhyQuestion {
  /** Date and kind of a sitting. */
  readonly sitting?: { readonly date: string; readonly kind: string };
  readonly dish?: string;
  /** A pack or a food. */
  readonly pack?: string;
  readonly limits: boolean;
  /** First day that is not over: what the limits cost is told of the days from it on, and nothing else. */
  readonly today?: CivilDate;
}

/** Dishes that are told where nothing is asked for: the dearest, and those that share most. */
const MOST_TELLING = 3;

/** One reason that is still to be looked for. */
export interface WhyStep {
  /** What is being looked for, in the words of a person who waits. */
  readonly about: string;
  /** Looks for it; plans of other steps, which the best answers start from, are read from and added to `known`. */
  readonly find: (known: FoundPlan[]) => WhyPart;
}

/** What one step adds to the report. */
export type WhyPart = Pick<WhyReport, "limits" | "dishes" | "otherDishes" | "packs">;

/** The report before any reason is found. */
export function beginReport({ stated, plan, currency, kitchen }: WhyTask): WhyReport {
  return {
    format: "halfloaf-why",
    version: 1,
    kitchen: kitchen.name,
    currency,
    from: stated.from,
    days: stated.problem.days,
    moneyMinor: Math.round(checkPlan(stated.problem, plan).money.totalMinor),
  };
}

/** A report with one part more. */
export function addPart(report: WhyReport, { limits, dishes, otherDishes, packs }: WhyPart): WhyReport {
  return {
    ...report,
    ...(limits && { limits }),
    ...(dishes && { dishes: [...(report.dishes ?? []), ...dishes] }),
    ...(otherDishes && { otherDishes: [...(report.otherDishes ?? []), ...otherDishes] }),
    ...(packs && { packs: [...(report.packs ?? []), ...packs] }),
  };
}

/** The reasons that are asked for as steps, the quick ones first; or what the question names that the plan does not have. */
export function listWhySteps(task: WhyTask, question: WhyQuestion): Found<WhyStep[]> {
  const limits: WhyStep = { about: "what the limits cost", find: (known) => ({ limits: reasonLimits(task, known) }) };
  const asksPlates = question.sitting !== undefined || question.dish !== undefined || question.pack !== undefined;
  if (question.today !== undefined) return asksPlates ? refuse(LIMITS_ALONE) : { ok: true, value: [limits] };
  if (!question.limits && !asksPlates) {
    return { ok: true, value: [...chooseTelling(task).map((sitting) => dishStep(task, sitting)), limits] };
  }
  const packs = question.pack === undefined ? undefined : answerPack(task, question.pack);
  if (packs !== undefined && !packs.ok) return packs;
  const dishes = answerDish(task, question);
  if (!dishes.ok) return dishes;
  return { ok: true, value: [...(packs?.value ?? []), ...dishes.value, ...(question.limits ? [limits] : [])] };
}

const LIMITS_ALONE = {
  code: "today-limits-alone",
  path: [],
  sentence: "With --today only what the limits cost is told: dishes and packs have the reasons of the whole plan.",
  remedy: "Leave out --today, or --sitting, --dish and --pack.",
};

function dishStep(task: WhyTask, sitting: number): WhyStep {
  const id = servedAt(task, sitting) ?? "";
  return {
    about: `why ${task.names.dish(id)}`,
    find: (known) => ({ dishes: [reasonDish(task, sitting, known)] }),
  };
}

function answerDish(task: WhyTask, { sitting, dish: word }: WhyQuestion): Found<WhyStep[]> {
  if (sitting === undefined && word === undefined) return { ok: true, value: [] };
  const all = task.stated.sittings.map((_, k) => k);
  const isMeant = (k: number): boolean => {
    const one = task.stated.sittings[k];
    return sitting === undefined || (one?.date === sitting.date && one?.kind === sitting.kind);
  };
  const meant = all.filter(isMeant);
  if (meant.length === 0) return refuse(tellNoSitting(task, sitting));
  if (word === undefined) return { ok: true, value: meant.map((k) => dishStep(task, k)) };
  const dish = findDish(word, task.tables.dishes);
  if (!dish.ok) return dish;
  const { id, fits } = dish.value;
  const served = meant.filter((k) => servedAt(task, k) === id);
  if (served.length > 0) {
    const first = sitting === undefined ? oneOfEachBatch(task, served) : served;
    return { ok: true, value: first.map((k) => dishStep(task, k)) };
  }
  const asked = sitting === undefined ? chooseFitting(task, meant, fits) : meant;
  const about = `why not ${task.names.dish(id)}`;
  return {
    ok: true,
    value: asked.map((k) => ({ about, find: () => ({ otherDishes: [reasonOtherDish(task, id, k)] }) })),
  };
}

function servedAt({ stated, plan }: WhyTask, k: number): string | undefined {
  const dish = plan.batches.find(({ sittings }) => sittings.includes(k))?.dish;
  return dish === undefined ? undefined : stated.problem.dishes[dish]?.id;
}

function oneOfEachBatch({ plan }: WhyTask, sittings: readonly number[]): number[] {
  return sittings.filter((k) => plan.batches.some((batch) => batch.sittings[0] === k));
}

/** Without a sitting named, a dish that is not served is tried at the first few that it is meant for. */
function chooseFitting({ stated }: WhyTask, sittings: readonly number[], fits: readonly string[]): number[] {
  const fitting = sittings.filter((k) => fits.includes(stated.sittings[k]?.kind ?? ""));
  return (fitting.length > 0 ? fitting : sittings).slice(0, MOST_TELLING);
}

function tellNoSitting({ stated }: WhyTask, sitting: WhyQuestion["sitting"]) {
  const asked = sitting === undefined ? "" : `${sitting.date}:${sitting.kind}`;
  const known = stated.sittings.map(({ date, kind }) => `${date}:${kind}`);
  const near = findNearest(asked, new Set(known), 3, 0);
  const sentence = `The plan has no sitting ${quote(asked)}.`;
  return {
    code: "sitting-unknown",
    path: [],
    value: quote(asked),
    sentence,
    remedy: `Nearest to it: ${near.join(", ")}.`,
  };
}

function answerPack(task: WhyTask, word: string): Found<WhyStep[]> {
  const { stated, plan } = task;
  const pack = stated.packs.find(({ id }) => id === word);
  const food = stated.foods.findIndex(({ id }) => id === (pack?.food ?? word));
  if (food >= 0 && plan.purchases.some((purchase) => stated.problem.packs[purchase.pack]?.food === food)) {
    const about = `why these packs of ${task.names.food(stated.foods[food]?.id ?? "")}`;
    const find = (): WhyPart => {
      const reason = reasonPack(task, food);
      return reason === undefined ? {} : { packs: [reason] };
    };
    return { ok: true, value: [{ about, find }] };
  }
  const bought = plan.purchases.map((purchase) => stated.packs[purchase.pack]?.id ?? "");
  const near = findNearest(word, new Set(bought), 3, 0);
  const sentence =
    food < 0 ? `There is no pack and no food ${quote(word)} in this plan.` : `The plan buys nothing of ${quote(word)}.`;
  return refuse({
    code: "pack-unknown",
    path: [],
    value: quote(word),
    sentence,
    remedy: `Bought and nearest to it: ${near.join(", ")}.`,
  });
}

/** The first sittings of the dishes that cost most a portion, and of those that share most lots with others. */
function chooseTelling({ stated: { problem, packs, lots }, plan }: WhyTask): number[] {
  const facts = plan.batches.map(({ dish, sittings }, batch) => {
    const portions = sittings.reduce((sum, k) => sum + (problem.sittings[k]?.portions ?? 0), 0);
    const taken = listLots(problem, plan, batch);
    const money = taken.reduce((sum, { lot, massG }) => {
      if ("stock" in lot) return sum + massG * pricePerG(lots[lot.stock]);
      const bought = plan.purchases[lot.purchase]?.pack ?? -1;
      return sum + (massG * (packs[bought]?.priceMinor ?? 0)) / (problem.packs[bought]?.massG ?? 1);
    }, 0);
    const shares = new Set(taken.flatMap(({ withBatches }) => withBatches)).size;
    return { dish, sitting: sittings[0] as number, dear: money / Math.max(portions, 1e-9), shares };
  });
  const dearest = [...facts].sort((a, b) => b.dear - a.dear).slice(0, MOST_TELLING);
  const sharing = [...facts].sort((a, b) => b.shares - a.shares).slice(0, MOST_TELLING);
  // A dish that is cooked more than once has much the same reasons each time.
  const told = new Map<string | undefined, number>();
  for (const { dish, sitting } of [...dearest, ...sharing]) {
    const id = problem.dishes[dish]?.id;
    told.set(id, told.get(id) ?? sitting);
  }
  return [...told.values()];
}

function pricePerG(lot: Kitchen["stores"][number] | undefined): number {
  return lot === undefined || lot.massG <= 0 ? 0 : lot.costMinor / lot.massG;
}

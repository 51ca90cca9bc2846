import type { MenuPlan } from "../plan.ts";
import { familyOf } from "../problem.ts";
import type { Change } from "../search/WeekState.ts";
import type { Judge } from "./Judge.ts";
import type { MenuBoard } from "./MenuBoard.ts";
import type { ChangedWeek } from "./MenuChange.ts";
import type { Remainder } from "./Remainder.ts";
import { type ChangeReason, dishesOf, type SittingChange } from "./SittingChange.ts";

/** What putting old dishes back is done by. */
export interface PutBackRules {
  readonly week: Pick<ChangedWeek, "problem">;
  readonly remainder: Remainder;
  readonly judge: Judge;
  /** What another dish at a sitting must save at least (minor units). */
  readonly changeMinor: number;
}

/** A plan of the remainder in which every change is worth its price, and its changes with their reasons. */
export interface SettledPlan {
  readonly plan: MenuPlan;
  readonly changes: readonly SittingChange[];
}

/** Sums that differ by less are the same. */
const SLACK_MINOR = 1e-6;

/** What came of putting some old dishes back: the reason that speaks against it, or how much the week costs more. */
type Trial = ChangeReason & { readonly step: readonly Change[] };

/**
 * Puts old dishes back for as long as the judge finds no fault with that and the week costs no more than the changes
 * taken back are worth: one sitting, two at once, or all sittings of one dish. Each change that is left then breaks a
 * limit or saves its price, everything else being as it is. The board holds the plan
 * at the start and at the end, of the problem with the price of changes in it (`withKeepCosts`).
 */
export function putBack(board: MenuBoard, rules: PutBackRules): SettledPlan {
  for (;;) {
    const { open, nowMinor, plan } = compare(board, rules);
    const single = open.map(({ sitting, from }) => tryBack(board, rules, [{ sitting, dish: from }], nowMinor));
    const step = cheapestOf(single, rules) ?? findJoint(board, rules, open, nowMinor);
    if (step === undefined) return { plan, changes: open.map((each, i) => ({ ...each, why: toReason(single[i]) })) };
    board.put(step);
  }
}

type OpenChange = Omit<SittingChange, "why">;

/** The menu of the board beside the old one. */
function compare(board: MenuBoard, { week, remainder, judge }: PutBackRules) {
  const { problem, join } = remainder;
  const plan = board.plan();
  const before = dishesOf(problem, remainder.plan);
  const open = dishesOf(problem, plan).flatMap((to, sitting): OpenChange[] => {
    const from = before[sitting] as number;
    return from < 0 || familyOf(problem, from) === familyOf(problem, to) ? [] : [{ sitting, from, to }];
  });
  return { plan, open, nowMinor: judge(week.problem, join(plan)).money.totalMinor };
}

function tryBack(
  board: MenuBoard,
  { week, remainder, judge }: PutBackRules,
  step: readonly Change[],
  nowMinor: number,
): Trial {
  if (!step.every((change) => board.takes(change))) return { kind: "not-offered", step };
  board.put(step);
  const { faults, money } = judge(week.problem, remainder.join(board.plan()));
  board.takeBack();
  return faults.length > 0
    ? { kind: "breaks", faults, step }
    : { kind: "dearer", byMinor: money.totalMinor - nowMinor, step };
}

function toReason(trial: Trial | undefined): ChangeReason {
  const { step: _, ...why } = trial as Trial;
  return why;
}

/** Of the steps that cost no more than the changes they take back are worth, the one that saves most. */
function cheapestOf(trials: readonly Trial[], { changeMinor }: PutBackRules): readonly Change[] | undefined {
  let least = SLACK_MINOR;
  let cheapest: readonly Change[] | undefined;
  for (const trial of trials) {
    if (trial.kind !== "dearer") continue;
    const overMinor = trial.byMinor - trial.step.length * changeMinor;
    if (overMinor > least) continue;
    [least, cheapest] = [overMinor, trial.step];
  }
  return cheapest;
}

/** Steps over several sittings, of which the judge sees only those that the search would take too. */
function findJoint(
  board: MenuBoard,
  rules: PutBackRules,
  open: readonly OpenChange[],
  nowMinor: number,
): readonly Change[] | undefined {
  const nowReckoned = board.reckon();
  const promising = listJoint(open).filter((step) => {
    if (!step.every((change) => board.takes(change))) return false;
    board.put(step);
    const reckoned = board.reckon();
    board.takeBack();
    return reckoned <= nowReckoned + SLACK_MINOR;
  });
  return cheapestOf(
    promising.map((step) => tryBack(board, rules, step, nowMinor)),
    rules,
  );
}

/** Every two sittings, all where one dish stood, and all where one dish now stands. */
function listJoint(open: readonly OpenChange[]): Change[][] {
  const back = ({ sitting, from }: OpenChange): Change => ({ sitting, dish: from });
  const pairs = open.flatMap((a, i) => open.slice(i + 1).map((b) => [back(a), back(b)]));
  const groupBy = (keyOf: (change: OpenChange) => number): Change[][] =>
    [...new Set(open.map(keyOf))].map((key) => open.filter((each) => keyOf(each) === key).map(back));
  const groups = [...groupBy(({ from }) => from), ...groupBy(({ to }) => to), open.map(back)];
  return [...pairs, ...groups.filter(({ length }) => length > 2)];
}

import {
  type ChangedKitchenWeek,
  changeRestored,
  type KitchenNow,
  kitchenChanges,
  replanWeek,
  stateTogether,
  type WeekChange,
  type WeekPlan,
  writeWeek,
} from "halfloaf/kitchen";
import { type EditedKitchen, followWeek } from "halfloaf/kitchen/record";
import { explainRest, type LimitReading, type MenuPlan, type WhyImpossible } from "halfloaf/menu";
import { checkPlan } from "halfloaf/menu/check";
import type { CivilDate, Parsed } from "halfloaf/quantity";
import { SEED } from "./effort.ts";
import type { Stage } from "./Stage.ts";
import { leaveSitting, type Serving } from "./serve.ts";
import type { ImpossibleTold, Knob, WayOut, WeekAsked } from "./Told.ts";
import { tellGaps, toWays } from "./tellImpossible.ts";
import { toWayOut } from "./toKnobs.ts";
import { turnKnobs } from "./turnKnobs.ts";

/** Moves of a re-plan after a plan came up, as where the week was asked for. */
const MOVES = { moves: 12_000, wideMoves: 0, farMoves: 30_000 };
/** What was paid or made besides is off a limit only in part, so that a limit may have to be raised more than once. */
const MOST_RAISES = 4;

type Figures = Pick<WayOut, "knobs" | "otherwise">;

/** What could not be planned, and what the kitchen is now, in which limits are loosened. */
export interface NoneAsked {
  readonly asked: readonly WeekChange[];
  /** A dish that is to leave a sitting, by its position in the week, as it is moved to another. */
  readonly leaves?: Required<Omit<Serving, "to">> | undefined;
  readonly now: EditedKitchen;
  readonly day: CivilDate;
  /** Moves of each of the short searches; absent = as many as usual. */
  readonly moves?: number;
}

/** Why a week could not be planned again after these changes, and how little of the limits as they are now would have to give way. */
export function whyNone(
  stage: Stage,
  { week, known }: WeekAsked,
  { asked, leaves, now, day, moves }: NoneAsked,
): ImpossibleTold | undefined {
  const { kitchen, tables, before } = stage;
  const today = day > week.from ? day : week.from;
  const others = known.filter(({ kind }) => kind !== "kitchen");
  const changeBy = (changes: readonly WeekChange[]): Parsed<ChangedKitchenWeek> => {
    const changed = changeRestored(kitchen, tables, before, changes, today);
    return changed.ok && leaves !== undefined
      ? { ok: true, value: leaveSitting(changed.value, week, leaves) }
      : changed;
  };
  const change = (of: KitchenNow) => followWeek(changeBy, asked, [...others, ...kitchenChanges(kitchen, of)]);
  const wish = { seed: SEED, ...(moves !== undefined && { moves }) };
  const followed = change(now);
  if (!followed.ok) return undefined;
  const first = followed.value.changed;
  const why = explainRest(first.week, wish);
  if (why.kind !== "possible") return tell(why, first);
  // A plan that keeps the limits may still take too long where dishes are cooked at once, which a re-plan finds out.
  const { changed, outcome } = replanWeek(kitchen, tables, first, { judge: checkPlan, seed: SEED, ...MOVES });
  if (outcome.kind === "planned") return { kind: "possible", week: write(changed, outcome.plan, outcome.moves) };
  return tell(explainRest(changed.week, wish), changed);

  function tell(reason: WhyImpossible, { stated, ...rest }: ChangedKitchenWeek): ImpossibleTold {
    if (reason.kind === "gaps") return tellGaps(reason.gaps, now, stated);
    if (reason.kind === "possible") {
      const { plan } = reason.found;
      const exact = stateTogether(stated, plan, kitchen, tables);
      if (checkPlan(exact.problem, plan).faults.length > 0)
        return { kind: "collision", collisions: [["elapsed"]], onlyWholePacks: false, ways: [] };
      return { kind: "possible", week: write({ stated: exact, ...rest }, plan, reason.moves) };
    }
    const { collisions, onlyWholePacks } = reason;
    const ways = toWays(reason, ({ excesses, found }) => {
      const way = raise(toWayOut(excesses, now, stated), excesses);
      return { ...way, ...show(way, found.plan, reason.moves) };
    });
    return { kind: "collision", collisions, onlyWholePacks, ways };
  }

  function write(changed: ChangedKitchenWeek, plan: MenuPlan, moves: number): WeekPlan {
    const { totalMinor } = checkPlan(changed.stated.problem, plan).money;
    return writeWeek(kitchen, tables, changed, plan, { seed: SEED, moves, moneyMinor: totalMinor });
  }

  /** The plan as a week, where it keeps all limits once the way is gone, and what it cooks at once is done in time. */
  function show(way: Figures, plan: MenuPlan, moves: number): Pick<WayOut, "week"> {
    const settings = way.knobs.map((knob) => ({ knob, value: knob.enough }));
    const loose = change(turnKnobs(now, settings));
    if (!loose.ok) return {};
    const { changed } = loose.value;
    const exact = stateTogether(changed.stated, plan, kitchen, tables);
    return checkPlan(exact.problem, plan).faults.length > 0
      ? {}
      : { week: write({ ...changed, stated: exact }, plan, moves) };
  }

  /** The way with budget and trips so far that enough of them is left, whatever of them is spent. */
  function raise(way: Figures, excesses: readonly LimitReading[]): Figures {
    const knobs = way.knobs.map((knob): Knob => {
      const needed = excesses.find(({ limit }) => limit.kind === knob.limit)?.reached;
      if (needed === undefined || (knob.limit !== "budget" && knob.limit !== "trips")) return knob;
      let { enough } = knob;
      for (let turn = 0; turn < MOST_RAISES; turn++) {
        const left = change(turnKnobs(now, [{ knob, value: enough }]));
        const { budgetMinor = needed, maxTrips = needed } = left.ok ? left.value.changed.week.problem.limits : {};
        const lacking = needed - (knob.limit === "budget" ? budgetMinor : maxTrips);
        if (lacking <= 0) break;
        enough += Math.ceil(lacking);
      }
      return { ...knob, enough };
    });
    return { ...way, knobs };
  }
}

import { tellMoney } from "@halfloaf/words/en";
import { COLLISION_WORDS } from "@halfloaf/words/en/collisions";
import type { Kitchen, KitchenProblem, Tables } from "halfloaf/kitchen";
import {
  explainImpossible,
  explainRest,
  findGaps,
  type Gap,
  type LimitKind,
  type LimitReading,
  type MenuPlan,
  type Relaxation,
  type ReplanOutcome,
  type UnplannedWeek,
  type WhyImpossible,
} from "halfloaf/menu";
import { checkPlan } from "halfloaf/menu/check";
import type { Fault } from "../words/Fault.ts";
import { LIMIT_KEYS, type LimitContext, tellExcess } from "../words/limitWords.ts";
import type { Names } from "../words/Names.ts";
import { sittingAt, tellPlanFault } from "../words/planFaultWords.ts";
import { listHindrances, tellHindrance } from "../words/unfitWords.ts";
import type { SearchOutcome } from "./searchWeek.ts";

const MOST_REASONS = 4;
const BEFORE_TRIPS =
  'What is bought comes home after it: put what is there into "stores", or set "beforeSitting" of a shop to an earlier sitting.';
/** Moves of each search for the least that must give way, and its seed. */
const MOVES = 5000;
const SEED = 1;

/** Days of a kitchen as they were searched. */
interface StatedWeek {
  readonly kitchen: Kitchen;
  readonly tables: Tables;
  readonly stated: KitchenProblem;
  readonly names: Names;
}

/** Sittings for which there is no dish at all, each with the commonest reasons. */
export function tellGaps(
  kitchen: Kitchen,
  tables: Tables,
  stated: KitchenProblem,
  gaps: readonly number[],
  names: Names,
): Fault[] {
  const found = new Map(findGaps(stated.problem).map((gap) => [gap.sitting, gap]));
  return gaps.map((k) => {
    const hindrances = listHindrances(kitchen, tables, stated, k, names);
    const kind = stated.sittings[k]?.kind ?? "sitting";
    const reasons =
      hindrances.length === 0
        ? [`no dish is meant for "${kind}"`]
        : hindrances.slice(0, MOST_REASONS).map(tellHindrance);
    const { moreMinutes: minutes, isBeforeTrips } = found.get(k) ?? {};
    const enough = isBeforeTrips
      ? ` ${BEFORE_TRIPS}`
      : minutes === undefined
        ? ""
        : ` With ${Math.ceil(minutes - 1e-6)} min more at hand there would be one.`;
    return {
      code: "sitting-without-dish",
      path: [],
      value: kind,
      sentence: `${sittingAt({ stated, names }, k)}: there is no dish for it. ${reasons.join("; ")}.`,
      remedy: `Mend one of these reasons, or take this sitting out of the kitchen.${enough}`,
    };
  });
}

/** Why no plan keeps every limit. */
export interface NoPlanReasons {
  /** The few limits that collide, and by how much each alone and all together must give way, as far as was found. */
  readonly why: readonly Fault[];
  /** The limits that the menu which comes nearest to all of them could not keep. */
  readonly nearest: readonly Fault[];
}

/** Tells why a search found no plan: sittings without a dish, or the limits that collide, by the nearest menu and short searches. */
export function tellNoPlan(
  { kitchen, tables, stated, names }: StatedWeek,
  outcome: Exclude<SearchOutcome, { kind: "found" }>,
): NoPlanReasons {
  if (outcome.kind === "gaps") return { why: tellGaps(kitchen, tables, stated, outcome.sittings, names), nearest: [] };
  const { plan } = outcome;
  if (plan === undefined) return { why: [], nearest: [] };
  const { currency } = kitchen;
  const why = explainImpossible(stated.problem, { seed: SEED, moves: MOVES, start: plan });
  return {
    why: tellImpossible(why, { stated, currency, names }),
    nearest: tellNearest(plan, { stated, currency, names }),
  };
}

/** Tells why a changed week could not be planned again: as of a week that is planned first, for what is left of it. */
export function tellNoRest(
  { kitchen, tables, stated, names }: StatedWeek,
  week: UnplannedWeek,
  { gaps, leastBroken }: Extract<ReplanOutcome, { kind: "none" }>,
): NoPlanReasons {
  if (gaps.length > 0) return { why: tellGaps(kitchen, tables, stated, gaps, names), nearest: [] };
  const context = { stated, currency: kitchen.currency, names };
  const why = explainRest(week, { seed: SEED, moves: MOVES });
  return {
    why: tellImpossible(why, context),
    nearest: leastBroken === undefined ? [] : tellNearest(leastBroken, context),
  };
}

/** The limits that a plan could not keep. */
function tellNearest(plan: MenuPlan, context: LimitContext): Fault[] {
  return checkPlan(context.stated.problem, plan).faults.map((fault) => tellPlanFault(fault, { ...context, plan }));
}

/** Why no plan was found, by the limits that must give way. */
export function tellImpossible(why: WhyImpossible, context: LimitContext): Fault[] {
  if (why.kind === "gaps") return why.gaps.map((gap) => tellGap(gap, context));
  if (why.kind === "possible") {
    const remedy = "Search again with a longer --effort or another --seed.";
    return [{ code: "possible", path: [], sentence: COLLISION_WORDS.possible, remedy }];
  }
  const { collisions, alone, jointly, notAlone } = why;
  const isOneAnswer = alone.length === 1 && jointly !== undefined && sameKinds(alone[0] as Relaxation, jointly);
  return [
    ...collisions.map((kinds) => tellCollision(kinds, why.onlyWholePacks)),
    ...alone.map(({ limit, ...relaxation }) => ({
      ...tellRelaxation("alone", relaxation, context),
      remedy: `Loosen "${LIMIT_KEYS[limit]}" of the kitchen by so much, if you can.`,
    })),
    ...(alone.length === 0 && notAlone.length > 0 ? [tellNoneAlone()] : []),
    ...(jointly === undefined || isOneAnswer ? [] : [tellRelaxation("jointly", jointly, context)]),
  ];
}

function sameKinds(one: Relaxation, other: Relaxation): boolean {
  const kindsOf = ({ excesses }: Relaxation) => [...new Set(excesses.map(({ limit }) => limit.kind))].sort().join();
  return kindsOf(one) === kindsOf(other);
}

function tellGap({ sitting, moreMinutes, isBeforeTrips }: Gap, context: LimitContext): Fault {
  const remedy = isBeforeTrips
    ? BEFORE_TRIPS
    : moreMinutes === undefined
      ? "Give it heat, or more dishes and packs to choose from."
      : `With ${Math.ceil(moreMinutes - 1e-6)} min more at hand there would be one.`;
  return {
    code: "sitting-without-dish",
    path: [],
    sentence: `${sittingAt(context, sitting)}: no dish is left for it.`,
    remedy,
  };
}

function tellCollision(kinds: readonly LimitKind[], onlyWholePacks: boolean): Fault {
  const names = kinds.map((kind) => COLLISION_WORDS.limits[kind]);
  const isOne = names.length < 2;
  const sentence = isOne ? COLLISION_WORDS.stands(names[0] ?? "the limits") : COLLISION_WORDS.collide(names);
  return {
    code: "collision",
    path: [],
    value: kinds.join(", "),
    sentence: onlyWholePacks ? `${sentence} ${COLLISION_WORDS.wholePacks}` : sentence,
    remedy: isOne ? "It must give way, or there must be other dishes or packs." : "Loosen one of them.",
  };
}

function tellNoneAlone(): Fault {
  return {
    code: "none-alone",
    path: [],
    sentence: COLLISION_WORDS.noneAlone,
    remedy: "Loosen several a little.",
  };
}

function tellRelaxation(which: "alone" | "jointly", { excesses, found }: Relaxation, context: LimitContext): Fault {
  const { currency } = context;
  const told = mergeWorst(excesses).map((reading) => tellExcess(reading, context));
  const money = `${tellMoney(Math.round(found.moneyMinor), currency)} ${currency}`;
  return {
    code: `enough-${which}`,
    path: [],
    sentence: `Enough ${which === "alone" ? "by itself" : "together"}: ${told.join("; ")}. That plan weighs ${money}.`,
    remedy: "Loosen the limits of the kitchen by so much. Less may do: it was found by search, not proven.",
  };
}

/** Of limits that one figure of the kitchen loosens for all, the one that asks most. */
function mergeWorst(excesses: readonly LimitReading[]): LimitReading[] {
  const common = ["energy", "main", "pot"];
  return excesses.filter(
    ({ limit, excess }) =>
      !common.includes(limit.kind) ||
      excesses.find((other) => other.limit.kind === limit.kind && other.excess >= excess)?.limit === limit,
  );
}

import { checkPlan, type PlanFaultCode } from "../check/index.ts";
import type { MenuPlan } from "../plan.ts";
import type { MenuProblem } from "../problem.ts";
import { MenuSearch } from "../search/MenuSearch.ts";
import { FIRST_PENALTIES, type Penalties } from "../search/Penalties.ts";
import { BENDABLE, dropLimits, statedKinds } from "./dropLimits.ts";
import { findCollisions } from "./findCollisions.ts";
import { findGaps, type Gap } from "./findGaps.ts";
import { type LimitReading, readExcesses } from "./readLimits.ts";
import { LIMIT_STEPS, type LimitKind, loosenKind } from "./relaxLimit.ts";
import { type FoundPlan, type SearchWish, searchAgain } from "./searchAgain.ts";

/** Limits gone beyond, and a plan that shows that no more is needed. It keeps all others. */
export interface Relaxation {
  readonly excesses: readonly LimitReading[];
  readonly found: FoundPlan;
}

/** Why a search found no plan. */
export type WhyImpossible =
  /** Sittings that no dish is for: no other limit matters before that is mended. */
  | { readonly kind: "gaps"; readonly gaps: readonly Gap[] }
  /** There is a plan after all: a search with loosened limits came upon one that keeps them. */
  | { readonly kind: "possible"; readonly found: FoundPlan; readonly moves: number }
  | {
      readonly kind: "collision";
      /** Kinds of limit each of which would be enough, loosened by so much; the smallest excess that was found. */
      readonly alone: readonly (Relaxation & { readonly limit: LimitKind })[];
      /** Kinds that were stated but for which, loosened alone, no plan was found. */
      readonly notAlone: readonly LimitKind[];
      /** All kinds loosened together as little as was found; absent where not even that gave a plan. */
      readonly jointly?: Relaxation;
      /**
       * The few kinds that collide: with all others dropped still no plan was found, with any one of these dropped too
       * there was one. Whole packs and whole dishes are part of it. Several where more than one collision stands in
       * the way by itself; none where it could not be told.
       */
      readonly collisions: readonly (readonly LimitKind[])[];
      /** True where a plan was found once packs could be cut: only whole packs make the limits collide. */
      readonly onlyWholePacks: boolean;
      readonly moves: number;
    };

/** What an explanation is searched with. */
export interface ExplainWish {
  readonly seed: number;
  /** Moves of each of the searches, of which there are some 15. */
  readonly moves?: number;
  /** A menu that breaks few limits, as a search leaves it. */
  readonly start?: MenuPlan;
}

const USUAL_MOVES = 4000;
/** By how much dearer than in the search a unit beyond is made, so that the excess is made small before the money. */
const STEEP = 4;
/** How many times longer is searched before another collision is believed to stand behind the first. */
const AT_LENGTH = 6;
/** Tries to find a smaller excess for kinds that are loosened as a whole. */
const SHRINKS = 2;

/** Fault of the judge for each kind of limit. */
const FAULT_OF: Readonly<Record<LimitKind, PlanFaultCode>> = {
  budget: "budget",
  "hands-on": "hands-on",
  elapsed: "elapsed",
  energy: "energy",
  bound: "bound",
  uses: "uses",
  main: "main",
  distinct: "distinct",
  wish: "wish",
  trips: "max-trips",
  pot: "batch-size",
  carry: "carry",
  fridge: "fridge",
  freezer: "freezer",
  "must-use": "must-use",
};

/**
 * Explains why no plan was found: sittings without any dish first; else the smallest excess of each kind of limit alone
 * and of all jointly, and the few kinds that collide. All of it is found by short searches with counted moves among
 * whole packs and whole dishes; an excess is one that a checked plan shows to be enough, not proven to be the least.
 */
export function explainImpossible(problem: MenuProblem, wish: ExplainWish): WhyImpossible {
  const gaps = findGaps(problem);
  return gaps.length > 0 ? { kind: "gaps", gaps } : new Explanation(problem, wish).explain();
}

class Explanation {
  private readonly kinds: readonly LimitKind[];
  private readonly problem: MenuProblem;
  private readonly seed: number;
  private readonly moves: number;
  private start: MenuPlan | undefined;
  private typicalMinor: number | undefined;
  private made = 0;

  constructor(problem: MenuProblem, { seed, moves = USUAL_MOVES, start }: ExplainWish) {
    this.problem = problem;
    this.seed = seed;
    this.moves = moves;
    this.start = start;
    this.kinds = statedKinds(problem);
  }

  explain(): WhyImpossible {
    const { kinds } = this;
    const jointly = this.findJointly();
    if (jointly?.excesses.length === 0) return { kind: "possible", found: jointly.found, moves: this.made };
    if (jointly) this.start = jointly.found.plan;
    this.typicalMinor = jointly?.found.moneyMinor;
    const alone = kinds.flatMap((limit) => {
      const relaxation = BENDABLE[limit] ? this.bendAlone(limit) : this.loosenAlone(limit);
      return relaxation ? [{ limit, ...relaxation }] : [];
    });
    const possible = alone.find(({ excesses }) => excesses.length === 0);
    if (possible) return { kind: "possible", found: possible.found, moves: this.made };
    const helps = new Set(alone.map(({ limit }) => limit));
    const collisions = findCollisions({
      kinds,
      helps,
      ...(jointly && { suspects: new Set(jointly.excesses.map(({ limit }) => limit.kind)) }),
      isPossible: (dropped) => this.isPossible(dropLimits(this.problem, dropped)),
      isPossibleAtLength: (dropped) => this.isPossible(dropLimits(this.problem, dropped), AT_LENGTH * this.moves),
    });
    return {
      kind: "collision",
      alone,
      notAlone: kinds.filter((limit) => !helps.has(limit)),
      ...(jointly && { jointly }),
      collisions,
      onlyWholePacks: collisions.length > 0 && this.isPossibleNearby(cutPacks(this.problem)),
      moves: this.made,
    };
  }

  /** A menu given to begin with may lead astray, so a new start is tried beside it. */
  private findJointly(): Relaxation | undefined {
    const given = this.start;
    const near = this.bendAll();
    if (given === undefined || near?.excesses.length === 0) return near;
    this.start = undefined;
    const anew = this.bendAll();
    this.start = given;
    if (near === undefined || anew === undefined) return near ?? anew;
    return countSteps(anew) < countSteps(near) ? anew : near;
  }

  /** Everything the search can bend at once; where that is not enough, the rest is loosened as well. */
  private bendAll(): Relaxation | undefined {
    const bendable = this.kinds.filter((kind) => BENDABLE[kind]);
    const stiff = this.kinds.filter((kind) => !BENDABLE[kind]);
    return (
      this.bend(this.problem, bendable, 1, { moves: 2 * this.moves }) ??
      this.bend(
        stiff.reduce((loose, kind) => loosenKind(loose, kind, 2), this.problem),
        bendable,
        1,
      ) ??
      this.bend(dropLimits(this.problem, stiff), bendable, 1)
    );
  }

  /** Let go altogether first; where that helps, with a price so high that little of it is used. */
  private bendAlone(kind: LimitKind): Relaxation | undefined {
    const wide = this.bend(dropLimits(this.problem, [kind]), [], 1, { untilFound: true });
    if (wide === undefined || wide.excesses.length === 0) return wide;
    const narrow = this.bend(this.problem, [kind], STEEP, { start: wide.found.plan });
    return narrow && countSteps(narrow) < countSteps(wide) ? narrow : wide;
  }

  /** Loosened altogether first; where that helps, less and less. */
  private loosenAlone(kind: LimitKind): Relaxation | undefined {
    let best = this.bend(dropLimits(this.problem, [kind]), [], 1);
    for (let steps = SHRINKS; best !== undefined && best.excesses.length > 0 && steps > 0; steps--) {
      const smaller = this.bend(loosenKind(this.problem, kind, steps), [], 1);
      if (smaller === undefined) break;
      if (widest(smaller) < widest(best)) best = smaller;
    }
    return best;
  }

  /** A plan of a loosened problem in which some kinds are bent at a price; what it needs is measured by the problem. */
  private bend(
    loose: MenuProblem,
    kinds: readonly LimitKind[],
    steep: number,
    { moves = this.moves, ...rest }: Partial<SearchWish> = {},
  ): Relaxation | undefined {
    const { problem, seed, start } = this;
    const elastic = pricesOf(kinds, steep);
    const answer = searchAgain(loose, {
      moves,
      seed,
      weight: 2 * steep,
      ...(start && { start }),
      ...(this.typicalMinor !== undefined && { typicalMinor: this.typicalMinor }),
      ...(kinds.length > 0 && { elastic }),
      ...rest,
    });
    this.made += answer.moves;
    this.start ??= answer.best ?? answer.nearest;
    if (answer.best === undefined) return undefined;
    const { faults, money } = checkPlan(problem, answer.best);
    const bearable = new Set(this.kinds.map((kind) => FAULT_OF[kind]));
    if (faults.some(({ code }) => !bearable.has(code))) return undefined;
    const excesses = readExcesses(problem, answer.best, money);
    if (excesses.length === 0 && faults.length > 0) return undefined;
    return { excesses, found: { plan: answer.best, moneyMinor: money.totalMinor } };
  }

  /** Looks for a plan around the menu at hand and, where there is none, from a new start. */
  private isPossible(loose: MenuProblem, moves = this.moves): boolean {
    if (this.isPossibleNearby(loose)) return true;
    const search = new MenuSearch(loose, this.seed, { expectedMoves: moves });
    let report = search.advance();
    while (report.costMinor === undefined && report.moves < moves) report = search.advance();
    this.made += report.moves;
    return report.costMinor !== undefined;
  }

  private isPossibleNearby(loose: MenuProblem): boolean {
    const { moves, seed, start } = this;
    const answer = searchAgain(loose, { moves, seed, ...(start && { start }), untilFound: true });
    this.made += answer.moves;
    return answer.best !== undefined;
  }
}

function pricesOf(kinds: readonly LimitKind[], steep: number): Partial<Penalties> {
  const names = kinds.flatMap((kind) => BENDABLE[kind] ?? []);
  return Object.fromEntries(names.map((name) => [name, FIRST_PENALTIES[name] * steep]));
}

/** Steps of all limits together, to weigh minutes against money. */
function countSteps({ excesses }: Relaxation): number {
  return excesses.reduce((sum, { limit, excess }) => sum + excess / LIMIT_STEPS[limit.kind], 0);
}

function widest({ excesses }: Relaxation): number {
  return Math.max(0, ...excesses.map(({ excess }) => excess));
}

/** Parts of each pack that can be bought by themselves where packs are cut. */
const PARTS = 10;

function cutPacks(problem: MenuProblem): MenuProblem {
  const packs = problem.packs.map(({ offer: _, highMinor, ...pack }) => ({
    ...pack,
    massG: pack.massG / PARTS,
    priceMinor: pack.priceMinor / PARTS,
    ...(highMinor !== undefined && { highMinor: highMinor / PARTS }),
    limit: pack.limit * PARTS,
  }));
  return { ...problem, packs };
}

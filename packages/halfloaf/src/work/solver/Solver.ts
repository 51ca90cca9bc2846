import { ActivityQueue } from "./ActivityQueue.ts";
import { AtomTable } from "./AtomTable.ts";
import { ClauseStore } from "./ClauseStore.ts";
import { ConflictAnalysis } from "./ConflictAnalysis.ts";
import type { ConstraintModel } from "./ConstraintModel.ts";
import { CumulativeResources } from "./CumulativeResources.ts";
import { EdgeNetwork } from "./EdgeNetwork.ts";
import { EnergyChecks } from "./EnergyChecks.ts";
import { LinearLimits } from "./LinearLimits.ts";
import { atLeast, atMost, FLIP, type Literal, TRUE } from "./literal.ts";
import { luby } from "./luby.ts";
import { Trail, WHY } from "./Trail.ts";

export interface SolverOptions {
  /** Variables to set earliest-first where activity gives no lead, and those to set after them, in order. */
  readonly schedule: readonly number[];
  readonly afterwards?: readonly number[];
  /** True = as late as possible, last one first: for problems that are anchored at their end. */
  readonly isBackward?: boolean;
  /** A value of every variable to try first. */
  readonly hint?: ArrayLike<number>;
  /** Asked every few dozen conflicts; true ends the search. */
  readonly shouldStop: () => boolean;
}

/** How a search ended: with a solution, with a proof that there is none, or early. */
export type SearchEnd = "solved" | "infeasible" | "stopped";

const RESTART_UNIT = 250;

/**
 * Conflict-driven search for a constraint model: guess, pass on what follows, and learn a clause from every conflict.
 *
 * Guesses take the most active literal and side with the best solution so far; before there are conflicts, the job
 * that can start first starts as early as it can. Restarts follow the Luby sequence. Everything is deterministic: the
 * same model and options give the same run up to the moment `shouldStop` says so.
 * **Source**: Schutt, Feydy, Stuckey, Wallace 2011, Constraints 16 (search); Demirovic, Chu, Stuckey 2018,
 * "Solution-based phase saving for CP", CP 2018.
 */
export class Solver {
  readonly trail: Trail;
  private readonly atoms: AtomTable;
  private readonly clauses: ClauseStore;
  private readonly edges: EdgeNetwork;
  private readonly cumulatives: CumulativeResources;
  private readonly limits: LinearLimits;
  private readonly energy: EnergyChecks;
  private readonly queue: ActivityQueue;
  private readonly analysis: ConflictAnalysis;
  private readonly schedule: Int32Array;
  private readonly afterwards: Int32Array;
  private readonly isBackward: boolean;
  private readonly shouldStop: () => boolean;
  /** Values of the latest solution (or of the hint), by variable. */
  private best: Int32Array | undefined;
  private head = 0;
  private isSound = true;
  private restarts = 0;
  /** What is guessed before anything else. */
  private supposed: Literal = TRUE;
  /** The number of conflicts at which a search gives up. */
  private lastConflict = Number.POSITIVE_INFINITY;
  conflicts = 0;
  decisions = 0;

  constructor(model: ConstraintModel, options: SolverOptions) {
    const trail = new Trail(model.lows, model.highs);
    this.trail = trail;
    this.edges = new EdgeNetwork(trail, model.edges);
    this.atoms = new AtomTable(trail.bounds);
    this.clauses = new ClauseStore(trail, this.atoms);
    this.cumulatives = new CumulativeResources(trail, model.cumulatives);
    this.limits = new LinearLimits(trail, model.limits);
    this.energy = new EnergyChecks(trail, model.energyLimits);
    this.queue = new ActivityQueue(this.atoms.atoms, 0.95);
    const { clauses, edges, cumulatives, limits, energy } = this;
    this.analysis = new ConflictAnalysis(trail, this.atoms, this.queue, {
      clauses,
      edges,
      cumulatives,
      limits,
      energy,
    });
    this.schedule = Int32Array.from(options.schedule);
    const isScheduled = new Set(options.schedule);
    const rest = model.lows.map((_, v) => v).filter((v) => !isScheduled.has(v));
    this.afterwards = Int32Array.from([...(options.afterwards ?? []), ...rest]);
    this.isBackward = options.isBackward === true;
    this.shouldStop = options.shouldStop;
    if (options.hint) this.best = Int32Array.from(options.hint);
    this.isSound = model.lows.every((low, v) => low <= (model.highs[v] as number));
    this.isSound &&= this.clauses.addGiven(model.clauses) && this.edges.start();
    this.isSound &&= this.settle();
  }

  /** Values of the latest solution, by variable. */
  get solution(): Int32Array {
    if (!this.best) throw new Error("No solution was found");
    return this.best;
  }

  /** False where the model contradicts itself before any decision. */
  get isConsistent(): boolean {
    return this.isSound;
  }

  /** Adds a bound for good; false where it contradicts what is known. */
  require(literal: Literal): boolean {
    this.goBack(0);
    this.isSound &&= this.trail.raise(literal, WHY.decision, 0) && this.settle();
    return this.isSound;
  }

  private settle(): boolean {
    if (!this.propagate()) return false;
    this.trail.settleRoot();
    this.head = 0;
    return true;
  }

  /** Looks for a solution. */
  search(): SearchEnd {
    this.goBack(0);
    let budget = RESTART_UNIT * luby(++this.restarts);
    while (this.isSound) {
      if (this.propagate()) {
        if (budget <= 0) {
          budget = RESTART_UNIT * luby(++this.restarts);
          this.restart();
        }
        if ((++this.decisions & 255) === 0 && this.shouldStop()) return this.stop();
        if (this.trail.isFalse(this.supposed)) return "infeasible";
        if (!this.decide()) return "solved";
      } else {
        budget--;
        this.conflicts++;
        if (!this.learn()) break;
        if (this.conflicts >= this.lastConflict) return this.stop();
        if ((this.conflicts & 31) === 0 && this.shouldStop()) return this.stop();
      }
    }
    this.isSound = false;
    return "infeasible";
  }

  /** The least value of a variable, by ever better solutions; each is handed out as it is found. */
  minimise(objective: number, onSolution: (values: Int32Array) => void): SearchEnd {
    let end: SearchEnd = "infeasible";
    for (;;) {
      const found = this.search();
      if (found === "stopped") return "stopped";
      if (found === "infeasible") return end;
      end = "solved";
      const values = this.solution;
      onSolution(values);
      if (!this.require(atMost(objective, (values[objective] as number) - 1))) return end;
    }
  }

  /**
   * Looks for a solution in which the supposed literal holds; what is learned holds without it, too. "tired" = it took
   * so many conflicts. The trail is back at its root afterwards.
   */
  searchSupposing(supposed: Literal, mostConflicts: number): SearchEnd | "tired" {
    this.supposed = supposed;
    this.lastConflict = this.conflicts + mostConflicts;
    const end = this.search();
    const isTired = end === "stopped" && this.conflicts === this.lastConflict;
    this.supposed = TRUE;
    this.lastConflict = Number.POSITIVE_INFINITY;
    this.goBack(0);
    return isTired ? "tired" : end;
  }

  private stop(): "stopped" {
    this.goBack(0);
    return "stopped";
  }

  private restart(): void {
    this.goBack(0);
    this.clauses.reduce();
  }

  private goBack(level: number): void {
    if (this.trail.level > level) this.queue.backTo(level);
    this.trail.backTo(level);
    this.head = this.trail.size;
    this.cumulatives.agenda.clear();
    this.limits.agenda.clear();
    this.energy.agenda.clear();
  }

  private learn(): boolean {
    if (this.trail.level === 0) return false;
    const back = this.analysis.learn();
    if (back < 0) return false;
    const { learned, spread } = this.analysis;
    this.goBack(back);
    const implied = learned.at(0);
    const why = learned.size === 1 ? WHY.decision : WHY.clause | (this.clauses.learn(learned, spread) << 3);
    this.queue.decayAll();
    this.clauses.decayAll();
    this.trail.raise(implied, why, 0);
    return back > 0 || this.settle();
  }

  /** Opens a level with a guess; false where every variable is fixed, with the solution kept. */
  private decide(): boolean {
    const guess = this.guessAsSupposed() ?? this.guessByActivity() ?? this.guessByTime();
    if (guess === undefined) {
      this.best = Int32Array.from({ length: this.trail.variables }, (_, v) => this.trail.low(v));
      return false;
    }
    this.trail.openLevel();
    this.trail.raise(guess, WHY.decision, 0);
    return true;
  }

  private guessAsSupposed(): Literal | undefined {
    return this.trail.isTrue(this.supposed) ? undefined : this.supposed;
  }

  private guessByActivity(): Literal | undefined {
    const { queue, trail, best } = this;
    const { bounds } = trail;
    while (!queue.isEmpty()) {
      const literal = this.atoms.literalOfAtom[queue.pop(trail.level)] as number;
      const b = literal >>> 16;
      const opposite = literal ^ FLIP;
      if ((bounds[b] as number) >= literal || (bounds[b ^ 1] as number) >= opposite) continue;
      if (best === undefined) return this.isBackward ? literal : opposite;
      return atLeast(b >> 1, best[b >> 1] as number) >= literal ? literal : opposite;
    }
    return undefined;
  }

  private guessByTime(): Literal | undefined {
    const chosen = this.nextByTime();
    if (chosen >= 0) {
      const { trail } = this;
      return this.isBackward ? atLeast(chosen, trail.high(chosen)) : atMost(chosen, trail.low(chosen));
    }
    for (let k = 0; k < this.afterwards.length; k++) {
      const v = this.afterwards[k] as number;
      const low = this.trail.low(v);
      if (low < this.trail.high(v)) return atMost(v, low);
    }
    return undefined;
  }

  /** The open variable that can come first, the tighter one of two; backward, the one that can come last. */
  private nextByTime(): number {
    const { trail, schedule, isBackward } = this;
    let chosen = -1;
    let near = Number.POSITIVE_INFINITY;
    let far = Number.POSITIVE_INFINITY;
    for (let k = 0; k < schedule.length; k++) {
      const v = schedule[k] as number;
      const low = trail.low(v);
      const high = trail.high(v);
      if (low === high) continue;
      const own = isBackward ? -high : low;
      if (own > near) continue;
      const other = isBackward ? -low : high;
      if (own === near && other >= far) continue;
      chosen = v;
      near = own;
      far = other;
    }
    return chosen;
  }

  private propagate(): boolean {
    const { trail, clauses, edges, cumulatives, limits, energy } = this;
    for (;;) {
      while (this.head < trail.size) {
        const k = this.head++;
        const literal = trail.entryLiteral[k] as number;
        const old = trail.entryOld[k] as number;
        const b = literal >>> 16;
        if (!clauses.visit(old, literal) || !edges.follow(b, old)) return false;
        cumulatives.agenda.touch(b);
        limits.agenda.touch(b);
        energy.agenda.touch(b);
      }
      const { size } = trail;
      if (!limits.propagate()) return false;
      if (trail.size > size) continue;
      if (!cumulatives.propagate()) return false;
      if (trail.size === size) return energy.check();
    }
  }
}

import type { ActivityQueue } from "./ActivityQueue.ts";
import type { AtomTable } from "./AtomTable.ts";
import type { ClauseStore } from "./ClauseStore.ts";
import type { CumulativeResources } from "./CumulativeResources.ts";
import type { EdgeNetwork } from "./EdgeNetwork.ts";
import type { EnergyChecks } from "./EnergyChecks.ts";
import type { LinearLimits } from "./LinearLimits.ts";
import { LiteralBuffer } from "./LiteralBuffer.ts";
import { FLIP, type Literal } from "./literal.ts";
import { type Trail, WHY } from "./Trail.ts";

const KEPT = 1;
const IMPLIED = 2;

/** What the rules that raise bounds have in common with the analysis: they can say why. */
export interface Rules {
  readonly clauses: ClauseStore;
  readonly edges: EdgeNetwork;
  readonly cumulatives: CumulativeResources;
  readonly limits: LinearLimits;
  readonly energy: EnergyChecks;
}

/**
 * What a conflict teaches.
 *
 * From the literals in conflict, reasons are put in place of what they imply, latest first, until a single one of the
 * current level is left (the first unique implication point). Of each entry only as much is asked as is needed: if a
 * bound was raised to 30 but the conflict only takes [x >= 27], the reason for 27 is asked for. The negations of what
 * is left form a clause that holds for ever and, one level back, implies something new.
 *
 * The clause is then shortened: a literal goes where a stronger one of the same bound stays, or where its reasons are
 * implied by the rest.
 * **Source**: Marques-Silva, Sakallah 1999, "GRASP", IEEE Trans. Computers 48; Ohrimenko, Stuckey, Codish 2009,
 * "Propagation via lazy clause generation", Constraints 14.
 */
export class ConflictAnalysis {
  private readonly trail: Trail;
  private readonly atoms: AtomTable;
  private readonly queue: ActivityQueue;
  private readonly rules: Rules;
  /** Per entry: 0 = not in the reason, else one of the marks above, and the literal needed of it. */
  private readonly mark: Uint8Array;
  private readonly need: Int32Array;
  private readonly marked: Int32Array;
  private markedSize = 0;
  private readonly lower: Int32Array;
  private lowerSize = 0;
  private atCurrent = 0;
  private readonly reason = new LiteralBuffer();
  private readonly levelStamp: Int32Array;
  private stamp = 0;
  /** The learned clause: what it implies comes first, then the literal of the highest level among the others. */
  readonly learned = new LiteralBuffer();
  /** The number of decision levels in the learned clause. */
  spread = 0;

  constructor(trail: Trail, atoms: AtomTable, queue: ActivityQueue, rules: Rules) {
    this.trail = trail;
    this.atoms = atoms;
    this.queue = queue;
    this.rules = rules;
    const entries = trail.entryLiteral.length;
    this.mark = new Uint8Array(entries);
    this.need = new Int32Array(entries);
    this.marked = new Int32Array(entries);
    this.lower = new Int32Array(entries);
    this.levelStamp = new Int32Array(trail.levelStart.length);
  }

  /** Learns from the trail's conflict; gives the level to go back to, -1 where the problem is contradictory. */
  learn(): number {
    const { trail, reason } = this;
    reason.size = 0;
    if (trail.conflictLiteral !== 0) reason.push(trail.conflictLiteral ^ FLIP);
    this.explain(trail.conflictWhy, trail.conflictDetail, trail.conflictLiteral, trail.size, reason);
    const level = this.highestLevel();
    if (level === 0) return -1;
    // Weakened reasons may lie below the level at which the conflict was found.
    trail.backTo(level);
    this.atCurrent = 0;
    this.markedSize = 0;
    this.lowerSize = 0;
    this.take();
    const top = this.resolve();
    const back = this.assemble(top);
    for (let k = 0; k < this.markedSize; k++) this.mark[this.marked[k] as number] = 0;
    return back;
  }

  private highestLevel(): number {
    const { trail, reason } = this;
    let highest = 0;
    for (let q = 0; q < reason.size && highest < trail.level; q++) {
      const k = trail.entryOf(reason.at(q));
      if (k >= 0 && (trail.entryLevel[k] as number) > highest) highest = trail.entryLevel[k] as number;
    }
    return highest;
  }

  /** Marks the entries that made the reason's literals true. */
  private take(): void {
    const { trail, reason, mark, need } = this;
    const start = trail.levelStart[trail.level] as number;
    for (let q = 0; q < reason.size; q++) {
      const literal = reason.at(q);
      const k = trail.entryOf(literal);
      if (k < 0) continue;
      this.queue.bump(this.atoms.atomOf(literal));
      if (mark[k] === 0) {
        mark[k] = KEPT;
        need[k] = literal;
        this.marked[this.markedSize++] = k;
        if (k >= start) this.atCurrent++;
        else this.lower[this.lowerSize++] = k;
      } else if (literal > (need[k] as number)) {
        need[k] = literal;
      }
    }
  }

  /** Resolves until one entry of the current level is left, and gives it. */
  private resolve(): number {
    const { trail, mark, reason } = this;
    let k = trail.size - 1;
    for (;;) {
      while (mark[k] === 0) k--;
      if (this.atCurrent === 1) return k;
      this.atCurrent--;
      mark[k] = 0;
      reason.size = 0;
      this.explainEntry(k, this.need[k] as number, reason);
      this.take();
      k--;
    }
  }

  private explainEntry(k: number, literal: Literal, out: LiteralBuffer): void {
    this.explain(this.trail.entryWhy[k] as number, this.trail.entryDetail[k] as number, literal, k, out);
  }

  private explain(why: number, detail: number, implied: Literal, at: number, out: LiteralBuffer): void {
    const { clauses, edges, cumulatives, limits, energy } = this.rules;
    const index = why >> 3;
    const kind = why & 7;
    if (kind === WHY.clause) clauses.explain(index, out);
    else if (kind === WHY.edge) edges.explain(index, implied, out);
    else if (kind === WHY.task) cumulatives.explainTask(index, detail, implied, at, out);
    else if (kind === WHY.switch) edges.explainSwitch(index, detail, out);
    else if (kind === WHY.limit) limits.explain(index, detail, implied, at, out);
    else if (kind === WHY.overload) cumulatives.explainOverload(index, detail, at, out);
    else if (kind === WHY.energy) energy.explain(index, detail, out);
  }

  /** Writes the learned clause, shortened; gives the level to go back to. */
  private assemble(top: number): number {
    const { trail, mark, need, learned, lower } = this;
    learned.size = 0;
    learned.push((need[top] as number) ^ FLIP);
    const entries = lower.subarray(0, this.lowerSize).sort();
    let back = 0;
    let second = 0;
    this.stamp++;
    this.spread = 1;
    for (let q = entries.length - 1; q >= 0; q--) {
      const k = entries[q] as number;
      if (this.isDominated(k) || this.isImplied(k)) {
        mark[k] = IMPLIED;
        continue;
      }
      const level = trail.entryLevel[k] as number;
      if (level > back) {
        back = level;
        second = learned.size;
      }
      if (this.levelStamp[level] !== this.stamp) {
        this.levelStamp[level] = this.stamp;
        this.spread++;
      }
      learned.push((need[k] as number) ^ FLIP);
    }
    if (second > 1) {
      const { data } = learned;
      [data[1], data[second]] = [data[second] as number, data[1] as number];
    }
    return back;
  }

  /** True where a later entry of the same bound stays in the clause. */
  private isDominated(k: number): boolean {
    const { trail, mark } = this;
    let z = trail.last[(trail.entryLiteral[k] as number) >>> 16] as number;
    for (; z > k; z = trail.entryPrevious[z] as number) if (mark[z] === KEPT) return true;
    return false;
  }

  /** True where the reasons of an entry are implied by other entries of the clause. */
  private isImplied(k: number): boolean {
    const { trail, mark, need, reason } = this;
    if (((trail.entryWhy[k] as number) & 7) === WHY.decision) return false;
    reason.size = 0;
    this.explainEntry(k, need[k] as number, reason);
    for (let q = 0; q < reason.size; q++) {
      const cause = reason.at(q);
      const e = trail.entryOf(cause);
      if (e >= 0 && (mark[e] === 0 || (need[e] as number) < cause)) return false;
    }
    return true;
  }
}

import type { AtomTable } from "./AtomTable.ts";
import type { LiteralBuffer } from "./LiteralBuffer.ts";
import { FLIP, type Literal, VALUE } from "./literal.ts";
import { type Trail, WHY } from "./Trail.ts";

/**
 * Clauses over bound literals, each watched at two of its literals.
 *
 * A clause that is not satisfied is visited only when one of the two watched literals becomes false; then another
 * literal that is not false takes over, or the one left must hold. All literals lie in one array; a clause c is
 * `literals[start[c] .. start[c + 1])`, the watched ones first, the implied one at the very front while it is a reason.
 * The watch lists are linked: node 2c or 2c + 1 in the list of the slot of the literal whose coming true falsifies.
 * **Source**: Moskewicz et al. 2001 (two watched literals); Een and Soerensson 2004, "An extensible SAT-solver".
 */
export class ClauseStore {
  private readonly trail: Trail;
  private readonly atoms: AtomTable;
  // Most dishes by themselves are solved with a handful of clauses, and all that is given out is zeroed first.
  private literals = new Int32Array(1 << 10);
  private start = new Int32Array(1 << 6);
  private next = new Int32Array(1 << 7);
  /** A literal of the clause that, when true, makes the visit unnecessary. */
  private blocker = new Int32Array(1 << 7);
  private spread = new Int32Array(1 << 6);
  private activity = new Float64Array(1 << 6);
  private readonly head: Int32Array;
  private step = 1;
  size = 0;
  /** Clauses before this one were given; those after were learned. */
  private given = 0;
  private room = 4000;

  constructor(trail: Trail, atoms: AtomTable) {
    this.trail = trail;
    this.atoms = atoms;
    this.head = new Int32Array(atoms.slots).fill(-1);
  }

  get learned(): number {
    return this.size - this.given;
  }

  /** Takes in clauses of the problem at level 0; false where they contradict the bounds. */
  addGiven(clauses: readonly (readonly Literal[])[]): boolean {
    const { trail } = this;
    for (const clause of clauses) {
      const open = [...new Set(clause)].filter((literal) => !trail.isFalse(literal));
      const isIdle = open.some((literal) => trail.isTrue(literal) || open.includes(literal ^ FLIP));
      if (isIdle) continue;
      if (open.length === 0) return false;
      if (open.length === 1) {
        if (!trail.raise(open[0] as number, WHY.decision, 0)) return false;
      } else {
        this.append(Int32Array.from(open), open.length, 0);
      }
    }
    this.given = this.size;
    return true;
  }

  /** Takes in a learned clause; `data[0]` is what it implies, `data[1]` the last of the others to become false. */
  learn(clause: LiteralBuffer, spread: number): number {
    const c = this.append(clause.data, clause.size, spread);
    this.activity[c] = this.step;
    return c;
  }

  decayAll(): void {
    this.step /= 0.999;
  }

  private append(data: Int32Array, length: number, spread: number): number {
    this.widen(length);
    const c = this.size++;
    const from = this.start[c] as number;
    for (let k = 0; k < length; k++) this.literals[from + k] = data[k] as number;
    this.start[c + 1] = from + length;
    this.spread[c] = spread;
    this.activity[c] = 0;
    this.link(2 * c, data[0] as number, data[1] as number);
    this.link(2 * c + 1, data[1] as number, data[0] as number);
    return c;
  }

  private link(node: number, watched: Literal, blocker: Literal): void {
    const slot = this.atoms.slotOf(watched ^ FLIP);
    this.next[node] = this.head[slot] as number;
    this.head[slot] = node;
    this.blocker[node] = blocker;
  }

  private widen(length: number): void {
    while ((this.start[this.size] as number) + length > this.literals.length) this.literals = widened(this.literals);
    if (this.size + 2 > this.start.length) {
      this.start = widened(this.start);
      this.next = widened(this.next);
      this.blocker = widened(this.blocker);
      this.spread = widened(this.spread);
      const activity = new Float64Array(2 * this.activity.length);
      activity.set(this.activity);
      this.activity = activity;
    }
  }

  /** Visits the clauses that watch a literal falsified by raising a bound from `old` to `now`; false = conflict. */
  visit(old: Literal, now: Literal): boolean {
    const base = this.atoms.slotBase[now >>> 16] as number;
    const to = base + (now & VALUE);
    const { head } = this;
    for (let slot = base + (old & VALUE) + 1, literal = old + 1; slot <= to; slot++, literal++) {
      if ((head[slot] as number) >= 0 && !this.visitSlot(slot, literal ^ FLIP)) return false;
    }
    return true;
  }

  private visitSlot(slot: number, falsified: Literal): boolean {
    const { literals, start, next, blocker, trail, head } = this;
    const { bounds } = trail;
    let node = head[slot] as number;
    let kept = -1;
    while (node >= 0) {
      const after = next[node] as number;
      const block = blocker[node] as number;
      if ((bounds[block >>> 16] as number) >= block) {
        kept = node;
        node = after;
        continue;
      }
      const c = node >> 1;
      const from = start[c] as number;
      let first = literals[from] as number;
      if (first === falsified) {
        first = literals[from + 1] as number;
        literals[from] = first;
        literals[from + 1] = falsified;
      }
      if ((bounds[first >>> 16] as number) >= first) {
        blocker[node] = first;
        kept = node;
        node = after;
        continue;
      }
      let at = from + 2;
      const end = start[c + 1] as number;
      for (; at < end; at++) {
        const opposite = (literals[at] as number) ^ FLIP;
        if ((bounds[opposite >>> 16] as number) < opposite) break;
      }
      if (at < end) {
        const taken = literals[at] as number;
        literals[at] = falsified;
        literals[from + 1] = taken;
        if (kept < 0) head[slot] = after;
        else next[kept] = after;
        this.link(node, taken, first);
        node = after;
        continue;
      }
      if (!trail.raise(first, WHY.clause | (c << 3), 0)) return false;
      kept = node;
      node = after;
    }
    return true;
  }

  /** The literals that make clause `c` imply its first one. */
  explain(c: number, out: LiteralBuffer): void {
    const from = this.start[c] as number;
    const end = this.start[c + 1] as number;
    for (let k = from + 1; k < end; k++) out.push((this.literals[k] as number) ^ FLIP);
    this.bump(c);
  }

  private bump(c: number): void {
    if (c < this.given) return;
    const raised = (this.activity[c] as number) + this.step;
    this.activity[c] = raised;
    if (raised < 1e100) return;
    for (let k = 0; k < this.size; k++) this.activity[k] = (this.activity[k] as number) * 1e-100;
    this.step *= 1e-100;
  }

  /** At level 0: drops the less active half of the learned clauses once there are many, and what the root satisfies. */
  reduce(): void {
    if (this.learned <= this.room) return;
    this.room = Math.min(30_000, this.room * 1.05);
    const order = Array.from({ length: this.learned }, (_, k) => this.given + k);
    const isCore = (c: number) => (this.spread[c] as number) <= 2 || this.lengthOf(c) <= 2;
    order.sort(
      (a, b) => Number(isCore(b)) - Number(isCore(a)) || (this.activity[b] as number) - (this.activity[a] as number),
    );
    const keep = new Uint8Array(this.size).fill(1, 0, this.given);
    for (const [rank, c] of order.entries()) keep[c] = rank < order.length / 2 || isCore(c) ? 1 : 0;
    this.compact(keep);
  }

  private lengthOf(c: number): number {
    return (this.start[c + 1] as number) - (this.start[c] as number);
  }

  private compact(keep: Uint8Array): void {
    const { literals, start, trail } = this;
    this.head.fill(-1);
    let size = 0;
    let to = 0;
    let given = 0;
    const total = this.size;
    for (let c = 0, from = 0; c < total; c++) {
      const end = start[c + 1] as number;
      const clause = literals.slice(from, end);
      from = end;
      if (keep[c] === 0 || clause.some((literal) => trail.isTrue(literal))) continue;
      if (c < this.given) given++;
      start[size] = to;
      for (const literal of clause) if (!trail.isFalse(literal)) literals[to++] = literal;
      this.spread[size] = this.spread[c] as number;
      this.activity[size] = this.activity[c] as number;
      const [first, second] = [
        literals[start[size] as number] as number,
        literals[(start[size] as number) + 1] as number,
      ];
      this.link(2 * size, first, second);
      this.link(2 * size + 1, second, first);
      start[++size] = to;
    }
    this.size = size;
    this.given = given;
  }
}

function widened(array: Int32Array<ArrayBuffer>): Int32Array<ArrayBuffer> {
  const wider = new Int32Array(2 * array.length);
  wider.set(array);
  return wider;
}

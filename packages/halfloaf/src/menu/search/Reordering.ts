import type { RandomSource } from "../../quantity/index.ts";
import type { MenuProblem, MenuSitting } from "../problem.ts";
import type { Candidates } from "./Candidates.ts";
import type { ChangeList } from "./ChangeList.ts";
import type { WeekState } from "./WeekState.ts";

/** Shares of the kinds of move, each up to the next; what remains is an exchange of two sittings. */
const IN_TURN = 0.2;
const TWO_AT_ONCE = 0.5;
const DISHES = 0.6;
const ALONG = 0.7;
const DAYS = 0.8;

/**
 * Moves that bring the servings there are into another order: every dish is served as often as before, and only where it
 * may be. Packs that spoil want their dishes on days that follow one another, and every day its energy, so that one exchange
 * by itself is mostly dear; the others go past that.
 */
export class Reordering {
  private readonly days: number;
  private readonly sittings: readonly MenuSitting[];
  private readonly state: WeekState;
  private readonly candidates: Candidates;
  private readonly changes: ChangeList;
  private readonly random: RandomSource;
  private readonly run: number[] = [];

  /** What is proposed is added to `changes`. */
  constructor(
    { days, sittings }: MenuProblem,
    state: WeekState,
    candidates: Candidates,
    changes: ChangeList,
    random: RandomSource,
  ) {
    this.days = days;
    this.sittings = sittings;
    this.state = state;
    this.candidates = candidates;
    this.changes = changes;
    this.random = random;
  }

  /** Proposes one move; nothing where it would change nothing or serve a dish where it may not be. */
  propose(): void {
    const kind = this.random();
    const sitting = this.pick(this.sittings.length);
    if (kind < IN_TURN) this.turn(sitting, this.pickPeer(sitting), this.pickPeer(sitting));
    else if (kind < TWO_AT_ONCE) this.exchangeTwice(sitting);
    else if (kind < DISHES) this.exchangeDishes(sitting, this.pickPeer(sitting));
    else if (kind < ALONG) this.moveAlong(sitting, this.pick(this.days));
    else if (kind < DAYS) this.exchangeDays(this.pick(this.days), this.pick(this.days));
    else this.exchange(sitting, this.pickPeer(sitting));
  }

  /** Two sittings exchange their dishes; nothing unless both may be served so. */
  exchange(sitting: number, other: number): void {
    const { dishOf } = this.state;
    const [dish, otherDish] = [dishOf[sitting] as number, dishOf[other] as number];
    if (dish === otherDish || !this.state.mayServe(dish, other) || !this.state.mayServe(otherDish, sitting)) return;
    this.changes.add(sitting, otherDish);
    this.changes.add(other, dish);
  }

  private pick(n: number): number {
    return Math.floor(this.random() * n);
  }

  /** A sitting that may have a dish in common with this one. */
  private pickPeer(sitting: number): number {
    const peers = this.candidates.peersOf(sitting);
    return peers[this.pick(peers.length)] as number;
  }

  /** The second sitting gets the dish of the first, the third that of the second, the first that of the third; nothing unless all may be served so. */
  private turn(first: number, second: number, third: number): void {
    const { dishOf } = this.state;
    if (first === second || second === third || third === first) return;
    const [a, b, c] = [dishOf[first] as number, dishOf[second] as number, dishOf[third] as number];
    if (!this.state.mayServe(c, first) || !this.state.mayServe(a, second) || !this.state.mayServe(b, third)) return;
    this.put(first, c);
    this.put(second, a);
    this.put(third, b);
  }

  /** Two sittings exchange their dishes, and two others theirs. */
  private exchangeTwice(sitting: number): void {
    const other = this.pickPeer(sitting);
    const second = this.pick(this.sittings.length);
    const secondOther = this.pickPeer(second);
    this.exchange(sitting, other);
    if (second === sitting || second === other || secondOther === sitting || secondOther === other) return;
    this.exchange(second, secondOther);
  }

  /** The dishes of two sittings exchange all their servings, the first with the first and so on, for as long as both have any. */
  private exchangeDishes(sitting: number, otherSitting: number): void {
    const { state } = this;
    const [dish, other] = [state.dishOf[sitting] as number, state.dishOf[otherSitting] as number];
    if (dish === other) return;
    const count = Math.min(state.countOf(dish), state.countOf(other));
    for (let i = 0; i < count; i++) this.exchange(state.sittingAt(dish, i), state.sittingAt(other, i));
  }

  /**
   * From the day of a sitting to another, each day gets what the next has at that place of the day, and the last what the
   * first had; nothing unless all may be served so.
   */
  private moveAlong(sitting: number, toDay: number): void {
    const { run, state } = this;
    if (!this.listRun(sitting, toDay)) return;
    const { length } = run;
    const dishAfter = (i: number): number => state.dishOf[run[(i + 1) % length] as number] as number;
    for (let i = 0; i < length; i++) if (!state.mayServe(dishAfter(i), run[i] as number)) return;
    for (let i = 0; i < length; i++) this.put(run[i] as number, dishAfter(i));
  }

  /** Lists the sittings at one place of the day from that of a sitting to another day; false where a day has no such place. */
  private listRun(sitting: number, toDay: number): boolean {
    const { run, candidates } = this;
    const { day } = this.sittings[sitting] as MenuSitting;
    const place = candidates.sittingsOf(day).indexOf(sitting);
    const step = Math.sign(toDay - day);
    run.length = 0;
    for (let i = 0; i <= Math.abs(toDay - day); i++) {
      const each = candidates.sittingsOf(day + i * step)[place];
      if (each === undefined) return false;
      run.push(each);
    }
    return true;
  }

  /** The sittings of two days exchange their dishes in the order of the day, where they may be served there. */
  private exchangeDays(day: number, other: number): void {
    if (day === other) return;
    const [some, others] = [this.candidates.sittingsOf(day), this.candidates.sittingsOf(other)];
    for (let at = 0; at < Math.min(some.length, others.length); at++)
      this.exchange(some[at] as number, others[at] as number);
  }

  private put(sitting: number, dish: number): void {
    if (this.state.dishOf[sitting] !== dish) this.changes.add(sitting, dish);
  }
}

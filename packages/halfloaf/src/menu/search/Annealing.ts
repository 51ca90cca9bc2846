import { createRandomSource, type RandomSource } from "../../quantity/index.ts";
import type { MenuProblem, MenuTrip } from "../problem.ts";
import { Candidates } from "./Candidates.ts";
import { ChangeList } from "./ChangeList.ts";
import type { TimeTogether } from "./CookedAtOnce.ts";
import type { Penalties } from "./Penalties.ts";
import { Reordering } from "./Reordering.ts";
import type { Change, WeekState } from "./WeekState.ts";

/** A menu as the search holds it: the dish of each sitting and the trips made. */
export interface Sketch {
  readonly costMinor: number;
  readonly dishOf: Int16Array;
  readonly tripMade: Uint8Array;
}

/** Shares of the kinds of move; what remains is a change of two sittings of one day. */
const REPLACE = 0.34;
const SHARE = 0.44;
const COPY = 0.58;
const SWAP = 0.78;
const EVERYWHERE = 0.88;
const TWICE = 0.94;
const TRIP = 0.965;
/** While there is no plan, more depends on the trips. */
const TRIP_WITHOUT_PLAN = 0.985;

/** Of the exchanges of two sittings, so many are other moves of the servings there are. */
const REORDER = 0.3;

/** Share of the other moves that serve what is wished for, where anything is. */
const WISHED = 0.05;

/** Of the trips proposed to be left out, so many are made instead of another. */
const EXCHANGE = 0.7;

/** Weight of a menu that breaks only what the state does not know. */
const UNACCEPTED = 1e-3;

/** What the search may do and how it is judged. */
export interface SearchRules {
  /** Judges limits that the state does not know: loads carried, room in the fridge. */
  readonly accepts: (state: WeekState) => boolean;
  /** Asked about what a menu cooks at once before it becomes the best; absent = what the problem knows counts. */
  readonly timeTogether?: TimeTogether | undefined;
  /** Most trips that the search makes. */
  readonly mostTrips: number;
  /** By which of two menus breaks the limits less. */
  readonly penalties: Penalties;
}

/**
 * Simulated annealing over menus. Deterministic: the same seed and the same numbers of moves give the same
 * menus, however long they took.
 */
export class Annealing {
  best: Sketch | undefined;
  /** The menu that breaks the limits least, while none keeps them all. */
  leastBroken: Sketch | undefined;
  private leastViolation = Infinity;
  moves = 0;
  readonly candidates: Candidates;
  private readonly random: RandomSource;
  private current = 0;
  private readonly K: number;
  private readonly changes = new ChangeList();
  private readonly reordering: Reordering;

  private readonly problem: MenuProblem;
  readonly state: WeekState;
  private readonly rules: SearchRules;

  constructor(problem: MenuProblem, state: WeekState, seed: number, rules: SearchRules) {
    this.problem = problem;
    this.state = state;
    this.rules = rules;
    this.random = createRandomSource(seed);
    this.candidates = new Candidates(problem, state);
    this.reordering = new Reordering(problem, state, this.candidates, this.changes, this.random);
    this.K = problem.sittings.length;
  }

  /** Fills every sitting anew with the cheapest of a few drawn dishes. */
  restart(estimate: (dish: number) => number): void {
    const changes: Change[] = [];
    for (let sitting = 0; sitting < this.K; sitting++) {
      let dish = this.candidates.draw(sitting, this.random);
      for (let tries = 0; tries < 5; tries++) {
        const other = this.candidates.draw(sitting, this.random);
        if (other >= 0 && estimate(other) < estimate(dish)) dish = other;
      }
      changes.push({ sitting, dish });
    }
    this.state.change(changes);
    this.current = this.state.total();
    this.note();
  }

  /** Goes to a known menu. */
  resume(sketch: Sketch): void {
    const { tripMade } = this.state;
    const toggled = [...this.problem.trips.keys()].filter((trip) => tripMade[trip] !== sketch.tripMade[trip]);
    if (toggled.length > 0) this.state.toggleTrips(...toggled);
    const changes: Change[] = [];
    sketch.dishOf.forEach((dish, sitting) => {
      if (this.state.dishOf[sitting] !== dish) changes.push({ sitting, dish });
    });
    this.state.change(changes);
    this.current = this.state.total();
    this.note();
  }

  /** Goes on with the present menu after its penalties have changed. */
  weighAnew(): void {
    this.current = this.state.total();
  }

  /**
   * Makes `count` moves while the temperature falls from `hot` to `cold` (minor units); with `reorders`, only such as bring
   * the servings there are into another order.
   */
  run(count: number, hot: number, cold: number, reorders = false): void {
    const cooling = (cold / hot) ** (1 / Math.max(1, count / 32));
    let temperature = hot;
    for (let i = 0; i < count; i++) {
      if ((i & 31) === 0 && i > 0) temperature *= cooling;
      this.step(temperature, reorders);
    }
    this.moves += count;
  }

  /** What a move may come to at most is drawn first, so that dearer ones need not be reckoned to the end. */
  private step(temperature: number, reorders: boolean): void {
    const kind = this.random();
    const mostMinor = this.current - temperature * Math.log(this.random());
    const trip = this.best ? TRIP : TRIP_WITHOUT_PLAN;
    let next: number;
    if (!reorders && kind >= TWICE && kind < trip && this.problem.trips.length > 0) {
      const trips = this.proposeTrips();
      if (trips.length === 0) return;
      next = this.state.toggleTripsWithin(trips, mostMinor);
    } else {
      const changes = reorders ? this.proposeOrder() : this.propose(kind);
      if (changes.length === 0) return;
      next = this.state.changeWithin(changes, mostMinor);
    }
    if (next <= mostMinor) {
      this.current = next;
      this.note();
    } else this.state.undo();
  }

  private pick(n: number): number {
    return Math.floor(this.random() * n);
  }

  /**
   * One trip to be made or left out, or two to be exchanged; empty = nothing. Once there is a plan, one more than
   * allowed may be tried at its penalty, to pass from one set of trips to another. Of no more trips than are
   * allowed, one that takes neither money nor minutes is only ever left out for another, as nothing is dearer with it.
   */
  private proposeTrips(): readonly number[] {
    const { tripMade } = this.state;
    const trip = this.pick(tripMade.length);
    const made = tripMade[trip] === 1;
    const most = this.rules.mostTrips + (this.best ? 1 : 0);
    const count = countMade(tripMade);
    const free = made || count < most;
    const isKept = made && count <= this.problem.limits.maxTrips && this.costsNothing(trip);
    const other = !free || isKept || (made && this.random() < EXCHANGE) ? this.pickTrip(made ? 0 : 1) : -1;
    if (other >= 0) return [trip, other];
    return free && !isKept ? [trip] : [];
  }

  private costsNothing(trip: number): boolean {
    const { costMinor, minutes } = this.problem.trips[trip] as MenuTrip;
    return costMinor === 0 && minutes === 0;
  }

  /** A trip that is made (1) or not (0), or -1 where there is none. */
  private pickTrip(made: number): number {
    const { tripMade } = this.state;
    const from = this.pick(tripMade.length);
    for (let i = 0; i < tripMade.length; i++) {
      const trip = (from + i) % tripMade.length;
      if (tripMade[trip] === made) return trip;
    }
    return -1;
  }

  private propose(kind: number): readonly Change[] {
    const { changes, state } = this;
    changes.clear();
    if (this.candidates.hasWishes && this.random() < WISHED) {
      const { sitting, dish } = this.candidates.drawWished(this.random);
      this.put(sitting, dish);
      return changes.list();
    }
    const sitting = this.pick(this.K);
    const now = state.dishOf[sitting] as number;
    if (kind < REPLACE) this.put(sitting, this.candidates.draw(sitting, this.random));
    else if (kind < SHARE) {
      const dish = this.candidates.drawSharing(state.dishOf[this.pick(this.K)] as number, sitting, this.random);
      if (dish >= 0) this.put(sitting, dish);
    } else if (kind < COPY) this.put(sitting, state.dishOf[this.pick(this.K)] as number);
    else if (kind < SWAP) {
      if (this.random() < REORDER) this.reordering.propose();
      else this.reordering.exchange(sitting, this.pick(this.K));
    } else if (kind < EVERYWHERE) {
      const dish =
        this.random() < 0.7 ? this.candidates.draw(sitting, this.random) : (state.dishOf[this.pick(this.K)] as number);
      if (dish !== now && now >= 0)
        for (let i = 0; i < state.countOf(now); i++) this.put(state.sittingAt(now, i), dish);
    } else if (kind < TWICE) {
      const other = this.pick(this.K);
      const dish = this.candidates.draw(Math.min(sitting, other), this.random);
      this.put(sitting, dish);
      if (other !== sitting) this.put(other, dish);
    } else {
      const { day } = this.problem.sittings[sitting] as { day: number };
      const other = Math.min(this.K - 1, Math.max(0, sitting + this.pick(7) - 3));
      this.put(sitting, this.candidates.draw(sitting, this.random));
      if (other !== sitting && this.problem.sittings[other]?.day === day)
        this.put(other, this.candidates.draw(other, this.random));
    }
    return changes.list();
  }

  /** The same servings in another order; empty = nothing. */
  private proposeOrder(): readonly Change[] {
    this.changes.clear();
    this.reordering.propose();
    return this.changes.list();
  }

  private put(sitting: number, dish: number): void {
    if (this.state.dishOf[sitting] === dish || !this.state.mayServe(dish, sitting)) return;
    this.changes.add(sitting, dish);
  }

  private note(): void {
    const { state, rules } = this;
    if (state.violation >= 1e-9) {
      if (!this.best) this.noteBroken(state.violationBy(rules.penalties));
      return;
    }
    if (this.best && this.current >= this.best.costMinor - 1e-6) return;
    if (rules.timeTogether !== undefined && state.learn(rules.timeTogether)) {
      this.current = state.total();
      this.note();
      return;
    }
    if (rules.accepts(state)) this.best = this.sketch();
    else if (!this.best) this.noteBroken(UNACCEPTED);
  }

  private noteBroken(violation: number): void {
    if (violation >= this.leastViolation) return;
    this.leastViolation = violation;
    this.leastBroken = this.sketch();
  }

  private sketch(): Sketch {
    return {
      costMinor: this.current,
      dishOf: Int16Array.from(this.state.dishOf),
      tripMade: Uint8Array.from(this.state.tripMade),
    };
  }
}

function countMade(tripMade: Uint8Array): number {
  let count = 0;
  for (let trip = 0; trip < tripMade.length; trip++) count += tripMade[trip] as number;
  return count;
}

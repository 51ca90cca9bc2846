import { familyOf, type MenuDish, type MenuProblem, type MenuSitting } from "../problem.ts";
import { IntakeTotals } from "./IntakeTotals.ts";
import type { Penalties } from "./Penalties.ts";
import { VarietyCounts } from "./VarietyCounts.ts";
import { WishCounts } from "./WishCounts.ts";

/** What follows from which dish is served where, whatever is cooked at once: intake, variety, wishes, liking and changes. */
export class ServedTotals {
  private readonly problem: MenuProblem;
  private readonly intake: IntakeTotals;
  private readonly variety: VarietyCounts;
  /** Absent where nothing is wished for. */
  private readonly wishes: WishCounts | undefined;
  private readonly dislikeOf: Float64Array;
  /** Dislike and changes less the worth of what is put by. */
  private dislike = 0;
  private savedDislike = 0;

  constructor(problem: MenuProblem) {
    this.problem = problem;
    this.intake = new IntakeTotals(problem);
    this.variety = new VarietyCounts(problem);
    this.wishes = problem.wishes?.length ? new WishCounts(problem) : undefined;
    this.dislikeOf = Float64Array.from(problem.dishes, ({ dislikeMinor }) => dislikeMinor);
  }

  begin(): void {
    this.savedDislike = this.dislike;
    this.intake.begin();
  }

  /** A sitting gets a dish in place of another; -1 = none. */
  exchange(old: number, dish: number, sitting: number): void {
    this.intake.exchange(old, dish, sitting);
    if (old >= 0) this.dislike -= this.dislikeAt(old, sitting);
    if (dish >= 0) this.dislike += this.dislikeAt(dish, sitting);
    this.count(old, dish, sitting);
  }

  private count(old: number, dish: number, sitting: number): void {
    if (old >= 0) {
      this.variety.count(old, sitting, -1);
      this.wishes?.count(old, sitting, -1);
    }
    if (dish >= 0) {
      this.variety.count(dish, sitting, 1);
      this.wishes?.count(dish, sitting, 1);
    }
  }

  private dislikeAt(dish: number, sitting: number): number {
    const { keep, putBy, portions } = this.problem.sittings[sitting] as MenuSitting;
    let minor = this.dislikeOf[dish] as number;
    if (keep !== undefined && !this.isKept(keep.dish, dish)) minor += keep.changeMinor;
    if (putBy) minor -= portions * ((this.problem.dishes[dish] as MenuDish).putBy?.creditMinor ?? 0);
    return minor;
  }

  private isKept(before: number, dish: number): boolean {
    return before === dish || familyOf(this.problem, before) === familyOf(this.problem, dish);
  }

  /** Takes back one exchange since `begin`, the last first; `undo` takes back the rest of it. */
  takeBack(old: number, dish: number, sitting: number): void {
    this.count(dish, old, sitting);
  }

  undo(): void {
    this.dislike = this.savedDislike;
    this.intake.undo();
  }

  /** Minor units: dislike and changes, what misses the soft bounds and the wishes that have a price. */
  costMinor(): number {
    return this.dislike + this.intake.shortfallMinor() + (this.wishes?.priceMinor() ?? 0);
  }

  violation(penalties: Penalties): number {
    const missed = this.wishes === undefined ? 0 : penalties.wish * this.wishes.missed;
    return this.intake.violation(penalties) + this.variety.violation(penalties) + missed;
  }
}

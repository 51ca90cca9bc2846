import { familyOf, type MenuDish, type MenuProblem } from "../problem.ts";
import type { Penalties } from "./Penalties.ts";

/** How often each family of dishes is served, and each family and main ingredient where variety counts. All whole numbers. */
export class VarietyCounts {
  private readonly problem: MenuProblem;
  private readonly family: Int32Array;
  private readonly uses: Int32Array;
  private readonly mainCount: Int32Array;
  private readonly eveningCount: Int32Array;
  private overUse = 0;
  private overMain = 0;
  private distinct = 0;
  private served = 0;

  constructor(problem: MenuProblem) {
    this.problem = problem;
    this.family = Int32Array.from(problem.dishes, (_, dish) => familyOf(problem, dish));
    this.uses = new Int32Array(problem.dishes.length);
    this.mainCount = new Int32Array(1 + Math.max(0, ...problem.dishes.map((dish) => dish.main)));
    this.eveningCount = new Int32Array(problem.dishes.length);
  }

  /** Counts a serving of a dish at a sitting (`sign` 1), or takes it away (-1). */
  count(dish: number, sitting: number, sign: number): void {
    const { maxUses, main } = this.problem.dishes[dish] as MenuDish;
    const family = this.family[dish] as number;
    const uses = (this.uses[family] as number) + sign;
    this.uses[family] = uses;
    this.served += sign;
    if (sign > 0 ? uses > maxUses : uses >= maxUses) this.overUse += sign;
    if (!this.problem.sittings[sitting]?.variety) return;
    const { mainMax } = this.problem.limits;
    const before = this.mainCount[main] as number;
    this.mainCount[main] = before + sign;
    this.overMain += Math.max(0, before + sign - mainMax) - Math.max(0, before - mainMax);
    const count = (this.eveningCount[family] as number) + sign;
    this.eveningCount[family] = count;
    if (sign > 0 && count === 1) this.distinct++;
    if (sign < 0 && count === 0) this.distinct--;
  }

  violation(penalties: Penalties): number {
    const short = Math.max(0, this.problem.limits.distinct - this.distinct);
    const unserved = this.problem.sittings.length - this.served;
    return (
      penalties.use * this.overUse +
      penalties.main * this.overMain +
      penalties.distinct * short +
      penalties.unserved * unserved
    );
  }
}

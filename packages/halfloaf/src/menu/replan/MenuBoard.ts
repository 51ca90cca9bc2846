import type { MenuPlan } from "../plan.ts";
import type { MenuProblem } from "../problem.ts";
import { decodePlan } from "../search/decodePlan.ts";
import { WeekState } from "../search/WeekState.ts";
import { isCarried } from "./isCarried.ts";

/** A menu that single dishes are moved about on, with what each move costs. */
export class MenuBoard {
  private readonly state: WeekState;
  private readonly problem: MenuProblem;

  constructor(problem: MenuProblem, menu: Pick<MenuPlan, "batches" | "trips">) {
    this.problem = problem;
    this.state = new WeekState(problem);
    if (menu.trips.length > 0) this.state.toggleTrips(...menu.trips);
    this.state.change(menu.batches.flatMap(({ dish, sittings }) => sittings.map((sitting) => ({ sitting, dish }))));
  }

  dishAt(sitting: number): number {
    return this.state.dishOf[sitting] as number;
  }

  /** True if the dish may stand at the sitting at all. */
  takes(dish: number, sitting: number): boolean {
    return this.state.mayServe(dish, sitting);
  }

  /** Money of the menu in minor units; absent where it breaks a limit. */
  cost(): number | undefined {
    const total = this.state.total();
    if (this.state.violation >= 1e-9) return undefined;
    return isCarried(this.problem, this.state) ? total : undefined;
  }

  /** Puts a dish at a sitting. */
  put(sitting: number, dish: number): void {
    this.state.change([{ sitting, dish }]);
  }

  /** Takes the last `put` back. */
  takeBack(): void {
    this.state.undo();
  }

  /** The menu as a plan, with the cheapest purchases. */
  plan(): MenuPlan {
    return decodePlan(this.state);
  }
}

import type { MenuPlan } from "../plan.ts";
import type { MenuProblem } from "../problem.ts";
import { decodePlan } from "../search/decodePlan.ts";
import { WeekState } from "../search/WeekState.ts";

/** A menu that single dishes are moved about on. */
export class MenuBoard {
  private readonly state: WeekState;

  constructor(problem: MenuProblem, menu: Pick<MenuPlan, "batches" | "trips">) {
    this.state = new WeekState(problem);
    if (menu.trips.length > 0) this.state.toggleTrips(...menu.trips);
    this.state.change(menu.batches.flatMap(({ dish, sittings }) => sittings.map((sitting) => ({ sitting, dish }))));
  }

  /** True if the dish may stand at the sitting at all. */
  takes(dish: number, sitting: number): boolean {
    return this.state.mayServe(dish, sitting);
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

import type { MenuPlan } from "../plan.ts";
import { decodePlan } from "../search/decodePlan.ts";
import type { Change, WeekState } from "../search/WeekState.ts";

/** A menu that dishes are moved about on: the state that a search stands at. */
export class MenuBoard {
  private readonly state: WeekState;

  constructor(state: WeekState) {
    this.state = state;
  }

  /** True if the dish may stand at the sitting at all. */
  takes({ dish, sitting }: Change): boolean {
    return this.state.mayServe(dish, sitting);
  }

  /** Puts dishes at sittings. */
  put(changes: readonly Change[]): void {
    this.state.change(changes);
  }

  /** Takes the last `put` back. */
  takeBack(): void {
    this.state.undo();
  }

  /** What the search reckons for the menu, broken limits and the price of changes included (minor units). */
  reckon(): number {
    return this.state.total();
  }

  /** The menu as a plan, with the cheapest purchases. */
  plan(): MenuPlan {
    return decodePlan(this.state);
  }
}

import type { Dish, Making } from "halfloaf/dish";
import type { FoodTable } from "halfloaf/food";
import type { Issue } from "halfloaf/quantity";
import type { FoodIndex } from "../find/FoodIndex.ts";
import type { MakingsLine } from "../line/makingsLine.ts";
import type { English } from "../line/toAmount.ts";
import type { DraftStep, Field } from "../method/DraftStep.ts";
import type { DishForm, Passage } from "./DishText.ts";

/** What a dish is drafted with. */
export interface DraftOptions {
  readonly foods: FoodTable;
  /** The names of the same foods. */
  readonly index: FoodIndex;
  /** Which cups, spoons and pints are meant. */
  readonly english: English;
}

type Alternative = Making["alternatives"][number];

/** A making as read. */
export interface DraftMaking {
  /** The line and where it stands, under which heading. */
  readonly passage: Passage;
  /** The line taken apart; absent for a making that this program wrote. */
  readonly line?: MakingsLine;
  /** What the line calls the food. */
  readonly name: string;
  /** Absent where it isn't sure which food is meant; then a person chooses. */
  readonly food?: Field<string>;
  /** The foods nearest to the name, at most three. */
  readonly offers: readonly string[];
  /** Absent where the line tells one that can't be turned into an amount of the food ("1 tin"). */
  readonly amount?: Field<Making["amount"]>;
  readonly as?: Field<"purchased">;
  readonly cut?: Field<string>;
  readonly retention?: Field<string>;
  readonly optional: Field<boolean>;
  /** Foods that may take its place and are sure; those that aren't stand in `unread`. */
  readonly alternatives: Field<readonly Alternative[]>;
  /** Pieces of the line that went into none of the above. */
  readonly unread: readonly string[];
}

/**
 * A dish as read: each field with how sure it is and why it is less than sure, and what was found and not used. A field that
 * is absent was not found and can't be reckoned.
 */
export interface DishDraft {
  readonly form: DishForm;
  readonly id: Field<string>;
  readonly title?: Field<string>;
  readonly cooking: Field<string>;
  readonly manner: Field<Dish["manner"]>;
  readonly fits: Field<Dish["fits"]>;
  readonly main?: Field<string>;
  readonly portions?: Field<number>;
  /** What is said of the yield, as written. */
  readonly yieldText?: string;
  readonly portionMassG?: Field<number>;
  readonly statedMinutes?: Field<number>;
  readonly makings: readonly DraftMaking[];
  readonly method: readonly DraftStep[];
  readonly keeps: Field<Dish["keeps"]>;
  readonly travels: Field<boolean>;
  readonly served: Field<Dish["served"]>;
  readonly cautions: Field<Dish["cautions"]>;
  readonly note?: Field<string>;
  /** Passages that went into no field. */
  readonly unread: readonly Passage[];
  readonly issues: readonly Issue[];
}

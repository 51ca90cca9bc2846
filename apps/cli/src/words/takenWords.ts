import type { Names } from "./Names.ts";

/** What may say which of its makings it takes otherwise. */
interface Taking {
  readonly taken?: readonly { readonly food: string; readonly insteadOf: string }[] | undefined;
}

/** The makings that a batch takes otherwise than its dish first states, as "dill instead of parsley"; "" where none is. */
export function tellTaken({ taken = [] }: Taking, names: Pick<Names, "food">): string {
  return taken.map(({ food, insteadOf }) => `${names.food(food)} instead of ${names.food(insteadOf)}`).join(", ");
}

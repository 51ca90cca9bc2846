import type { DishWanted } from "../thinking/Thinker.ts";

/** Where the order of work of these dishes is, cooked together. */
export function workPath(wanted: readonly DishWanted[]): string {
  const search = new URLSearchParams(
    wanted.flatMap(({ dish, portions }) => [
      ["dish", dish],
      ["portions", String(portions)],
    ]),
  );
  return `/work?${search}`;
}

/** The dishes such a path asks for; a number of portions that can't be is one. */
export function parseWorkSearch(search: URLSearchParams): readonly DishWanted[] {
  const portions = search.getAll("portions").map(Number);
  return search.getAll("dish").map((dish, at) => {
    const asked = portions[at];
    return { dish, portions: asked !== undefined && asked > 0 ? asked : 1 };
  });
}

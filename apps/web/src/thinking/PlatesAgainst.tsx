import type { PlateAgainst } from "halfloaf/kitchen";
import type { ReactNode } from "react";
import { useNames } from "../kitchen/useNames.ts";
import { useFurther } from "../words/useFurther.ts";

interface PlatesAgainstProps {
  readonly against: readonly PlateAgainst[];
  /** How many of them are named, the next first; absent = a few. */
  readonly named?: number | undefined;
}

/** So many plates are named where there is more to be seen than them. */
const NEAREST = 3;

/** Plates that are not for who is to eat them, with what is in them; of those that are not named their number. */
export function PlatesAgainst({ against, named = NEAREST }: PlatesAgainstProps): ReactNode {
  const { further, words, formats } = useFurther("mended");
  const { behind } = further.mended;
  const names = useNames();
  return (
    <ul className="lines close">
      {against.slice(0, named).map(({ date, kind, dish, eater, foods }) => (
        <li key={`${date} ${kind} ${dish} ${eater}`}>
          {behind.against.plate(
            `${formats.day(date)}, ${words.sittings[kind]}`,
            names.dish(dish),
            names.eater(eater),
            foods.map((food) => names.food(food)).join(", "),
          )}
        </li>
      ))}
      {against.length > named && <li>{behind.against.more(against.length - named)}</li>}
    </ul>
  );
}

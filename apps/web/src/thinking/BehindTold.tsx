import type { PlateAgainst } from "halfloaf/kitchen";
import type { ReactNode } from "react";
import { useNames } from "../kitchen/useNames.ts";
import { useFurther } from "../words/useFurther.ts";
import LetFollow from "./LetFollow.tsx";

interface BehindToldProps {
  readonly against: readonly PlateAgainst[];
  /** How many of them are named, the next first. */
  readonly named: number;
  /** What was changed of the kitchen, for an answer to hold for. */
  readonly told: string;
}

/** What is wrong with a week that was planned before its kitchen was changed, and the way to let it follow. */
export default function BehindTold({ against, named, told }: BehindToldProps): ReactNode {
  const { further, words, formats } = useFurther("mended");
  const { behind } = further.mended;
  const names = useNames();
  return (
    <section className="sheet stack tight" aria-labelledby="behind">
      <h2 id="behind">{against.length > 0 ? behind.against.title : behind.title}</h2>
      {against.length > 0 && (
        <>
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
          <p>{behind.against.about}</p>
        </>
      )}
      <p>{behind.about}</p>
      <LetFollow told={JSON.stringify([told, against])} keepSame />
    </section>
  );
}

import type { PlateAgainst } from "halfloaf/kitchen";
import type { ReactNode } from "react";
import { useFurther } from "../words/useFurther.ts";
import LetFollow from "./LetFollow.tsx";
import { PlatesAgainst } from "./PlatesAgainst.tsx";

interface BehindToldProps {
  readonly against: readonly PlateAgainst[];
  /** How many of them are named, the next first; absent = a few. */
  readonly named?: number | undefined;
  /** What was changed of the kitchen, for an answer to hold for. */
  readonly told: string;
}

/** What is wrong with a week that was planned before its kitchen was changed, and the way to let it follow. */
export default function BehindTold({ against, named, told }: BehindToldProps): ReactNode {
  const { behind } = useFurther("mended").further.mended;
  return (
    <section className="sheet stack tight" aria-labelledby="behind">
      <h2 id="behind">{against.length > 0 ? behind.against.title : behind.title}</h2>
      {against.length > 0 && (
        <>
          <PlatesAgainst against={against} named={named} />
          <p>{behind.against.about}</p>
        </>
      )}
      <p>{behind.about}</p>
      <LetFollow told={JSON.stringify([told, against])} keepSame />
    </section>
  );
}

import type { ReactNode } from "react";
import { Awaited } from "../loading/Awaited.tsx";
import { lazily } from "../loading/lazily.ts";
import { useFurther } from "../words/useFurther.ts";
import { useBehind } from "./useBehind.ts";

const LetFollow = lazily(() => import("./LetFollow.tsx"));

/** Where the kitchen was changed after the week of today was accepted, lets what is left of it follow; nothing where it was not. */
export function WeekBehind(): ReactNode {
  const { mended } = useFurther("mended").further;
  const limits = useBehind()?.limits ?? [];
  if (limits.length === 0) return null;
  return (
    <section className="sheet stack tight" aria-labelledby="behind">
      <h2 id="behind">{mended.behind.title}</h2>
      <p>{mended.behind.about}</p>
      <Awaited>
        <LetFollow told={JSON.stringify(limits)} keepSame />
      </Awaited>
    </section>
  );
}

import type { ReactNode } from "react";
import { Allowed } from "../sharing/Allowed.tsx";
import { useFurther } from "../words/useFurther.ts";

/** A way to write down a food that is not among those to choose from; it opens beside what is under way, which stays as it is. */
export function WriteFood(): ReactNode {
  const { further } = useFurther();
  return (
    <Allowed to="edited">
      <div>
        <a href="/dishes/foods/write" target="_blank" rel="noopener" className="button quiet">
          {further.writeFood}
        </a>
      </div>
    </Allowed>
  );
}

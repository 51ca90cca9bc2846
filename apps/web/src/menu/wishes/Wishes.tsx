import type { ReactNode } from "react";
import { useKitchen } from "../../kitchen/KitchenProvider.tsx";
import { LazyFold } from "../../kitchen/LazyFold.tsx";
import { lazily } from "../../loading/lazily.ts";
import { useFurther } from "../../words/useFurther.ts";

const WishList = lazily(() => import("./WishList.tsx"));

/** What is wished for, to be opened before planning. */
export function Wishes(): ReactNode {
  const { further } = useFurther("menu");
  const { view } = useKitchen();
  const { length } = view.edited.wishes;
  const brief = length === 0 ? further.none : further.week.wishCount(length);
  return (
    <LazyFold title={further.week.wishes} brief={brief} className="wishes">
      <WishList />
    </LazyFold>
  );
}

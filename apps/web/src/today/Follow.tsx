import { weekNews } from "halfloaf/kitchen/record";
import { type ReactNode, useMemo } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { Awaited } from "../loading/Awaited.tsx";
import { lazily } from "../loading/lazily.ts";

const NewsTold = lazily(() => import("./NewsTold.tsx"));

/** Where things came out otherwise than the week took them to be, tells them and lets the plan follow; nothing where they did not. */
export function Follow(): ReactNode {
  const { state, menu, day } = useKitchen().view;
  const news = useMemo(() => (menu === undefined ? [] : weekNews(state, menu.week, day)), [state, menu, day]);
  if (news.length === 0 || menu === undefined) return null;
  return (
    <Awaited>
      <NewsTold news={news} week={menu.week} />
    </Awaited>
  );
}

import { weekNews } from "halfloaf/kitchen/record";
import { type ReactNode, useEffect, useMemo } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useMayWrite } from "../sharing/useMayWrite.ts";
import { MendedWeek } from "../thinking/MendedWeek.tsx";
import { useMending } from "../thinking/useMending.ts";
import { useFurther } from "../words/useFurther.ts";

/** Where things came out otherwise than the week took them to be, lets the plan follow; nothing where they did not. */
export function Follow(): ReactNode {
  const { further } = useFurther("mended", "today");
  const { session, view } = useKitchen();
  const { state, menu, day } = view;
  const mayTake = useMayWrite("menu-accepted");
  const news = useMemo(() => (menu === undefined ? [] : weekNews(state, menu.week, day)), [state, menu, day]);
  const { mending, ask, forget } = useMending(news.length > 0);
  const told = JSON.stringify(news);
  // biome-ignore lint/correctness/useExhaustiveDependencies: an answer holds for the news it was given for.
  useEffect(() => forget, [told, forget]);
  if (news.length === 0) return null;
  return (
    <section className="sheet stack tight" aria-labelledby="follow">
      <h2 id="follow">{further.follow.title}</h2>
      <p>{further.follow.count(news.length)}</p>
      <div role="status">
        <MendedWeek
          mending={mending}
          same={further.mended.same}
          onAccept={({ week }) => void session.write((pen) => [pen.write({ kind: "menu-accepted", on: day, week })])}
        />
      </div>
      {mending.kind !== "answered" && mayTake && (
        <div>
          <button
            type="button"
            className="button main"
            disabled={mending.kind === "busy"}
            onClick={() => void ask([], { isPatient: true })}
          >
            {further.follow.ask}
          </button>
        </div>
      )}
    </section>
  );
}

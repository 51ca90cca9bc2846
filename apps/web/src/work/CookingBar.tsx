import type { ReactNode } from "react";
import { Link } from "wouter";
import { useWords } from "../words/WordsContext.tsx";
import { timersOf } from "./CookingRun.ts";
import { useCooking } from "./useCooking.ts";
import { useNow } from "./useNow.ts";
import { useScaledSheet } from "./useScaledSheet.ts";
import "./cookingBar.css";

/** What goes on by itself while another screen is open, and the way back to the stove; nothing while nothing is cooked. */
export default function CookingBar(): ReactNode {
  const { words } = useWords();
  const running = useCooking();
  const sheet = useScaledSheet(running?.sheet);
  const isCooking = running?.begunMs !== undefined;
  const nowMs = useNow(isCooking);
  if (!isCooking) return null;
  const [timer] = timersOf({ ...running, sheet: sheet ?? running.sheet });
  const minutes = timer === undefined ? undefined : Math.ceil((timer.endsMs - nowMs) / 60_000);
  return (
    <Link href="/work" className={minutes !== undefined && minutes <= 0 ? "cooking-bar over" : "cooking-bar"}>
      <span>{words.work.goesOn}</span>
      {timer !== undefined && minutes !== undefined && (
        <>
          <span className="cooking-what">{timer.line.text}</span>
          <b className="figure">{words.work.left(minutes)}</b>
        </>
      )}
    </Link>
  );
}

import type { ReactNode } from "react";
import { Link } from "wouter";
import { useWords } from "../words/WordsContext.tsx";
import { type Running, timersOf } from "./CookingRun.ts";
import { useNow } from "./useNow.ts";
import { useScaledSheet } from "./useScaledSheet.ts";
import "./cookingBar.css";

/** The nearest thing that goes on by itself in a cooking, with its time left, as a way back to the stove. */
export default function CookingLine({ running }: { readonly running: Running }): ReactNode {
  const { words } = useWords();
  const sheet = useScaledSheet(running.sheet);
  const nowMs = useNow(true);
  const [timer] = timersOf({ ...running, sheet });
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

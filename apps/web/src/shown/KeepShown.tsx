import { type ReactNode, useEffect } from "react";
import { useLocation } from "wouter";
import { type Opening, useOpening, usePassKitchens } from "../kitchen/KitchenProvider.tsx";
import { SCREENS } from "../shell/screens.ts";
import { usePassWords } from "../words/WordsContext.tsx";
import { writeShown } from "./ShownBefore.ts";

/** A screen is drawn for the next start once nothing has changed for so long. */
const QUIET_MS = 1500;

/** Keeps the screen that is open as a start would show it, so that the next start shows it at once; draws nothing itself. */
export function KeepShown({ draw }: { readonly draw: () => ReactNode }): ReactNode {
  const opening = useOpening();
  const [location] = useLocation();
  const withKitchens = usePassKitchens();
  const withWords = usePassWords();
  useEffect(() => {
    if (opening.kind !== "open" || !isKeepable(location)) return undefined;
    return whenQuiet(async () => {
      const { drawPage } = await import("./drawPage.tsx");
      return () => {
        if (!isSettled(opening)) return;
        const { session, view } = opening;
        const html = drawPage(withWords(withKitchens(draw())));
        if (html === undefined || html === "") return;
        writeShown(location, view.day, { kitchen: session.id, seq: session.kept.upTo, html });
      };
    });
  }, [opening, location, withKitchens, withWords, draw]);
  return null;
}

/** Those that are started with, along the foot of a narrow page; but what the stove shows is another with every minute. */
function isKeepable(location: string): boolean {
  return SCREENS.some(({ path, name, first }) => path === location && first && name !== "work");
}

/** True where all that is seen is on disk and nothing has to be told besides. */
function isSettled({ session, view }: Extract<Opening, { kind: "open" }>): boolean {
  const { refused, mended, isForbidden, kept } = session;
  return session.view === view && kept.waiting === 0 && refused === undefined && mended === undefined && !isForbidden;
}

/** Does what `load` gives once the page was left alone for a while, or as it is left; gives what calls it off. */
function whenQuiet(load: () => Promise<() => void>): () => void {
  let act: (() => void) | undefined;
  const actOnce = (): void => {
    act?.();
    act = undefined;
  };
  let isWanted = true;
  const timer = setTimeout(async () => {
    const loaded = await load().catch(() => undefined);
    if (!isWanted) return;
    act = loaded;
    if ("requestIdleCallback" in globalThis) requestIdleCallback(actOnce);
    else actOnce();
  }, QUIET_MS);
  const leave = (): void => {
    if (document.visibilityState === "hidden") actOnce();
  };
  document.addEventListener("visibilitychange", leave);
  return () => {
    isWanted = false;
    act = undefined;
    clearTimeout(timer);
    document.removeEventListener("visibilitychange", leave);
  };
}

import { type ReactNode, useEffect, useSyncExternalStore } from "react";
import { useWords } from "../words/WordsContext.tsx";
import { Late } from "./Late.tsx";
import { lateLoads } from "./lateLoads.ts";

/**
 * In the place of what is on its way: that it takes a moment, or that the network is gone and it comes by itself once that is
 * back. A quiet one says nothing as long as nothing is late.
 */
export function Loading({ isQuiet = false }: { readonly isQuiet?: boolean }): ReactNode {
  const { words } = useWords();
  const lateness = useSyncExternalStore(lateLoads.subscribe, () => lateLoads.lateness);
  useEffect(lateLoads.tellInPlace, []);
  if (lateness !== "none") return <Late lateness={lateness} />;
  return isQuiet ? null : <p className="soft">{words.shell.loading}</p>;
}

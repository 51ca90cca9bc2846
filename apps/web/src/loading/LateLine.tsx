import { type ReactNode, useContext, useSyncExternalStore } from "react";
import { DrawnAhead } from "../shown/DrawnAhead.ts";
import { Late } from "./Late.tsx";
import { lateLoads } from "./lateLoads.ts";

/** Over every screen: that something is late of which no place tells, such as a worker's script or another language. */
export function LateLine(): ReactNode {
  const isDrawnAhead = useContext(DrawnAhead);
  const lateness = useSyncExternalStore(lateLoads.subscribe, () =>
    lateLoads.isToldInPlace ? "none" : lateLoads.lateness,
  );
  return lateness === "none" || isDrawnAhead ? null : <Late lateness={lateness} />;
}

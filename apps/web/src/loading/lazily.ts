import { type ComponentType, lazy } from "react";
import { loadSurely } from "./loadSurely.ts";

/** A component that is loaded when it is first shown, within an `Awaited`. */
export function lazily<Props>(load: () => Promise<{ default: ComponentType<Props> }>): ComponentType<Props> {
  return lazy(() => loadSurely(load));
}

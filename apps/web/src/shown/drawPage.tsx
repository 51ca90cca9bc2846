import { renderToString } from "preact-render-to-string";
import type { ReactNode } from "react";
import { DrawnAhead } from "./DrawnAhead.ts";

/** A page as it is drawn at first, as markup; undefined where a part of it is not loaded yet. */
export function drawPage(page: ReactNode): string | undefined {
  try {
    return renderToString(<DrawnAhead value={true}>{page}</DrawnAhead>);
  } catch {
    return undefined;
  }
}

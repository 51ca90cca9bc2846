import type { Paint } from "./paint.ts";

/** What the lines of a page are laid out for. */
export interface Page {
  /** Columns of a line. */
  readonly width: number;
  readonly paint: Paint;
}

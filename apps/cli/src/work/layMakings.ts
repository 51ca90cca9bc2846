import { letterOf } from "halfloaf/sheet";
import { harmless } from "../output/harmless.ts";
import { wrapBehind } from "../output/layout.ts";
import type { WorkPage } from "./WorkPage.ts";

/** What to measure out for each dish, for its portions; nothing once the cooking goes on. */
export function layMakings({ makings, retimed, width, paint }: WorkPage): string[] {
  if (retimed !== undefined || makings.every((each) => each.length === 0)) return [];
  const lines = makings.flatMap((each, at) =>
    each.flatMap(({ text }) => wrapBehind(leadOf(at), harmless(text), width)),
  );
  return [paint.heading("MAKINGS"), "", ...lines];

  function leadOf(at: number): string {
    return makings.length === 1 ? "  - " : `  ${letterOf(at)}  `;
  }
}

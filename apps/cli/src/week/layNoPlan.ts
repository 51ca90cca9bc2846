import { layFaults } from "../output/layFaults.ts";
import { wrap, wrapBehind } from "../output/layout.ts";
import type { Page } from "../output/Page.ts";
import type { Fault } from "../words/Fault.ts";
import type { NoPlanReasons } from "./tellNoPlan.ts";

/** Broken rules of the nearest menu that are told; one day mostly stands for the others. */
const MOST_NEAREST = 5;

/** Why there is no plan, as lines: what collides and what would be enough, then in brief what the nearest menu breaks. */
export function layNoPlan({ why, nearest }: NoPlanReasons, page: Page): string[] {
  if (why.length === 0) return layFaults(nearest, page);
  const more = nearest.length - MOST_NEAREST;
  const told = nearest.slice(0, MOST_NEAREST).map(({ sentence }: Fault) => sentence);
  return [
    ...layFaults(why, page),
    "",
    ...wrap("What the menu that came nearest breaks:", page.width).map(page.paint.strong),
    ...told.flatMap((sentence) => wrapBehind("- ", sentence, page.width)),
    ...(more > 0 ? wrapBehind("- ", `and ${more} more.`, page.width) : []),
  ];
}

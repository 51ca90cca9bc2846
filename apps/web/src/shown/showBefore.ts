import { readLastSeq } from "@halfloaf/keep/browser/lastSeq";
import { whenShown } from "../shell/whenShown.ts";
import { keepTap } from "./keepTap.ts";
import type { ShownBefore } from "./ShownBefore.ts";

/** A start waits no longer than this for a screen that was shown before. */
const MOST_MS = 300;

/**
 * Shows a screen as it was shown before until the app has drawn it in `place`, provided that nothing was added to the kitchen
 * since. It is there to be looked at; a tap on it is done once the app is there. Resolves once it is painted, or is not shown
 * after all: what else a start takes comes after it, since it would only come in its way.
 */
export async function showBefore(place: HTMLElement, { kitchen, seq, html }: ShownBefore): Promise<void> {
  const last = await Promise.race([readLastSeq(kitchen, indexedDB), wait(MOST_MS)]);
  if (last !== seq) return;
  const picture = document.createElement("div");
  picture.inert = true;
  picture.innerHTML = html;
  place.hidden = true;
  place.before(picture);
  const tap = keepTap(picture);
  void whenShown(place).then(() => {
    picture.remove();
    place.hidden = false;
    tap.repeatIn(place);
  });
  await Promise.race([painted(), wait(MOST_MS)]);
}

/** Resolves after the next frame; a page that nobody sees has none. */
function painted(): Promise<void> {
  return new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve)));
}

function wait(ms: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, ms));
}

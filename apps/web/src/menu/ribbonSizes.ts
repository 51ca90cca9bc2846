import type { RibbonSizes } from "halfloaf/sheet";

/** Height above the ribbons for a day's name and its plates, where the text is as large as it usually is. */
const HEAD = 156;
const SIZES: RibbonSizes = { station: 92, lane: 48, pack: 22, label: 150 };
/** Pixels of the page's text where nobody has made it larger. */
const USUAL_TEXT_PX = 17;

/** Sizes of the picture in pixels, which grow with the text of the page. */
export function ribbonSizes(): { readonly sizes: RibbonSizes; readonly head: number; readonly scale: number } {
  const scale = Number.parseFloat(getComputedStyle(document.documentElement).fontSize) / USUAL_TEXT_PX;
  const grown = Object.entries(SIZES).map(([name, size]) => [name, size * scale] as const);
  return { sizes: Object.fromEntries(grown) as unknown as RibbonSizes, head: HEAD * scale, scale };
}

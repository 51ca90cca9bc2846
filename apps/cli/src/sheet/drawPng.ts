import type { Found } from "../words/Fault.ts";
import { refuse } from "../words/Fault.ts";

/** Pixels for each unit of a picture, so that it is sharp in print and on fine screens. */
const SCALE = 2;

/** A picture as PNG. The drawing part is loaded only here, since it is made for each system by itself. */
export async function drawPng(svg: string): Promise<Found<Uint8Array>> {
  const part = await import("@resvg/resvg-js").catch(() => undefined);
  if (part === undefined) {
    return refuse({
      code: "no-png",
      path: [],
      sentence: "The part that draws PNG is not there for this system.",
      remedy: "Write the picture as .svg, which every browser opens.",
    });
  }
  const font = { loadSystemFonts: true, sansSerifFamily: "DejaVu Sans", defaultFontFamily: "DejaVu Sans" };
  const drawn = new part.Resvg(svg, { fitTo: { mode: "zoom", value: SCALE }, background: "#ffffff", font }).render();
  return { ok: true, value: drawn.asPng() };
}

import type { Pack } from "halfloaf/price";
import type { Formats } from "../../words/Formats.ts";

/** How much a pack holds: "500 g", "1.5 l", "6 ×". */
export function tellContent(content: Pack["content"], formats: Formats): string {
  if ("massG" in content) return formats.mass(content.massG);
  return "volumeMl" in content ? formats.volume(content.volumeMl) : `${formats.number(content.pieces)} ×`;
}

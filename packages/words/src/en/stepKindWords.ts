import type { PaceOfKind } from "halfloaf/kitchen";

/** What kinds of step are called on a page. */
export const STEP_KIND_WORDS: Readonly<Record<PaceOfKind["kind"], string>> = {
  wash: "washing food",
  cut: "cutting",
  grate: "grating",
  mix: "mixing",
  knead: "kneading",
  soak: "soaking",
  rest: "resting",
  chill: "chilling",
  "heat-water": "heating water",
  boil: "boiling",
  simmer: "simmering",
  steam: "steaming",
  fry: "frying",
  bake: "baking",
  grill: "grilling",
  microwave: "microwave",
  blend: "blending",
  drain: "draining",
  assemble: "putting together",
  serve: "serving",
};

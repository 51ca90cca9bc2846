import type { PaceOfKind } from "halfloaf/kitchen";

/** What kinds of step are called in German. */
export const STEP_KIND_WORDS_DE: Readonly<Record<PaceOfKind["kind"], string>> = {
  wash: "Waschen",
  cut: "Schneiden",
  grate: "Reiben",
  mix: "Mischen",
  knead: "Kneten",
  soak: "Einweichen",
  rest: "Ruhen",
  chill: "Kühlen",
  "heat-water": "Wasser erhitzen",
  boil: "Kochen",
  simmer: "Köcheln",
  steam: "Dämpfen",
  fry: "Braten",
  bake: "Backen",
  grill: "Grillen",
  microwave: "Mikrowelle",
  blend: "Mixen",
  drain: "Abgießen",
  assemble: "Anrichten",
  serve: "Auftragen",
};

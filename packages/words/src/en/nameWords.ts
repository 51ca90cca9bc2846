import type { SittingKind, TimelineRow } from "halfloaf/kitchen";

/** The kinds of sittings, as a word that stands alone. */
export const SITTING_NAMES: Readonly<Record<SittingKind, string>> = {
  morning: "Morning",
  midday: "Midday",
  between: "Between",
  evening: "Evening",
};

/** The rows of a timeline, as a word that stands alone. */
export const ROW_NAMES: Readonly<Record<TimelineRow["kind"], string>> = {
  hands: "Hands",
  ring: "Ring",
  oven: "Oven",
  microwave: "Microwave",
  kettle: "Kettle",
  blender: "Blender",
  waiting: "Waiting",
};

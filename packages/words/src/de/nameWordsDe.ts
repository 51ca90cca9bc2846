import type { SittingKind, TimelineRow } from "halfloaf/kitchen";

/** The kinds of sittings in German. */
export const SITTING_NAMES_DE: Readonly<Record<SittingKind, string>> = {
  morning: "Morgens",
  midday: "Mittags",
  between: "Dazwischen",
  evening: "Abends",
};

/** The rows of a timeline in German. */
export const ROW_NAMES_DE: Readonly<Record<TimelineRow["kind"], string>> = {
  hands: "Hände",
  ring: "Platte",
  oven: "Ofen",
  microwave: "Mikrowelle",
  kettle: "Kocher",
  blender: "Mixer",
  waiting: "Wartet",
};

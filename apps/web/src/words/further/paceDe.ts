import { STEP_KIND_WORDS_DE } from "@halfloaf/words/de/steps";
import { toCounted } from "@halfloaf/words/toCounted";
import type { paceEn } from "./paceEn.ts";

const counted = toCounted("de");

/** Texts of the cooks' pace in German. */
export const paceDe: typeof paceEn = {
  pace: {
    note: "Wie lange Schritte dauern, gemessen an dem, was Gerichte angeben. Pläne und Ablaufpläne rechnen damit; wenige Schritte zählen wenig, und was Feuer und Zeit tun, wird nie verkürzt.",
    none: "Noch ist nichts bekannt: jeder Schritt gilt als so lang, wie sein Gericht angibt. Melde Schritte am Herd, sobald sie fertig sind, dann den Vorräten.",
    someone: "nicht gesagt, wer",
    steps: (count: number) => counted(count, { one: "1 Schritt gesehen", other: `${count} Schritte gesehen` }),
    took: (share: string) => `dauerten ${share} der angegebenen Zeit`,
    reckoned: (share: string) => `gerechnet wird mit ${share}`,
    byHand: "von Hand gesetzt",
    back: "Zurücksetzen",
    allBack: "Alles zurücksetzen",
    kinds: STEP_KIND_WORDS_DE,
  },
};

import { toCounted } from "@halfloaf/words/toCounted";
import type { workEn } from "./workEn.ts";

const counted = toCounted("de");

/** Texts at the stove in German. */
export const workDe: typeof workEn = {
  stove: {
    behind: (minutes) => `${minutes} Min. im Rückstand`,
    besides: "Dazu:",
    cautions: (count) => counted(count, { one: "1 Warnhinweis unten", other: `${count} Warnhinweise unten` }),
    minLeft: "Min. übrig",
    otherTimes: "Ebenso sicher macht es",
    twoCooks: "Zwei kochen zusammen",
    cook: (number: number) => `Person ${number}`,
    atPace: "In dem Tempo, das sich bei früherem Kochen gezeigt hat; zu sehen und zurückzusetzen unter",
    over: "Die Zeit ist um",
    longer: "2 Minuten mehr",
    allDone: "Alles ist fertig. Trag auf, und trag es in die Vorräte ein.",
    toStores: "Fertig: in die Vorräte eintragen",
    parts: {
      ring: "Platte",
      pan: "Pfanne",
      pot: "Topf",
      oven: "Ofen",
      tray: "Blech",
      microwave: "Mikrowelle",
      kettle: "Kocher",
      board: "Brett, Messer und Hände",
      bowl: "Schüssel",
      blender: "Mixer",
    },
  },
  finish: {
    title: "In die Vorräte eintragen",
    end: "Ablauf schließen",
    about:
      "Was hineinkam, verlässt die Vorräte; was gegessen ist, wird abgerechnet; was übrig bleibt, sind Portionen im Kühlschrank oder im Gefrierfach.",
    portions: "Gekochte Portionen",
    eatenAt: "Gegessen",
    later: "noch nicht",
    plates: "Wer wie viele Portionen aß",
    boxes: (count, told) =>
      counted(count, {
        one: `Dosen zu ${told} Portion ins Gefrierfach`,
        other: `Dosen zu ${told} Portionen ins Gefrierfach`,
      }),
    left: (count, told, keeps) =>
      counted(count, {
        one: `${told} Portion ist übrig. ${keeps}; kühl sie bald.`,
        other: `${told} Portionen sind übrig. ${keeps}; kühl sie bald.`,
      }),
    nothingLeft: "Nichts ist übrig.",
    tooMuch: "Es wurde mehr gegessen oder eingefroren als gekocht.",
    used: "Was wirklich hineinkam",
    usedNote: "Gramm wie gekauft. Ändere nur, was anders war; 0 = weggelassen.",
    learn: (count: number) =>
      counted(count, {
        one: "Mein Tempo lernen aus dem einen Schritt, der gemeldet wurde, als er fertig war",
        other: `Mein Tempo lernen aus den ${count} Schritten, die gemeldet wurden, als sie fertig waren`,
      }),
    book: "In die Vorräte eintragen",
    back: "Zurück an den Herd",
  },
};

import type { SheetWords } from "halfloaf/sheet";
import { tellEnergy, tellMass, tellMinutes, tellMoney, tellNumber, tellPercent } from "../amountWords.ts";
import { tellDay, tellDayShort, tellYear } from "../calendarWords.ts";
import { CLOSING } from "../careWords.ts";
import { CAUTION_WORDS } from "../cautionWords.ts";
import { tellAmountOf, tellComponent } from "../componentWords.ts";
import { SITTING_NAMES } from "../nameWords.ts";
import { CALENDAR_WORDS } from "./calendarEntryWords.ts";
import { CARD_WORDS } from "./cardWords.ts";
import { DAY_WORDS } from "./dayWords.ts";
import { LESSON_WORDS } from "./lessonWords.ts";
import { PICTURE_WORDS } from "./pictureWords.ts";

/** The catalogue of the sheets in the English of a kitchen. */
export function sheetWords(english: "british" | "american"): SheetWords {
  return {
    language: english === "british" ? "en-GB" : "en-US",
    direction: "ltr",
    figures: {
      money: tellMoney,
      mass: tellMass,
      minutes: tellMinutes,
      percent: tellPercent,
      count: tellNumber,
      energy: tellEnergy,
      declared: (text) => text,
      component: tellComponent,
      amountOf: tellAmountOf,
      day: (date) => `${tellDay(date)} ${tellYear(date)}`,
      dayShort: tellDayShort,
      sitting: (kind) => SITTING_NAMES[kind].toLowerCase(),
    },
    day: DAY_WORDS,
    card: CARD_WORDS,
    lesson: LESSON_WORDS,
    calendar: CALENDAR_WORDS,
    cautions: CAUTION_WORDS,
    pictures: PICTURE_WORDS,
    careFirst: CLOSING,
    calculated:
      "All figures are calculated in a home kitchen from tables of foods, prices and times; none was analysed.",
  };
}

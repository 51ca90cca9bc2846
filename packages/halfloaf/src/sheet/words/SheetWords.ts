import type { SittingKind } from "../../kitchen/index.ts";
import type { CivilDate } from "../../quantity/index.ts";
import type { CalendarWords } from "./CalendarWords.ts";
import type { CardWords } from "./CardWords.ts";
import type { CautionWords } from "./CautionWords.ts";
import type { DayWords } from "./DayWords.ts";
import type { LessonWords } from "./LessonWords.ts";
import type { SheetPictureWords } from "./SheetPictureWords.ts";

/**
 * Everything a sheet says in words and how it writes figures, in the language of its reader. A sheet holds no prose of its
 * own; an app brings the catalogue.
 */
export interface SheetWords {
  /** **Source**: BCP 47, such as "en-GB" or "ar". */
  readonly language: string;
  readonly direction: "ltr" | "rtl";
  readonly figures: FigureWords;
  readonly day: DayWords;
  readonly card: CardWords;
  readonly lesson: LessonWords;
  readonly calendar: CalendarWords;
  readonly cautions: CautionWords;
  readonly pictures: SheetPictureWords;
  /** That label, local rules and care come before the page; stands at the end of each. */
  readonly careFirst: string;
  /** That the figures were calculated by a home kitchen from tables, not analysed. */
  readonly calculated: string;
}

/** How figures are written. */
export interface FigureWords {
  /** Money without its currency: "2.49". */
  readonly money: (minor: number, currency: string) => string;
  readonly mass: (massG: number) => string;
  readonly minutes: (minutes: number) => string;
  readonly percent: (share: number) => string;
  readonly count: (value: number) => string;
  readonly energy: (energyKj: number) => string;
  /** A declared figure, which comes rounded by law with a point: "<0.5". */
  readonly declared: (text: string) => string;
  readonly component: (component: string) => string;
  /** An amount of a component with its unit. */
  readonly amountOf: (component: string, amount: number) => string;
  /** "Monday 30 November 2026". */
  readonly day: (date: CivilDate) => string;
  /** "Mon 30 Nov". */
  readonly dayShort: (date: CivilDate) => string;
  readonly sitting: (kind: SittingKind) => string;
}

import type { SittingKind } from "halfloaf/kitchen";
import type { CivilDate } from "halfloaf/quantity";
import type { AskedMarks } from "./toHappenings.ts";

/** What `halfloaf work` was asked. */
export interface WorkWish {
  /** Empty where a week says what is cooked. */
  readonly dishes: readonly string[];
  /** Absent: that of the week, else the usual demo. */
  readonly kitchen?: string;
  /** A week's file; absent: the dishes are named. */
  readonly week?: string;
  /** Day of the week; absent: its first. */
  readonly on?: CivilDate;
  /** The sitting that is cooked for; absent: the jobs of the day are listed. */
  readonly sitting?: SittingKind;
  readonly packed: boolean;
  /** Absent: of each dish as many as it is written for. */
  readonly portions?: number;
  /** Minutes after midnight; absent: no clock times. */
  readonly serve?: number;
  /** Minutes at hand; absent: those of the sitting, else as many as it takes. */
  readonly minutes?: number;
  readonly cooks: 1 | 2;
  readonly marks: AskedMarks;
  /** File of the cook's pace; absent: the usual one of the kitchen. */
  readonly pace?: string;
  /** True: the marks are kept for the pace. */
  readonly learn: boolean;
  /** File for the picture; absent: none. */
  readonly svg?: string;
  readonly json: boolean;
}

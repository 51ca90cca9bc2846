import type { CivilDate } from "halfloaf/quantity";

/** What a file may be read as, in our words. */
export const READ_KINDS = ["makings", "dish", "page", "table", "prices", "receipt", "foods"] as const;
export type ReadKind = (typeof READ_KINDS)[number];

/** One thing that a person settles: of the line, or of the food of a table, this is meant. */
export interface Settled {
  /** The number of the making or line as shown, or the number of a food in an official table. */
  readonly of: string;
  readonly value: string;
}

/** What `halfloaf read` was asked. */
export interface ReadWish {
  readonly files: readonly string[];
  readonly json: boolean;
  readonly keep: boolean;
  /** True where a web address among the files may be fetched. */
  readonly fetch: boolean;
  readonly as?: ReadKind;
  readonly kitchen?: string;
  readonly mapping?: string;
  readonly english?: "british" | "american";
  /** Which dish of a page is settled and kept, counted from 1. */
  readonly dish?: number;
  readonly title?: string;
  readonly portions?: number;
  readonly foods: readonly Settled[];
  readonly amounts: readonly Settled[];
  readonly packs: readonly Settled[];
  /** Numbers of makings that are no part of the dish. */
  readonly leftOut: readonly string[];
  readonly shop?: string;
  readonly on?: CivilDate;
  readonly dateOrder?: "dmy" | "mdy" | "ymd";
  /** A food of ours whose nearest foods of an official table are wanted. */
  readonly near?: string;
  readonly out?: string;
}

import type { CivilDate, Issue } from "halfloaf/quantity";
import type { PackMatch } from "./PackIndex.ts";
import type { Measured } from "./ReceiptLexer.ts";

/** Something bought. Money in minor units. */
export interface ReceiptItem {
  /** The line that names it, counted from 1. */
  readonly line: number;
  /** As printed, without amount, measure and number. */
  readonly name: string;
  /** The number under its bars, where the line prints one. */
  readonly gtin?: string;
  /** Absent where the line says none: then it is one. */
  readonly measured?: Measured;
  /** What the line adds to the sum, before discounts. */
  readonly priceMinor: number;
  /** What discounts of this line add: 0 or less. */
  readonly discountMinor: number;
  readonly match: PackMatch;
}

/** Something else that counts in the sum: a deposit, a discount of the whole bill, or what rounds it. */
export interface ReceiptExtra {
  readonly line: number;
  readonly name: string;
  readonly kind: "deposit" | "whole-discount" | "rounding";
  readonly amountMinor: number;
}

/** How the lines and the total printed agree. `apart` is total less lines. */
export type ReceiptBalance =
  | { readonly kind: "equal"; readonly sumMinor: number }
  | { readonly kind: "tax-added"; readonly sumMinor: number; readonly taxMinor: number }
  | { readonly kind: "apart"; readonly sumMinor: number; readonly apartMinor: number }
  | { readonly kind: "no-total"; readonly sumMinor: number };

/** A receipt as it was understood. */
export interface Receipt {
  /** Id of the kitchen's shop; absent where the head names none of them. */
  readonly shop?: string;
  /** The line that names the shop; absent where there is no head. */
  readonly shopText?: string;
  readonly date?: CivilDate;
  readonly items: readonly ReceiptItem[];
  readonly extras: readonly ReceiptExtra[];
  readonly totalMinor?: number;
  readonly balance: ReceiptBalance;
  /** Lines that were not understood or do not matter, as they stand. */
  readonly unread: readonly { readonly line: number; readonly text: string }[];
  /** What does not fit; paths are `[line]`. */
  readonly issues: readonly Issue[];
}

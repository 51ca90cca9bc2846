/** Where something stands in a text: from `start` up to, not including, `end`, in UTF-16 units from 0. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

/**
 * How sure a reading is: "sure" where the text says it and nothing speaks against it; "likely" where a rule of
 * thumb chose between readings; "guess" where a person must look.
 */
export type Sureness = "sure" | "likely" | "guess";

/** A piece of text as read: the words without invisible characters and markup, where they stand, how sure it is. */
export interface Told {
  readonly text: string;
  readonly span: Span;
  readonly sure: Sureness;
  /** Why it is less than sure, as a code such as "amount-after-name"; absent where it is sure. */
  readonly reason?: string;
}

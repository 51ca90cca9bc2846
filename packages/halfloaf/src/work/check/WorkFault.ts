/** The rule that an order of work breaks. */
export type WorkFaultCode =
  /** A list of the wrong length, an index that points at nothing, or a time that is not a whole number from 0. */
  | "shape"
  | "earliest"
  | "latest"
  /** A step that ends after the meal is served. */
  | "served"
  | "wait-least"
  /** A hold gone beyond although it is firm, or by more than is said. */
  | "hold"
  | "hands"
  | "board"
  /** Something ready to eat at a board that is dirty from raw food. */
  | "hygiene"
  /** More pieces of kit held than there are. */
  | "kit"
  /** Kit used again without a wash. */
  | "unwashed"
  | "shelves"
  /** Two temperatures at once, or too little time from one to the other. */
  | "oven";

/** One broken rule: where in the plan or the problem, what the rule asks for, what the plan does. */
export interface WorkFault {
  readonly code: WorkFaultCode;
  readonly path: readonly (string | number)[];
  readonly expected: string;
  readonly received: string;
}

import type { Issue } from "halfloaf/quantity";
import type { ValueWords } from "./valueWords.ts";

/** What is said of a faulty value after its name, without the full stop, and what to do. */
export interface Told {
  readonly says: string;
  readonly remedy: string;
}

/** Words for one code; `value` is the faulty value as shown. Undefined where nothing better is known than what was expected. */
export type CodeWords = (issue: Issue, value: string) => Told | undefined;

/** Lists of a kitchen whose things are called by name. */
export type NamedList =
  | "eaters"
  | "shops"
  | "packs"
  | "stores"
  | "dishes"
  | "sittings"
  | "ratings"
  | "wishes"
  | "putBy";

/** Everything that is said of what is wrong with a kitchen's file, in one language. */
export interface FaultWords {
  readonly values: ValueWords;
  /** What a thing in one of the lists is called. */
  readonly nouns: Readonly<Record<NamedList, string>>;
  /** The whole of what was read. */
  readonly kitchen: string;
  /** A thing of a list by its name, which is in quotation marks, or by its position from 1. */
  readonly thing: (noun: string, name: string) => string;
  readonly thingAt: (noun: string, position: number, list: string) => string;
  /** Something of a thing, by its path in quotation marks. */
  readonly of: (path: string, thing: string) => string;
  /** A sentence of its own, with its full stop. */
  readonly sentence: (subject: string, says: string) => string;
  readonly isThat: (value: string) => string;
  readonly asked: (expected: string) => string;
  /** A key that is too many, one that is missing, and a value that is no object. */
  readonly strangeKey: (key: string) => Told;
  readonly missingKey: (key: string, hint: string | undefined) => Told;
  readonly noObject: (value: string, hint: string | undefined) => Told;
  /** Names that could have been meant. */
  readonly near: (names: string) => string;
  /** Words by the code of an issue: those of the schema, then those of what must fit together in a kitchen. */
  readonly codes: Readonly<Record<string, CodeWords>>;
  /** Words for a value that fits none of several shapes. */
  readonly shapes: {
    readonly unit: (unit: string, units: string) => Told;
    readonly amount: (value: string) => Told;
    readonly content: (value: string) => Told;
    readonly handsOnMinutes: (value: string) => Told;
  };
  /** What belongs under a key, for who has left it out or written something else there. */
  readonly hints: Readonly<Record<string, string>>;
  /** What to do about a wrong value, where the key knows better than the kind of fault. */
  readonly remedies: Readonly<Record<string, string>>;
}

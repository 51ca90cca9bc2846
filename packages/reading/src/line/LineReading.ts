import type { Issue } from "halfloaf/quantity";
import { type ClauseKind, classifyClause } from "./classifyClause.ts";
import { joinAmounts } from "./joinAmounts.ts";
import type { MakingsAmount, MakingsChoice, MakingsLine } from "./makingsLine.ts";
import { type NamedChoice, toChoice } from "./readChoices.ts";
import type { Token } from "./tokenise.ts";
import type { Told } from "./told.ts";
import { toTold } from "./toTold.ts";

/** A line while it is read: collects what is understood and gives the reading at the end. */
export class LineReading {
  heading: Told | undefined;
  amount: MakingsAmount | undefined;
  readonly #choices: MakingsChoice[] = [];
  readonly #preparation: Told[] = [];
  readonly #notes: Told[] = [];
  readonly #states: Told[] = [];
  #size: Told | undefined;
  #part: Told | undefined;
  #purpose: Told | undefined;
  #optional: Told | undefined;
  #toTaste: Told | undefined;

  hasName(): boolean {
    return this.#choices.length > 0;
  }

  /** Takes names; what is said of a food before its name is found stays for the first name. */
  addNames(named: readonly NamedChoice[]): void {
    for (const each of named) {
      const choice = toChoice(each, this.#choices[0]);
      if (choice) this.#choices.push(choice);
      else {
        this.#size ??= each.read.size;
        this.#states.push(...each.read.states);
      }
      this.#preparation.push(...each.read.preparation);
      for (const { kind, tokens } of classifyClause(each.read.tail)) this.addClause(kind, tokens);
    }
  }

  /** Takes a clause that says something beside amount and name. */
  addClause(kind: ClauseKind, tokens: readonly Token[]): void {
    const told = toTold(tokens, kind === "note" ? "likely" : "sure", kind === "note" ? "not-understood" : undefined);
    if (kind === "preparation") this.#preparation.push(told);
    else if (kind === "purpose" && !this.#purpose) this.#purpose = told;
    else if (kind === "optional" && !this.#optional) this.#optional = told;
    else if (kind === "to-taste" && !this.#toTaste) this.#toTaste = told;
    else if (kind === "part" && !this.#part) this.#part = told;
    else this.#notes.push(told);
  }

  /** Takes an amount told beside the name, with the words after it; false where those say that it is none of the food's. */
  addAgain(amount: MakingsAmount, rest: readonly Token[]): boolean {
    const joined = joinAmounts(this.amount, amount, rest);
    if (joined) this.amount = joined;
    return joined !== undefined;
  }

  /** The reading; where no name was found it is all the words of the line, as a guess. */
  toLine(tokens: readonly Token[], issues: readonly Issue[]): MakingsLine {
    const unnamed: MakingsChoice = { name: toTold(tokens, "guess", "no-name-found"), states: [] };
    const [first = unnamed, ...others] = this.#choices;
    const size = first.size ?? this.#size;
    const choice: MakingsChoice = {
      ...(this.amount ? { amount: this.amount } : {}),
      ...(size ? { size } : {}),
      ...(this.#part ? { part: this.#part } : {}),
      name: first.name,
      ...(first.together ? { together: first.together } : {}),
      states: [...this.#states, ...first.states],
    };
    return {
      kind: "making",
      choices: [choice, ...others],
      preparation: this.#preparation,
      notes: this.#notes,
      ...(this.#purpose ? { purpose: this.#purpose } : {}),
      ...(this.#optional ? { optional: this.#optional } : {}),
      ...(this.#toTaste ? { toTaste: this.#toTaste } : {}),
      ...(this.heading ? { heading: this.heading } : {}),
      issues,
    };
  }
}

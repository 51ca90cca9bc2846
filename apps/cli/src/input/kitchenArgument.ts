import { Argument } from "commander";
import { namedFolder } from "../keep/openFolder.ts";
import { harmless } from "../output/harmless.ts";
import type { Terminal } from "../output/Terminal.ts";
import { HELP } from "../words/helpTexts.ts";
import { USUAL_KITCHEN } from "./openKitchen.ts";

/** The kitchen as the argument of a command that may be left out: then it is the one that the environment names, or a demo. */
export function kitchenArgument(terminal: Pick<Terminal, "env">): Argument {
  const kept = namedFolder(undefined, terminal);
  const [name, told] = kept === undefined ? [USUAL_KITCHEN, HELP.kitchenUsual] : [kept, harmless(kept)];
  return new Argument("[kitchen]", HELP.kitchen).default(name, told);
}

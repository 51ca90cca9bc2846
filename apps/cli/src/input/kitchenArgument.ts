import { Argument } from "commander";
import { HELP } from "../words/helpTexts.ts";
import { USUAL_KITCHEN } from "./openKitchen.ts";

/** The kitchen as the argument of a command that may be left out. */
export function kitchenArgument(): Argument {
  return new Argument("[kitchen]", HELP.kitchen).default(USUAL_KITCHEN, HELP.kitchenUsual);
}

import { Argument } from "commander";
import { namedFolder } from "../keep/openFolder.ts";
import { harmless } from "../output/harmless.ts";
import type { Terminal } from "../output/Terminal.ts";

/** A week's file or a kept kitchen; where the environment names one it may be left out. */
export function weekArgument(terminal: Terminal, help: string): Argument {
  const kept = namedFolder(undefined, terminal);
  if (kept === undefined) return new Argument("<weekfile>", help);
  return new Argument("[weekfile]", help).default(kept, harmless(kept));
}

import { type Memory, toMemory } from "../output/memory.testing.ts";
import { runCommands } from "../runCommands.ts";

/** What a command came to. */
export interface Ran {
  readonly code: number;
  readonly lines: readonly string[];
  readonly printed: string;
  readonly talked: string;
}

/**
 * A runner of commands in a folder, early on a day, when nothing of it is over, or from another moment of it on, with the
 * kitchen of the environment in `home`.
 */
export function runnerIn(cwd: string, from: string, env: Memory["env"] = { HALFLOAF_KITCHEN: "home" }, width = 80) {
  let nowMs = new Date(from.includes("T") ? from : `${from}T06:00:00`).getTime();
  return async (...words: string[]): Promise<Ran> => {
    const all = words.length === 1 ? (words[0] as string).split(" ") : words;
    const memory = {
      ...toMemory(cwd, width),
      env: { HALFLOAF_DEVICE: "laptop", ...env },
      nowMs: () => nowMs++,
    };
    const code = await runCommands(all, "0.0.1", memory);
    return { code, lines: memory.printed, printed: memory.printed.join("\n"), talked: memory.talked.join("\n") };
  };
}

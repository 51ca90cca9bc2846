import process from "node:process";
import facts from "../package.json" with { type: "json" };
import { EXIT } from "./exitCodes.ts";
import { harmlessLines } from "./output/harmless.ts";
import { toTerminal } from "./output/Terminal.ts";
import { runCommands } from "./runCommands.ts";

// Whoever reads the output may close it early, as `head` does; that is no fault.
for (const stream of [process.stdout, process.stderr]) {
  stream.on("error", (error: NodeJS.ErrnoException) => {
    if (error.code === "EPIPE") process.exit(EXIT.done);
    throw error;
  });
}

try {
  process.exitCode = await runCommands(process.argv.slice(2), facts.version, toTerminal(process));
} catch (error) {
  const told = error instanceof Error ? (error.stack ?? error.message) : String(error);
  process.stderr.write(
    `This is a defect of Halfloaf, not of what you gave it. Please report it:\n${harmlessLines(told)}\n`,
  );
  process.exitCode = EXIT.defect;
}

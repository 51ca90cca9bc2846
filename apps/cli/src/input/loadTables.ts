import { loadStarterTables } from "@halfloaf/data";
import { parseTables, type Tables } from "halfloaf/kitchen";

let loaded: Tables | undefined;

/**
 * The starter tables that come with the program, read once a process. Throws where they are faulty, which is a defect of the
 * program.
 */
export function loadTables(): Tables {
  loaded ??= readTables();
  return loaded;
}

function readTables(): Tables {
  const parsed = parseTables(loadStarterTables());
  if (parsed.ok) return parsed.value;
  const faults = parsed.issues.map(({ path, expected, received }) => `${path.join(".")}: ${expected}, not ${received}`);
  throw new Error(`the starter tables are faulty:\n${faults.join("\n")}`);
}

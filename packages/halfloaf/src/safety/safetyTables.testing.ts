import { readFileSync } from "node:fs";
import type { SafetyTables } from "./cautionsOf.ts";
import { parseCoreTemperatures } from "./coreTemperature.ts";
import { parseKeepingRules } from "./keeping.ts";

/** A file of the safety data as it stands, not checked yet. */
export function readSafetyFile(name: string): { title: string; rows: Record<string, unknown>[] } {
  return JSON.parse(readFileSync(new URL(`../../../../data/safety/${name}.json`, import.meta.url), "utf8"));
}

/** The safety tables that come with the project. Throws where they have faults. */
export function readSafetyTables(): SafetyTables {
  const core = parseCoreTemperatures(readSafetyFile("core-temperatures"));
  const rules = parseKeepingRules(readSafetyFile("rules"));
  if (!core.ok || !rules.ok) throw new Error(JSON.stringify([core, rules]));
  return { coreTemperatures: core.value, keepingRules: rules.value };
}

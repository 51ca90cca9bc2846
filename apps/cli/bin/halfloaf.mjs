#!/usr/bin/env node
import { findBundle } from "@halfloaf/engine/bundle";

/** Where sources of the command line lie; apps other than it are no part of it. */
const SOURCES = [
  "apps/cli/src",
  "data/src",
  "packages/engine/src",
  "packages/halfloaf/src",
  "packages/keep/src",
  "packages/reading/src",
  "packages/words/src",
];

const bundle = await findBundle("cli", "apps/cli/src/main.ts", SOURCES);
if (bundle === undefined) {
  // The sources are TypeScript; tsx strips the types as they are loaded.
  const { register } = await import("tsx/esm/api");
  register();
}
await import(bundle ?? "../src/main.ts");

#!/usr/bin/env node
import { findBundle } from "./bundle.mjs";

const bundle = await findBundle();
if (bundle === undefined) {
  // The sources are TypeScript; tsx strips the types as they are loaded.
  const { register } = await import("tsx/esm/api");
  register();
}
await import(bundle ?? "../src/main.ts");

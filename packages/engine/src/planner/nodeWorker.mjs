import { findBundle } from "../../bundle/findBundle.mjs";

const SOURCES = ["packages/engine/src", "packages/halfloaf/src"];

const bundle = await findBundle("worker", "packages/engine/src/planner/nodeWorker.ts", SOURCES);
if (bundle === undefined) {
  // Node 20 does not carry the hooks of a TypeScript runner into worker threads: they are registered here anew.
  const { register } = await import("tsx/esm/api");
  register();
}
await import(bundle ?? "./nodeWorker.ts");

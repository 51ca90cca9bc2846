import type { Plugin } from "vite";

const NAME = "node:module";
const STUB = "\0halfloaf-no-node-module";

/**
 * The solver asks for a module of Node where it runs on Node. In a browser it never does, so that an empty one stands
 * there.
 */
export function nodeModuleStub(): Plugin {
  return {
    name: "halfloaf-node-module-stub",
    enforce: "pre",
    resolveId: (id) => (id === NAME ? STUB : undefined),
    load: (id) => (id === STUB ? "export const createRequire = undefined;" : undefined),
  };
}

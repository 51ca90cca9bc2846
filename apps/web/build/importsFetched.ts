import { fileURLToPath } from "node:url";
import type { Plugin } from "vite";

/** What the bundler calls in place of each import of a chunk, by the names that it has for it. */
const HELPER = "\0vite/preload-helper.js";
const OURS = fileURLToPath(new URL("../src/loading/importFetched.ts", import.meta.url));

/** Has each part of the app that is imported when it is wanted fetched first, as long as nothing keeps the app on the device. */
export function importsFetched(): Plugin {
  return {
    name: "halfloaf-imports-fetched",
    apply: "build",
    enforce: "pre",
    resolveId: (id) => (id === HELPER ? HELPER : undefined),
    load: (id) =>
      id === HELPER ? `export { importFetched as __vitePreload } from ${JSON.stringify(OURS)};` : undefined,
  };
}

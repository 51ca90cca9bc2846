import { defineConfig } from "vite";
import { compressedFiles } from "./build/compressedFiles.ts";
import { nodeModuleStub } from "./build/nodeModuleStub.ts";
import { offline } from "./build/offline.ts";
import { preloadFaces } from "./build/preloadFaces.ts";
import { starterData } from "./build/starterData.ts";

export default defineConfig({
  plugins: [nodeModuleStub(), starterData(), preloadFaces(), offline(), compressedFiles()],
  // Screens are written to React's interface and run by Preact, which weighs a sixth of it (decision 0011).
  resolve: {
    alias: [
      { find: /^react$/, replacement: "preact/compat" },
      { find: /^react\/jsx-(dev-)?runtime$/, replacement: "preact/jsx-runtime" },
    ],
  },
  worker: { format: "es", plugins: () => [nodeModuleStub()] },
  build: {
    target: "es2022",
    modulePreload: { polyfill: false },
    rolldownOptions: { checks: { pluginTimings: false } },
  },
});

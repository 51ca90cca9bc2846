import { defineConfig } from "vite";
import { compressedFiles } from "./build/compressedFiles.ts";
import { importsFetched } from "./build/importsFetched.ts";
import { nodeModuleStub } from "./build/nodeModuleStub.ts";
import { offline } from "./build/offline.ts";
import { preloadFaces } from "./build/preloadFaces.ts";
import { starterData } from "./build/starterData.ts";

/** What every start takes is one file, and what an open kitchen takes whatever its screen another, since each costs a round trip. */
const codeSplitting = {
  groups: [
    { name: "start", tags: ["$initial" as const], priority: 2 },
    { name: "starter", test: /\/src\/kitchen\/(loadStarter|today)\.ts$|\/quantity\/civilDate\.ts$/, priority: 1.5 },
    { name: "openKitchen", test: /\/src\/(kitchen\/(KitchenSession|loadStarter)|sharing\/guardOf)\.ts$/, priority: 1 },
  ],
};

export default defineConfig({
  plugins: [nodeModuleStub(), importsFetched(), starterData(), preloadFaces(), offline(), compressedFiles()],
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
    // All styles together weigh less than one face, and a screen that was shown before needs its own at once.
    cssCodeSplit: false,
    modulePreload: { polyfill: false },
    rolldownOptions: { checks: { pluginTimings: false }, output: { codeSplitting } },
  },
});

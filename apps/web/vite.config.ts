import react from "@vitejs/plugin-react";
import { defineConfig } from "vite";
import { compressedFiles } from "./build/compressedFiles.ts";
import { nodeModuleStub } from "./build/nodeModuleStub.ts";
import { offline } from "./build/offline.ts";
import { preloadFaces } from "./build/preloadFaces.ts";
import { starterData } from "./build/starterData.ts";

export default defineConfig({
  plugins: [react(), nodeModuleStub(), starterData(), preloadFaces(), offline(), compressedFiles()],
  worker: { format: "es", plugins: () => [nodeModuleStub()] },
  build: {
    target: "es2022",
    modulePreload: { polyfill: false },
    rolldownOptions: { checks: { pluginTimings: false } },
  },
});

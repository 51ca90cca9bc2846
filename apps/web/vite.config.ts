import react from "@vitejs/plugin-react";
import { defineConfig } from "vite";
import { starterData } from "./build/starterData.ts";

export default defineConfig({
  plugins: [react(), starterData()],
  worker: { format: "es" },
  build: { target: "es2022", modulePreload: { polyfill: false } },
});

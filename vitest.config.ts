import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    setupFiles: ["./vitest.setup.ts"],
    include: [
      "packages/**/*.test.ts",
      "apps/**/*.test.ts",
      "data/**/*.test.ts",
      "e2e/**/*.test.ts",
      "checks/**/*.test.ts",
      "scripts/**/*.test.mjs",
    ],
    testTimeout: 30_000,
  },
});

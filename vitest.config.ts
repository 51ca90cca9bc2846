import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    setupFiles: ["./vitest.setup.ts"],
    // Ends what hangs; how long things take is measured in bench/, on a machine that has nothing else to do.
    testTimeout: 120_000,
    hookTimeout: 120_000,
    // Left to itself it keeps one core free, which on two cores means one test file at a time.
    maxWorkers: "100%",
    projects: [
      {
        extends: true,
        test: {
          name: "parts",
          include: [
            "packages/**/*.test.ts",
            "apps/**/*.test.ts",
            "data/**/*.test.ts",
            "e2e/planner/*.test.ts",
            "e2e/sheet/*.test.ts",
            "checks/**/*.test.ts",
            "scripts/**/*.test.mjs",
          ],
        },
      },
      {
        extends: true,
        test: {
          name: "app",
          include: ["e2e/app/*.test.ts"],
          globalSetup: ["./e2e/app/setUp.ts"],
          // A browser needs the machine for itself, so these come last and one by one.
          maxWorkers: 1,
          expect: { poll: { timeout: 15_000 } },
          sequence: { groupOrder: 1 },
        },
      },
    ],
  },
});

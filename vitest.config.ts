import { configDefaults, defineConfig } from "vitest/config";

const PURE = ["packages/{halfloaf,reading,words}/**/*.test.ts", "checks/**/*.test.ts"];

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
          name: "pure",
          include: PURE,
          // Pure functions leave nothing behind, so that a worker loads them once for all of its files. These come last: they
          // are many and short, so that no core is idle at the end.
          isolate: false,
        },
      },
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
            "scripts/**/*.test.mjs",
          ],
          exclude: [...configDefaults.exclude, ...PURE],
        },
      },
      {
        extends: true,
        test: {
          name: "app",
          // Each file has a browser and profiles of its own, so these go among the others: a page often leaves a core idle.
          include: ["e2e/app/*.test.ts"],
          // What could be left behind is in that browser; a worker loads what drives it once for all of its files.
          isolate: false,
          globalSetup: ["./e2e/app/setUp.ts"],
          expect: { poll: { timeout: 15_000 } },
        },
      },
    ],
  },
});

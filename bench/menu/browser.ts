import { parseArgs } from "node:util";
import { hasBrowser } from "@halfloaf/e2e/openBrowser";
import { compareBrowser } from "./compareBrowser.ts";
import type { Size } from "./generateProblem.ts";

const { values } = parseArgs({
  options: {
    json: { type: "boolean", default: false },
    size: { type: "string", default: "M" },
    moves: { type: "string", default: "100000" },
    turns: { type: "string", default: "7" },
  },
});
if (!hasBrowser) throw new Error("there is no Chromium to measure in");
const result = {
  bench: "menu/browser",
  ...(await compareBrowser(values.size as Size, Number(values.moves), Number(values.turns))),
};
if (values.json) process.stdout.write(`${JSON.stringify(result)}\n`);
else console.table(result);

import { loadDemoKitchens, loadStarterShops, loadStarterTables } from "@halfloaf/data";
import { parseTables } from "halfloaf/kitchen";
import type { Plugin } from "vite";

const NAME = "starter.json";

/**
 * Puts the starter tables, the demo kitchens and the shops of a new kitchen beside the app as one file. They are checked here, once and for all; a
 * fault ends the build.
 */
export function starterData(): Plugin {
  return {
    name: "halfloaf-starter-data",
    configureServer(server) {
      server.middlewares.use(`/${NAME}`, (_, response) => {
        response.setHeader("Content-Type", "application/json").end(writeStarter());
      });
    },
    generateBundle() {
      this.emitFile({ type: "asset", fileName: NAME, source: writeStarter() });
    },
  };
}

function writeStarter(): string {
  const tables = loadStarterTables();
  const read = parseTables(tables);
  if (!read.ok) throw new Error(`the starter tables are faulty: ${JSON.stringify(read.issues.slice(0, 5))}`);
  return JSON.stringify({ tables, kitchens: loadDemoKitchens(), shops: loadStarterShops() });
}

import { networkInterfaces } from "node:os";
import process from "node:process";
import { fileURLToPath } from "node:url";
import { readCopies, writeCopies } from "./copies.ts";
import { forgetEveryDay } from "./forgetUnseen.ts";
import { openParts, openStore } from "./openParts.ts";
import { type Serving, serve } from "./serve.ts";
import { parseSettings, type Settings } from "./settings.ts";
import { SyncHub } from "./sync/SyncHub.ts";
import { tellWhere } from "./tellWhere.ts";

/** The port that is taken where none is asked for; a free one where it is in use. */
const USUAL_PORT = 4620;

const USAGE = `Usage: main.ts              serves the app and the kitchens that are shared
       main.ts backup FILE  writes copies of all kitchens into a file, while the server goes on
       main.ts restore FILE brings them back; devices then send what came later`;

const files = fileURLToPath(new URL("../../web/dist", import.meta.url));
const read = parseSettings(process.env);
const [command, path] = process.argv.slice(2);

if (!read.ok) {
  for (const { path: at, expected, received } of read.issues)
    console.error(`${at.join(".")} can't be ${received}: it takes ${expected}.`);
  process.exitCode = 1;
} else if (command === undefined) await serveAll(read.value);
else if (path !== undefined && (command === "backup" || command === "restore")) await copy(command, path, read.value);
else {
  console.error(USAGE);
  process.exitCode = 1;
}

async function copy(what: "backup" | "restore", file: string, settings: Settings): Promise<void> {
  const store = await openStore(settings);
  const count = await (what === "backup" ? writeCopies(store, file) : readCopies(store, file));
  await store.close();
  console.log(what === "backup" ? `${count} kitchens are in ${file}.` : `${count} kitchens are back from ${file}.`);
}

async function serveAll(settings: Settings): Promise<void> {
  const parts = await openParts(settings);
  const hub = new SyncHub(parts);
  const serving = await start({ files, host: { ...settings, parts, hub } }, settings);
  for (const line of tellWhere(settings.hostname, serving.port, networkInterfaces())) console.log(line);
  const { forgetDays } = settings;
  const stopForgetting = forgetDays === undefined ? () => {} : forgetEveryDay(parts, hub, forgetDays);
  const end = async () => {
    stopForgetting();
    await serving.close();
    await parts.wire.close();
    await parts.store.close();
  };
  for (const signal of ["SIGINT", "SIGTERM"] as const) process.once(signal, () => void end());
}

async function start(options: Parameters<typeof serve>[0], { port, hostname }: Settings): Promise<Serving> {
  if (port !== undefined) return serve(options, port, hostname);
  try {
    return await serve(options, USUAL_PORT, hostname);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== "EADDRINUSE") throw error;
    return serve(options, 0, hostname);
  }
}

import { parentPort } from "node:worker_threads";
import { loadStarterTables } from "@halfloaf/data";
import { parseTables } from "halfloaf/kitchen";
import { type CalendarAsk, drawCalendar } from "./drawCalendar.ts";

const tables = parseTables(loadStarterTables());
if (!tables.ok) throw new Error("the starter tables are faulty");
const starter = tables.value;

// What can't be drawn ends the thread, and is told by that.
parentPort?.on("message", (ask: CalendarAsk) => parentPort?.postMessage(drawCalendar(ask, starter)));

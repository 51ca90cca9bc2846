import { parentPort } from "node:worker_threads";
import { loadDishTextsDe, loadStarterTables } from "@halfloaf/data";
import { DishTexts, layDishTexts } from "halfloaf/dish";
import { parseTables, type Tables } from "halfloaf/kitchen";
import { parseWith } from "halfloaf/quantity";
import { type CalendarAsk, drawCalendar } from "./drawCalendar.ts";

const [tables, texts] = [parseTables(loadStarterTables()), parseWith(DishTexts, loadDishTextsDe())];
if (!tables.ok || !texts.ok) throw new Error("the starter tables are faulty");
const starter = tables.value;
const german: Tables = { ...starter, dishes: layDishTexts(starter.dishes, texts.value) };

// What can't be drawn ends the thread, and is told by that.
parentPort?.on("message", (ask: CalendarAsk) => {
  const isGerman = new Intl.Locale(ask.manner.language).language === "de";
  parentPort?.postMessage(drawCalendar(ask, isGerman ? german : starter));
});

import { type SittingKitchen, sittingKitchen, toPace, type WeekPlan } from "halfloaf/kitchen";
import { loadTables } from "../input/loadTables.ts";
import { type OpenKitchen, USUAL_KITCHEN } from "../input/openKitchen.ts";
import { openAnyKitchen } from "../keep/openAnyKitchen.ts";
import { openWeekFile } from "../mend/openWeekFile.ts";
import type { Terminal } from "../output/Terminal.ts";
import { type Found, refuse } from "../words/Fault.ts";
import { type OpenPace, openPace } from "./pace/openPace.ts";
import type { WorkWish } from "./WorkWish.ts";

/** A kitchen with the pace of its cook, and the week that says what is cooked, where one was named. */
export interface OpenWork {
  readonly opened: OpenKitchen;
  readonly week?: WeekPlan;
  readonly pace: OpenPace;
  readonly sitting: SittingKitchen;
}

/** Opens what an order of work is asked of; a wish that names both dishes and a week, or neither, is refused. */
export async function openWork(wish: WorkWish, terminal: Terminal): Promise<Found<OpenWork>> {
  if ((wish.week === undefined) === (wish.dishes.length === 0)) return refuseMix(wish);
  const source = await openSource(wish, terminal);
  if (!source.ok) return source;
  const { opened } = source.value;
  const pace = openPace(wish.pace, opened.name, terminal.cwd);
  if (!pace.ok) return pace;
  const sitting: SittingKitchen = {
    ...sittingKitchen(opened.kitchen, opened.tables),
    cooks: wish.cooks,
    pace: { ...opened.kitchen.pace, ...toPace(pace.value.learned) },
  };
  return { ok: true, value: { ...source.value, pace: pace.value, sitting } };
}

async function openSource(
  { week, kitchen }: WorkWish,
  terminal: Terminal,
): Promise<Found<Pick<OpenWork, "opened" | "week">>> {
  if (week !== undefined) return openWeekFile(week, kitchen, terminal, loadTables());
  const opened = await openAnyKitchen(kitchen ?? USUAL_KITCHEN, terminal, loadTables());
  return opened.ok ? { ok: true, value: { opened: opened.value } } : opened;
}

function refuseMix({ week }: WorkWish): Found<never> {
  return refuse({
    code: week === undefined ? "dish-missing" : "week-and-dishes",
    path: [],
    sentence:
      week === undefined
        ? "Nothing says what is cooked."
        : "A week says by itself what is cooked; dishes can't be named beside it.",
    remedy: "Name dishes, or a week's file with --week.",
  });
}

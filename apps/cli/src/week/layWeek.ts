import { CLOSING, tellDayShort, tellYear } from "@halfloaf/words/en";
import { addDays } from "halfloaf/quantity";
import { harmless } from "../output/harmless.ts";
import { wrap } from "../output/layout.ts";
import { layAccounts } from "./layAccounts.ts";
import { layBuying } from "./layBuying.ts";
import { layCautions } from "./layCautions.ts";
import { layIntake } from "./layIntake.ts";
import { layMenu } from "./layMenu.ts";
import { layUsed, layWaste } from "./layStores.ts";
import { layWishes } from "./layWishes.ts";
import type { WeekPage } from "./WeekPage.ts";

/** A week's plan as lines: menu, buying list, accounts, intake, stores used, waste, cautions, and who comes first. */
export function layWeek(page: WeekPage): string[] {
  const parts = [
    layTitle,
    layMenu,
    layWishes,
    layBuying,
    layAccounts,
    layIntake,
    layUsed,
    layWaste,
    layCautions,
    layClosing,
  ];
  const laid = parts.map((part) => part(page)).filter((lines) => lines.length > 0);
  return laid.flatMap((lines, at) => (at === 0 ? lines : ["", ...lines]));
}

function layTitle({ plan, width, paint }: WeekPage): string[] {
  const last = addDays(plan.from, plan.days - 1);
  const days = plan.days === 1 ? tellDayShort(plan.from) : `${tellDayShort(plan.from)} to ${tellDayShort(last)}`;
  return wrap(`${harmless(plan.kitchen)}, ${days} ${tellYear(last)}. Money in ${harmless(plan.currency)}.`, width).map(
    paint.strong,
  );
}

function layClosing({ width }: WeekPage): string[] {
  return wrap(CLOSING, width);
}

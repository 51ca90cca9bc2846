import { findDish } from "../card/findDish.ts";
import { layCard } from "../card/layCard.ts";
import { toCard } from "../card/toCard.ts";
import { EXIT, type ExitCode } from "../exitCodes.ts";
import { loadTables } from "../input/loadTables.ts";
import { openAnyKitchen } from "../keep/openAnyKitchen.ts";
import { toJsonText } from "../output/harmless.ts";
import type { Terminal } from "../output/Terminal.ts";
import { refuseInput } from "./refuseInput.ts";

/** What `halfloaf card` was asked. */
export interface CardWish {
  readonly dish: string;
  readonly kitchen: string;
  /** Absent: as many as the dish is written for. */
  readonly portions?: number;
  readonly json: boolean;
}

/** Prints the costing card of a dish, at the prices of a kitchen. */
export async function cardCommand(wish: CardWish, terminal: Terminal): Promise<ExitCode> {
  const opened = await openAnyKitchen(wish.kitchen, terminal, loadTables());
  if (!opened.ok) return refuseInput(wish.kitchen, opened.faults, wish.json, terminal);
  const { kitchen, tables } = opened.value;
  const dish = findDish(wish.dish, tables.dishes);
  if (!dish.ok) return refuseInput(wish.dish, dish.faults, wish.json, terminal);
  const portions = wish.portions ?? dish.value.portions;
  const card = toCard({ kitchen, tables, dish: dish.value, portions });
  if (wish.json) terminal.print(toJsonText(card));
  else for (const line of layCard({ ...terminal.page, card })) terminal.print(line);
  return EXIT.done;
}

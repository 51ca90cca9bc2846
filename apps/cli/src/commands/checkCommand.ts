import { tellCount } from "@halfloaf/words/en";
import { EXIT, type ExitCode } from "../exitCodes.ts";
import { loadTables } from "../input/loadTables.ts";
import { openKitchen } from "../input/openKitchen.ts";
import { harmless, toJsonText } from "../output/harmless.ts";
import { layFaults } from "../output/layFaults.ts";
import { wrap } from "../output/layout.ts";
import type { Terminal } from "../output/Terminal.ts";
import { toFaultReport } from "../words/FaultReport.ts";

/** What `halfloaf check` was asked. */
export interface CheckWish {
  readonly kitchen: string;
  readonly json: boolean;
}

/** Looks for everything that is wrong with a kitchen. Faults are the result here, so they go where results go. */
export function checkCommand({ kitchen, json }: CheckWish, terminal: Terminal): ExitCode {
  const opened = openKitchen(kitchen, terminal.cwd, loadTables());
  const faults = opened.ok ? [] : opened.faults;
  const { page, print } = terminal;
  const about = harmless(kitchen);
  if (json) print(toJsonText(toFaultReport(kitchen, faults)));
  else if (opened.ok)
    for (const line of wrap(`${about}: no fault found. ${tellHeld(opened.value.kitchen)}`, page.width))
      print(page.paint.good(line));
  else
    for (const line of [
      page.paint.strong(`${about}: ${tellCount(faults.length, "fault")}`),
      "",
      ...layFaults(faults, page),
    ])
      print(line);
  return opened.ok ? EXIT.done : EXIT.badInput;
}

function tellHeld(kitchen: { readonly [list in "eaters" | "shops" | "packs" | "stores"]: readonly unknown[] }): string {
  const { eaters, shops, packs, stores } = kitchen;
  return `It holds ${tellCount(eaters.length, "eater")}, ${tellCount(shops.length, "shop")}, ${tellCount(packs.length, "pack")} and ${tellCount(stores.length, "lot")} in the stores.`;
}

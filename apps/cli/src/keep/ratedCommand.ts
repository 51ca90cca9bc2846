import { InvalidArgumentError } from "commander";
import { findDish } from "../card/findDish.ts";
import type { ExitCode } from "../exitCodes.ts";
import type { Terminal } from "../output/Terminal.ts";
import { quote } from "../words/valueWords.ts";
import type { KeepAsk } from "./KeepAsk.ts";
import { runKeep } from "./runKeep.ts";
import { writeAct } from "./writeAct.ts";

const MOST_POINTS = 10;

/** A dish with its points, as written. */
export interface AskedPoints {
  readonly dish: string;
  /** From 0, never again, to 10. */
  readonly points: number;
}

/** What was thought of dishes. */
export interface RatedAsk extends KeepAsk {
  readonly dishes: readonly AskedPoints[];
}

/** Reads `DISH=POINTS`; anything else is refused. */
export function parsePoints(text: string): AskedPoints {
  const [, dish, number] = /^(.+)=(\d{1,2}(?:\.\d)?)$/.exec(text) ?? [];
  if (dish === undefined || Number(number) > MOST_POINTS)
    throw new InvalidArgumentError(
      `${quote(text)} is not written as DISH=POINTS, with points from 0 to ${MOST_POINTS}.`,
    );
  return { dish, points: Number(number) };
}

/** Books what was thought of dishes, by which the next plan weighs them. */
export function ratedCommand(ask: RatedAsk, terminal: Terminal): Promise<ExitCode> {
  return runKeep(ask, terminal, (open) => {
    const found = ask.dishes.map(({ dish }) => findDish(dish, open.tables.dishes));
    const faults = found.flatMap((one) => (one.ok ? [] : one.faults));
    if (faults.length > 0) return { ok: false, faults };
    return writeAct(open, terminal.page, (pen) => {
      const rows = found.flatMap((one, at) =>
        one.ok
          ? [pen.write({ kind: "rated", on: open.day, dish: one.value.id, points: ask.dishes[at]?.points as number })]
          : [],
      );
      return { ok: true, value: { rows } };
    });
  });
}

import type { EventBody, Pen } from "halfloaf/kitchen/record";
import { type LotState, MASS_TOLERANCE_G } from "halfloaf/stores";
import type { ExitCode } from "../exitCodes.ts";
import type { Terminal } from "../output/Terminal.ts";
import { type AskedItem, shareOut } from "./Item.ts";
import type { KeepAsk } from "./KeepAsk.ts";
import { runKeep } from "./runKeep.ts";
import { writeAct } from "./writeAct.ts";

/** What was put somewhere else. */
export interface MovedAsk extends KeepAsk {
  readonly items: readonly AskedItem[];
  readonly to: LotState["place"];
}

/** Books what was moved; of what moves in part, the part becomes a lot of its own. */
export function movedCommand(ask: MovedAsk, terminal: Terminal): Promise<ExitCode> {
  return runKeep(ask, terminal, (open) =>
    writeAct(open, terminal.page, (pen) => {
      const found = ask.items.map((item) => shareOut(item, open));
      const faults = found.flatMap((one) => (one.ok ? [] : one.faults));
      if (faults.length > 0) return { ok: false, faults };
      const shares = found.flatMap((one) => (one.ok ? one.value : [])).filter(({ lot }) => lot.place !== ask.to);
      return { ok: true, value: { rows: shares.map((share) => pen.write(toMove(share, ask.to, open.day, pen))) } };
    }),
  );
}

function toMove(
  { lot, massG }: { readonly lot: LotState; readonly massG: number },
  to: LotState["place"],
  on: string,
  pen: Pen,
): EventBody {
  const move = { kind: "moved" as const, on, lot: lot.id, to };
  if (lot.leftG - massG <= MASS_TOLERANCE_G) return move;
  return { ...move, part: { massG, lot: pen.nameLot(lot.food ?? lot.cooked?.dish ?? "lot") } };
}

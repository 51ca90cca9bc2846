import type { EventBody, Pen } from "halfloaf/kitchen/record";
import { type LotState, MASS_TOLERANCE_G } from "halfloaf/stores";
import type { ExitCode } from "../exitCodes.ts";
import type { Terminal } from "../output/Terminal.ts";
import { tellNotKeptThere } from "../words/keepWords.ts";
import { type AskedItem, shareOut } from "./Item.ts";
import type { KeepAsk } from "./KeepAsk.ts";
import type { OpenKeep } from "./openKeep.ts";
import { runKeep } from "./runKeep.ts";
import { toKeepNames } from "./toKeepNames.ts";
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
      const rows = shares.map((share) => pen.write(toMove(share, ask.to, open.day, pen)));
      const lost = shares.filter(({ lot }) => !isKnownToKeep(lot, ask.to, open));
      const names = toKeepNames(open);
      const sentences = lost.map(({ lot }) => tellNotKeptThere(names.lot(lot.id), ask.to));
      return { ok: true, value: { rows, extra: { sentences: [...new Set(sentences)] } } };
    }),
  );
}

/** True where food table or dish say how long it keeps there, opened or not as it is. */
function isKnownToKeep({ food, cooked, openedOn }: LotState, place: LotState["place"], { tables }: OpenKeep): boolean {
  const keeping = cooked?.keeping ?? tables.foods.get(food ?? "")?.keeping;
  const lives = openedOn === undefined ? keeping?.unopened : keeping?.opened;
  return lives?.[place] !== undefined;
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

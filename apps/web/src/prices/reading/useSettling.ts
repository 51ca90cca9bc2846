import {
  NO_FINDINGS,
  newObservations,
  newPackOf,
  type PricedLine,
  type SaidMatch,
  withFindings,
} from "@halfloaf/reading";
import { type EventBody, editsBetween } from "halfloaf/kitchen/record";
import type { Observation, Pack } from "halfloaf/price";
import { useState } from "react";
import { useKitchen } from "../../kitchen/KitchenProvider.tsx";
import { newId } from "../../kitchen/newId.ts";

/** What a person says of the lines of a receipt or list. */
export interface Settling {
  readonly newPacks: ReadonlyMap<number, Pack>;
  readonly leftOut: ReadonlySet<number>;
  /** Makes a new pack of a line; gives whether its content is known, without which there is none. */
  readonly makePack: (line: PricedLine, food: string, massG: number | undefined) => boolean;
  readonly setLeftOut: (line: number, isLeftOut: boolean) => void;
  /** What becomes of a line as things stand. */
  readonly standingOf: (line: PricedLine) => Standing;
  /** What is to be kept and is not yet. */
  readonly counts: Counts;
  /** What was kept last; undefined where something is to be kept since, or nothing was. */
  readonly kept: (Counts & { readonly onlyPrices: boolean }) | undefined;
  readonly keep: () => void;
}

interface Counts {
  readonly prices: number;
  readonly packs: number;
  /** Names that packs go by. */
  readonly matches: number;
}

/** What becomes of a line: its price is noted, or known already; it is to be settled, or nothing comes of it. */
export type Standing = "noted" | "same" | "new" | "open" | "idle" | "left-out";

/** Settles lines with a person and keeps what came of it as one act: prices, new packs, and the names that packs go by. */
export function useSettling(lines: readonly PricedLine[], matches: readonly SaidMatch[]): Settling {
  const { session, view } = useKitchen();
  const [newPacks, setNewPacks] = useState<ReadonlyMap<number, Pack>>(new Map());
  const [leftOut, setLeft] = useState<ReadonlySet<number>>(new Set());
  const [kept, setKept] = useState<Settling["kept"]>();
  const { edited, state } = view;
  const wanted = lines.filter(({ line }) => !leftOut.has(line) && !newPacks.has(line));
  const looks = wanted.flatMap(({ observation }) => observation ?? []);
  const prices = newObservations(looks, state.prices, view.kitchen.packs);
  const fresh = new Set(prices);
  const there = new Map(edited.packs.map((pack) => [pack.id, pack]));
  const packs = [...newPacks.values()].filter(({ id }) => !there.has(id));
  const names = matches.filter(({ text, pack }) => there.get(pack)?.knownAs?.includes(text) !== true);
  // A device that may not change the packs keeps prices alone.
  const counts = { prices: prices.length, packs: packs.length, matches: names.length };
  return {
    newPacks,
    leftOut,
    makePack(line, food, massG) {
      if (line.candidate === undefined) return false;
      const taken = [...edited.packs, ...newPacks.values()].map(({ id }) => id);
      const id = newId(line.text, taken, "pack");
      const content = massG === undefined ? undefined : { massG };
      const made = newPackOf({ text: line.text, candidate: line.candidate }, { id, food, content });
      if (made.ok) setNewPacks(new Map([...newPacks, [line.line, made.value]]));
      return made.ok;
    },
    setLeftOut(line, isLeftOut) {
      const others = [...leftOut].filter((each) => each !== line);
      setLeft(new Set(isLeftOut ? [...others, line] : others));
      if (isLeftOut) setNewPacks(new Map([...newPacks].filter(([each]) => each !== line)));
    },
    standingOf(priced) {
      if (leftOut.has(priced.line)) return "left-out";
      if (newPacks.has(priced.line)) return "new";
      if (priced.observation !== undefined) return fresh.has(priced.observation) ? "noted" : "same";
      return priced.fate === "pack-open" ? "open" : "idle";
    },
    counts,
    kept: counts.prices + counts.packs + counts.matches === 0 || kept?.onlyPrices ? kept : undefined,
    keep() {
      const mayEdit = session.mayWrite({ kind: "edited" });
      const now = { ...edited, ...withFindings(edited, { ...NO_FINDINGS, newPacks: packs, matches: names }) };
      const edits = mayEdit ? editsBetween(edited, now) : [];
      void session.write((pen) => [...edits, ...prices.map(toPriceSeen)].map((body) => pen.write(body)));
      setKept(mayEdit ? { ...counts, onlyPrices: false } : { ...counts, packs: 0, matches: 0, onlyPrices: true });
    },
  };
}

function toPriceSeen({ pack, priceMinor, offer, seen }: Observation): EventBody {
  return { kind: "price-seen", on: seen.on, pack, priceMinor, ...(offer && { offer }), at: seen.at };
}

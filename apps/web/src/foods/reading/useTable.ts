import { proxy, type Remote, wrap } from "comlink";
import { useEffect, useRef, useState } from "react";
import { useKitchen } from "../../kitchen/KitchenProvider.tsx";
import { openWorker } from "../../loading/openWorker.ts";
import type { TableDesk, TableRead, TableSource } from "./TableDesk.ts";

/** How far the reading of a table has come. */
export type TableState =
  | { readonly kind: "none" }
  | { readonly kind: "reading"; readonly rows: number; readonly share: number }
  | { readonly kind: "stopped" }
  | { readonly kind: "failed"; readonly read?: TableRead }
  | { readonly kind: "read"; readonly read: Extract<TableRead, { outcome: "read" }>; readonly desk: Remote<TableDesk> };

/** Reads a table in a worker of its own, anew whenever the source changes; it is ended to stop it, and with the screen. */
export function useTable(source: TableSource | undefined): { readonly state: TableState; readonly stop: () => void } {
  const { view } = useKitchen();
  const [state, setState] = useState<TableState>({ kind: "none" });
  const running = useRef<ReturnType<typeof openWorker>>(undefined);
  const foods = useRef(view.tables.foods);
  foods.current = view.tables.foods;
  useEffect(() => {
    if (source === undefined) {
      setState({ kind: "none" });
      return undefined;
    }
    const worker = openWorker(() => new Worker(new URL("./worker.ts", import.meta.url), { type: "module" }));
    const desk = wrap<TableDesk>(worker.endpoint);
    running.current = worker;
    let isWanted = true;
    let isReading = true;
    setState({ kind: "reading", rows: 0, share: 0 });
    const whole = sizeOf(source);
    const onProgress = proxy(({ file, items, size }: { file: string; items: number; size: number }) => {
      const before = source.kind === "csv" ? sizeBefore(source.files, file) : 0;
      if (isWanted && isReading)
        setState({ kind: "reading", rows: items, share: Math.min(1, (before + size) / whole) });
    });
    desk.read(source, foods.current, onProgress).then(
      (read) => {
        // Progress comes by a way of its own and may come late.
        isReading = false;
        if (isWanted) setState(read.outcome === "read" ? { kind: "read", read, desk } : { kind: "failed", read });
      },
      () => isWanted && setState({ kind: "failed" }),
    );
    return () => {
      isWanted = false;
      worker.terminate();
    };
  }, [source]);
  return {
    state,
    stop: () => {
      running.current?.terminate();
      setState({ kind: "stopped" });
    },
  };
}

function sizeOf(source: TableSource): number {
  if (source.kind === "mapped") return Math.max(1, source.text.length);
  const files = source.kind === "json" ? [source.file] : source.files;
  return Math.max(
    1,
    files.reduce((sum, { size }) => sum + size, 0),
  );
}

/** The files of a download are read in an order of their own; what was read before this one is not known better than so. */
function sizeBefore(files: readonly File[], name: string): number {
  return ORDER.slice(0, ORDER.indexOf(name)).reduce(
    (sum, each) => sum + (files.find((file) => file.name === each)?.size ?? 0),
    0,
  );
}

const ORDER = [
  "food.csv",
  "sr_legacy_food.csv",
  "foundation_food.csv",
  "nutrient.csv",
  "food_nutrient.csv",
  "measure_unit.csv",
  "food_portion.csv",
];

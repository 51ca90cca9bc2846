import {
  type FileSource,
  PackIndex,
  type PriceListMapping,
  type PriceRow,
  readPriceList,
  rematch,
  rememberMatch,
  type SaidMatch,
} from "@halfloaf/reading";
import type { Issue } from "halfloaf/quantity";
import { useEffect, useRef, useState } from "react";
import { useKitchen } from "../../kitchen/KitchenProvider.tsx";

/** How far the reading of a list has come. */
export type ListReading =
  | { readonly kind: "none" }
  | { readonly kind: "reading"; readonly rows: number; readonly share: number }
  | {
      readonly kind: "read";
      readonly rows: readonly PriceRow[];
      readonly issues: readonly Issue[];
      readonly issueCount: number;
      readonly isStopped: boolean;
    };

/** UTF-16 units read at once: a few milliseconds, so that the page answers in between. */
const PIECE = 1 << 13;

/** Reads a list by its mapping, anew whenever that changes, piece by piece; it can be stopped. */
export function useListReading(
  text: string,
  mapping: PriceListMapping | undefined,
): {
  readonly reading: ListReading;
  readonly stop: () => void;
  /** Matches the rows of a text anew, after a person has said which pack it is. */
  readonly relearn: (matches: readonly SaidMatch[], text: string) => void;
} {
  const { view } = useKitchen();
  const [reading, setReading] = useState<ListReading>({ kind: "none" });
  const running = useRef<AbortController>(undefined);
  const { shops, packs } = view.kitchen;
  const latest = useRef({ shops, packs });
  latest.current = { shops, packs };
  const key = JSON.stringify(mapping);
  useEffect(() => {
    if (key === undefined) {
      setReading({ kind: "none" });
      return undefined;
    }
    const own = new AbortController();
    let isWanted = true;
    running.current = own;
    setReading({ kind: "reading", rows: 0, share: 0 });
    const context = {
      mapping: JSON.parse(key) as PriceListMapping,
      shops: latest.current.shops,
      index: new PackIndex(latest.current.packs),
    };
    void readPriceList(inPieces(text), context, {
      signal: own.signal,
      onProgress: ({ items, size }) =>
        isWanted && setReading({ kind: "reading", rows: items, share: size / Math.max(1, text.length) }),
    }).then(({ rows, issues, issueCount, outcome }) => {
      if (isWanted) setReading({ kind: "read", rows, issues, issueCount, isStopped: outcome === "stopped" });
    });
    return () => {
      isWanted = false;
      own.abort();
    };
  }, [text, key]);
  return {
    reading,
    stop: () => running.current?.abort(),
    relearn(matches, said) {
      if (reading.kind !== "read") return;
      const index = new PackIndex(matches.reduce(rememberMatch, [...latest.current.packs]));
      setReading({ ...reading, rows: rematch(reading.rows, said, index) });
    },
  };
}

/** A text in pieces, between which the page gets its turn. */
function inPieces(text: string): FileSource {
  return {
    name: "list",
    pieces: (async function* () {
      for (let at = 0; at < text.length; at += PIECE) {
        yield text.slice(at, at + PIECE);
        await new Promise((resolve) => setTimeout(resolve));
      }
    })(),
  };
}

import { useMemo, useSyncExternalStore } from "react";

const hearers = new Set<() => void>();
/** What was written last, for where storage is refused: then it lasts as long as the page. */
const atHand = new Map<string, string>();

/**
 * What this device remembers by itself under a key, as JSON, in every tab; `otherwise` where nothing is, or something else
 * than `isValue` allows. `otherwise` must be the same object each time.
 */
export function useOnDevice<Value>(
  key: string,
  isValue: (value: unknown) => value is Value,
  otherwise: Value,
): readonly [value: Value, set: (value: Value) => void] {
  const kept = useSyncExternalStore(subscribe, () => read(key));
  return useMemo(() => {
    const set = (value: Value): void => write(key, JSON.stringify(value));
    try {
      const known: unknown = kept === undefined ? undefined : JSON.parse(kept);
      return [isValue(known) ? known : otherwise, set];
    } catch {
      return [otherwise, set];
    }
  }, [kept, key, isValue, otherwise]);
}

function subscribe(hearer: () => void): () => void {
  hearers.add(hearer);
  addEventListener("storage", hearer);
  return () => {
    hearers.delete(hearer);
    removeEventListener("storage", hearer);
  };
}

function read(key: string): string | undefined {
  try {
    return localStorage.getItem(key) ?? atHand.get(key);
  } catch {
    return atHand.get(key);
  }
}

function write(key: string, text: string): void {
  atHand.set(key, text);
  try {
    localStorage.setItem(key, text);
  } catch {
    // It is at hand still.
  }
  for (const hearer of hearers) hearer();
}

import { getHeapStatistics } from "node:v8";
import { drawInput } from "./drawInput.ts";
import { READERS, type ReaderName } from "./fuzzReaders.ts";

/** What was broken, by which input; `--only` with its number reads that input alone. */
export interface FuzzBreach {
  readonly reader: ReaderName;
  readonly number: number;
  readonly what: string;
}

/** What one reader was given and the longest it took. */
export interface ReaderSum {
  inputs: number;
  totalMs: number;
  worstMs: number;
  worstNumber: number;
}

/** What the worker tells: how far it is, or all there is to say at its end. */
export type FuzzNews =
  | { readonly kind: "at"; readonly number: number }
  | {
      readonly kind: "end";
      readonly sums: Readonly<Record<string, ReaderSum>>;
      readonly breaches: readonly FuzzBreach[];
      readonly breachCount: number;
      readonly mostHeapBytes: number;
    };

const MOST_MS = 1000;
const MOST_HEAP_BYTES = 512 * 2 ** 20;
const MOST_BREACHES = 50;
const NEWS_EVERY = 200;
const MARKUP = /<[a-z/!?]/i;
/** Controls, marks that turn or join, lone halves of a pair; characters that are not assigned yet are let stand. */
const UNSEEN = /(?![\n\t])[\p{Cc}\p{Cf}\p{Cs}]/u;
/**
 * Readers of dishes pass on clean text. What tables, lists and receipts call things, and what faults quote, is passed on as
 * text that stands in the file; whoever shows it shows it as text.
 */
const CLEAN: ReadonlySet<string> = new Set(["line", "text", "page", "any"]);

const [seed = 1, from = 0, to = 1000] = process.argv.slice(2).map(Number);
const names = Object.keys(READERS) as ReaderName[];
const sums: Record<string, ReaderSum> = {};
const breaches: FuzzBreach[] = [];
let breachCount = 0;
let mostHeapBytes = 0;
const prototype = Object.getOwnPropertyNames(Object.prototype).join();
const others = [Array.prototype, String.prototype, Map.prototype].map(
  (each) => Object.getOwnPropertyNames(each).length,
);

for (let number = from; number < to; number++) {
  const reader = names[number % names.length] as ReaderName;
  await readOne(reader, number);
  if (number % NEWS_EVERY === 0) process.send?.({ kind: "at", number } satisfies FuzzNews);
}
process.send?.({ kind: "end", sums, breaches, breachCount, mostHeapBytes } satisfies FuzzNews);
process.disconnect?.();

async function readOne(reader: ReaderName, number: number): Promise<void> {
  const input = drawInput(reader, seed, number);
  const first = await timed(reader, number, input);
  // A second look tells an input that takes long from a machine that was busy.
  const ms = first > MOST_MS ? Math.min(first, await timed(reader, number, input)) : first;
  const sum = sums[reader] ?? { inputs: 0, totalMs: 0, worstMs: 0, worstNumber: number };
  sums[reader] = sum;
  sum.inputs++;
  sum.totalMs += ms;
  if (ms > sum.worstMs) [sum.worstMs, sum.worstNumber] = [ms, number];
  if (ms > MOST_MS) tell(reader, number, `took ${Math.round(ms)} ms for ${input.length} bytes`);
  const heap = getHeapStatistics().used_heap_size;
  mostHeapBytes = Math.max(mostHeapBytes, heap);
  if (heap > MOST_HEAP_BYTES) tell(reader, number, `heap of ${Math.round(heap / 2 ** 20)} MB`);
  const isTouched =
    Object.getOwnPropertyNames(Object.prototype).join() !== prototype ||
    [Array.prototype, String.prototype, Map.prototype].some(
      (each, at) => Object.getOwnPropertyNames(each).length !== others[at],
    );
  if (isTouched) tell(reader, number, "a prototype was touched");
}

async function timed(reader: ReaderName, number: number, input: Uint8Array): Promise<number> {
  const start = performance.now();
  let given: unknown;
  try {
    given = await READERS[reader](input);
  } catch (error) {
    tell(reader, number, error instanceof Error ? (error.stack ?? error.message).slice(0, 600) : String(error));
  }
  const ms = performance.now() - start;
  for (const [path, text] of textsIn(given, "", 0)) {
    if (CLEAN.has(reader) && !path.endsWith(".received") && MARKUP.test(text))
      tell(reader, number, `markup passed on at ${path}: ${JSON.stringify(text.slice(0, 120))}`);
    if (CLEAN.has(reader) && UNSEEN.test(text))
      tell(reader, number, `unseen character at ${path}: ${JSON.stringify(text.slice(0, 120))}`);
  }
  return ms;
}

function tell(reader: ReaderName, number: number, what: string): void {
  breachCount++;
  if (breaches.length < MOST_BREACHES) breaches.push({ reader, number, what });
}

/** Every text in a value with its path; the raw content of a dish that this program wrote and starter foods are not looked into. */
function* textsIn(value: unknown, path: string, depth: number): Generator<readonly [string, string]> {
  if (typeof value === "string") yield [path, value];
  else if (typeof value === "object" && value !== null && depth < 14) {
    for (const [key, member] of Object.entries(value))
      if (key !== "written") yield* textsIn(member, `${path}.${key}`, depth + 1);
  }
}

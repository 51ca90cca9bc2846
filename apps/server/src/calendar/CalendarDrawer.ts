import { Worker } from "node:worker_threads";
import type { CalendarAsk } from "./drawCalendar.ts";

/** How long one may take, how long the thread rests before it ends, in milliseconds; its memory; how many are remembered and may wait. */
const LIMITS = { drawMs: 60_000, restMs: 600_000, memoryMb: 512, remembered: 200, waiting: 50 };

/**
 * Draws calendars in a thread of its own, one after the other, so that nobody who ticks waits for one. What was drawn is
 * remembered for as long as nothing changes. The thread is started with the first, and ends when nobody has asked for a while.
 */
export class CalendarDrawer {
  readonly #drawn = new Map<string, string>();
  #worker: Worker | undefined;
  #turn: Promise<unknown> = Promise.resolve();
  #waiting = 0;
  #resting: ReturnType<typeof setTimeout> | undefined;
  /** Tells what came of the one that is being drawn. */
  #tell: (text: string | undefined) => void = () => {};

  /** The calendar that `key` stands for, drawn from what `ask` gives where it is not remembered; undefined where it can't be. */
  async draw(key: string, ask: () => Promise<CalendarAsk | undefined>): Promise<string | undefined> {
    const known = this.#drawn.get(key);
    if (known !== undefined) return known;
    if (this.#waiting >= LIMITS.waiting) return undefined;
    this.#waiting++;
    const mine = this.#turn.then(async () => this.#drawn.get(key) ?? (await this.#drawNow(key, await ask())));
    this.#turn = mine.catch(() => {});
    return mine.finally(() => this.#waiting--);
  }

  async close(): Promise<void> {
    clearTimeout(this.#resting);
    await this.#worker?.terminate();
    this.#worker = undefined;
  }

  async #drawNow(key: string, ask: CalendarAsk | undefined): Promise<string | undefined> {
    if (ask === undefined) return undefined;
    clearTimeout(this.#resting);
    const worker = this.#worker ?? this.#start();
    const text = await new Promise<string | undefined>((resolve) => {
      const timer = setTimeout(() => this.#tell(undefined), LIMITS.drawMs);
      this.#tell = (outcome) => {
        clearTimeout(timer);
        resolve(outcome);
      };
      worker.postMessage(ask);
    });
    if (text === undefined) await this.close();
    else this.#remember(key, text);
    this.#resting = setTimeout(() => void this.close(), LIMITS.restMs).unref();
    return text;
  }

  #start(): Worker {
    const resourceLimits = { maxOldGenerationSizeMb: LIMITS.memoryMb };
    const worker = new Worker(new URL("./calendarWorker.mjs", import.meta.url), { resourceLimits });
    worker.on("message", (text: string) => this.#tell(text));
    worker.on("error", () => this.#tell(undefined));
    worker.on("exit", () => this.#tell(undefined));
    worker.unref();
    this.#worker = worker;
    return worker;
  }

  #remember(key: string, text: string): void {
    const [oldest] = this.#drawn.keys();
    if (this.#drawn.size >= LIMITS.remembered && oldest !== undefined) this.#drawn.delete(oldest);
    this.#drawn.set(key, text);
  }
}

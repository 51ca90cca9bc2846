/** How it stands with what was asked for over the network: all there, on its way once the network is back, or gone from its server. */
export type Lateness = "none" | "late" | "gone";

const FIRST_WAIT_MS = 2000;
const LONGEST_WAIT_MS = 30_000;

/** Knows what failed to load and is waited for, when it is asked for again, and whether a place of the page tells of it. */
class LateLoads {
  #lateness: Lateness = "none";
  #waiting = 0;
  #places = 0;
  #waitMs = FIRST_WAIT_MS;
  #next: { readonly promise: Promise<void>; readonly begin: () => void } | undefined;
  readonly #hearers = new Set<() => void>();

  get lateness(): Lateness {
    return this.#lateness;
  }

  /** True where the very place that waits tells of it. */
  get isToldInPlace(): boolean {
    return this.#places > 0;
  }

  subscribe = (hearer: () => void): (() => void) => {
    this.#hearers.add(hearer);
    return () => this.#hearers.delete(hearer);
  };

  /** A place tells of it, until what this gives is called. */
  tellInPlace = (): (() => void) => {
    this.#places++;
    this.#tell();
    return () => {
      this.#places--;
      this.#tell();
    };
  };

  /** Has all that is late asked for at once. */
  tryAgain = (): void => {
    this.#waitMs = FIRST_WAIT_MS;
    this.#next?.begin();
  };

  /** Begins to wait for something that failed to load; gives what to call once it is there. */
  begin(): () => void {
    if (this.#waiting++ === 0) globalThis.addEventListener("online", this.tryAgain);
    if (this.#lateness === "none") this.#become("late");
    return () => {
      this.#waiting--;
      if (this.#waiting > 0) return;
      globalThis.removeEventListener("online", this.tryAgain);
      this.#waitMs = FIRST_WAIT_MS;
      this.#become("none");
    };
  }

  /** Waits until it is time: the network is back, somebody asked, or a while has passed, longer each time. */
  nextTry(): Promise<void> {
    if (this.#next !== undefined) return this.#next.promise;
    let begin = (): void => {};
    const promise = new Promise<void>((resolve) => {
      const timer = setTimeout(() => begin(), this.#waitMs);
      begin = (): void => {
        clearTimeout(timer);
        this.#next = undefined;
        resolve();
      };
    });
    this.#waitMs = Math.min(LONGEST_WAIT_MS, 2 * this.#waitMs);
    this.#next = { promise, begin };
    return promise;
  }

  /** Looks, after a further failure, whether the server answers at all: then it has no such part any more. */
  async look(): Promise<void> {
    const isThere = await fetch("/", { method: "HEAD", cache: "no-store" }).then(
      ({ ok }) => ok,
      () => false,
    );
    if (this.#waiting > 0) this.#become(isThere ? "gone" : "late");
  }

  #become(lateness: Lateness): void {
    if (lateness === this.#lateness) return;
    this.#lateness = lateness;
    this.#tell();
  }

  #tell(): void {
    for (const hearer of this.#hearers) hearer();
  }
}

/** What is late in this page, or in this worker. */
export const lateLoads = new LateLoads();

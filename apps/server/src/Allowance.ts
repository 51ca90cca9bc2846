import type { Rate } from "./limits.ts";

/** What somebody may still do: full at first, less with each use, more with time. */
export class Allowance {
  readonly #rate: Rate;
  #left: number;
  #atMs: number;

  constructor(rate: Rate, nowMs: number) {
    this.#rate = rate;
    this.#left = rate.burst;
    this.#atMs = nowMs;
  }

  /** Takes so much away, or nothing where that is not left. */
  take(nowMs: number, count = 1): boolean {
    this.#refill(nowMs);
    if (this.#left < count) return false;
    this.#left -= count;
    return true;
  }

  /** Takes so much away whatever is left and gives how many milliseconds it must be waited for it. */
  takeLater(nowMs: number, count: number): number {
    this.#refill(nowMs);
    this.#left -= count;
    return this.#left >= 0 ? 0 : Math.ceil((-this.#left / this.#rate.perSecond) * 1_000);
  }

  /** Tells whether it is as full as at first, so that it need not be remembered. */
  isFull(nowMs: number): boolean {
    this.#refill(nowMs);
    return this.#left >= this.#rate.burst;
  }

  /** Tells whether nothing is left. */
  isSpent(nowMs: number): boolean {
    this.#refill(nowMs);
    return this.#left < 1;
  }

  #refill(nowMs: number): void {
    const gained = (Math.max(0, nowMs - this.#atMs) / 1_000) * this.#rate.perSecond;
    this.#left = Math.min(this.#rate.burst, this.#left + gained);
    this.#atMs = nowMs;
  }
}

/** Above so many addresses those that are full again are forgotten. */
const MOST_REMEMBERED = 10_000;

/** What each of many may still do, by a name such as an address. */
export class Allowances {
  readonly #rate: Rate;
  readonly #of = new Map<string, Allowance>();
  #most = MOST_REMEMBERED;

  constructor(rate: Rate) {
    this.#rate = rate;
  }

  take(name: string, nowMs: number): boolean {
    return this.#find(name, nowMs).take(nowMs);
  }

  isSpent(name: string, nowMs: number): boolean {
    return this.#of.get(name)?.isSpent(nowMs) ?? false;
  }

  #find(name: string, nowMs: number): Allowance {
    const known = this.#of.get(name);
    if (known !== undefined) return known;
    if (this.#of.size >= this.#most) this.#forgetFull(nowMs);
    const fresh = new Allowance(this.#rate, nowMs);
    this.#of.set(name, fresh);
    return fresh;
  }

  /** Where few are full, the next look is later, so that many names together cost little each. */
  #forgetFull(nowMs: number): void {
    for (const [each, allowance] of this.#of) if (allowance.isFull(nowMs)) this.#of.delete(each);
    this.#most = Math.max(MOST_REMEMBERED, 2 * this.#of.size);
  }
}

import { Allowances } from "./Allowance.ts";
import type { Rate } from "./limits.ts";

/**
 * Wrong secrets, counted for each name from each address: who has tried too many for one name is not heard on it for a while.
 * Others behind the same address, and the same name from elsewhere, are not touched, so that nobody is shut out by another.
 */
export class Mistakes {
  readonly #allowances: Allowances;

  constructor(rate: Rate) {
    this.#allowances = new Allowances(rate);
  }

  note(address: string, name: string, nowMs: number): void {
    this.#allowances.take(`${address} ${name}`, nowMs);
  }

  isShut(address: string, name: string, nowMs: number): boolean {
    return this.#allowances.isSpent(`${address} ${name}`, nowMs);
  }
}

import type { Hold } from "./ImpliedHolds.ts";
import type { LpBasis } from "./LpSession.ts";

/** A part of a model still to be looked into: no point of it costs less than `bound`. */
export interface OpenPart {
  readonly bound: number;
  readonly holds: readonly Hold[];
  readonly basis: LpBasis;
  /** What is no whole number at the part's cheapest point; absent where its solve stopped before it got there. */
  readonly fractional?: readonly { readonly column: number; readonly value: number }[];
}

/** The parts still open, to be taken up in the order of their bounds. */
export class OpenParts {
  private readonly parts: OpenPart[] = [];

  get count(): number {
    return this.parts.length;
  }

  /** The least bound of all; Infinity where none is open. */
  get bound(): number {
    return this.parts.reduce((least, part) => Math.min(least, part.bound), Number.POSITIVE_INFINITY);
  }

  add(part: OpenPart): void {
    this.parts.push(part);
  }

  takeLeast(): OpenPart | undefined {
    let at = 0;
    for (let i = 1; i < this.parts.length; i++)
      if ((this.parts[i] as OpenPart).bound < (this.parts[at] as OpenPart).bound) at = i;
    const part = this.parts[at];
    const last = this.parts.pop();
    if (last !== undefined && last !== part) this.parts[at] = last;
    return part;
  }

  clear(): void {
    this.parts.length = 0;
  }
}

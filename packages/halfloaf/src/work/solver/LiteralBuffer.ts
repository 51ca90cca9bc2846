import type { Literal } from "./literal.ts";

/** A list of literals that is filled and emptied over and over without new memory. */
export class LiteralBuffer {
  data = new Int32Array(64);
  size = 0;

  push(literal: Literal): void {
    if (this.size === this.data.length) {
      const wider = new Int32Array(2 * this.size);
      wider.set(this.data);
      this.data = wider;
    }
    this.data[this.size++] = literal;
  }

  at(index: number): Literal {
    return this.data[index] as number;
  }
}

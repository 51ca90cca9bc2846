import type { MenuProblem } from "../problem.ts";
import type { CoverItem, CoverTable } from "./CoverTable.ts";
import { DUST_G, type Needs } from "./Needs.ts";
import type { OpeningPath } from "./Opening.ts";
import type { Source } from "./Sources.ts";

/** Worth of a gram that is left: in a pack never opened or an open one, both still good, or gone off. */
export interface LeftWorth {
  readonly unopened: number;
  readonly opened: number;
  readonly wasted: number;
}

/**
 * Worth of what is left when the needs are fed from the openings one after the other, each of their packs opened only
 * when those before are used up or gone off. It is what `giveOut` does with the same openings.
 */
export function valueLeft(problem: MenuProblem, path: OpeningPath, needs: Needs, worth: LeftWorth): number {
  const packs = new Packs(problem, path, worth);
  for (let i = 0; i < needs.count; i++) {
    let need = needs.massG[i] as number;
    const day = needs.day[i] as number;
    while (need > DUST_G) {
      need = packs.feed(need, day);
      if (need <= DUST_G || !packs.goOn(needs.period[i] as number)) break;
    }
  }
  return packs.close();
}

/** The packs of a path in the order in which they are opened. */
class Packs {
  private readonly problem: MenuProblem;
  private readonly path: OpeningPath;
  private readonly worth: LeftWorth;
  private value = 0;
  private opening = -1;
  private item = 0;
  /** Packs of the item not opened yet, and what is left of the open one. */
  private whole = 0;
  private left = 0;
  private lastDay = -1;

  constructor(problem: MenuProblem, path: OpeningPath, worth: LeftWorth) {
    this.problem = problem;
    this.path = path;
    this.worth = worth;
    this.goOn(Infinity);
  }

  private get table(): CoverTable {
    return this.path.table[this.opening] as CoverTable;
  }

  private get keepsDay(): number {
    const made = this.problem.trips[this.path.trip[this.opening] as number];
    return (made?.day as number) + (this.path.source[this.opening] as Source).unopenedDays;
  }

  /** Goes on to the next opening if there is one that is due; what is left of this one stays as it is. */
  goOn(period: number): boolean {
    const next = this.opening + 1;
    if (next >= this.path.length || (this.path.period[next] as number) > period) return false;
    this.close();
    this.opening = next;
    this.item = -1;
    this.nextItem();
    return true;
  }

  private nextItem(): void {
    const { items, counts } = this.table;
    const row = this.path.row[this.opening] as number;
    this.whole = 0;
    while (this.whole === 0 && ++this.item < items.length) {
      this.whole = counts[row * items.length + this.item] as number;
    }
  }

  /** Feeds a need from the packs of this opening and gives what is still missing (g). */
  feed(need: number, day: number): number {
    while (this.opening >= 0) {
      if (this.left > DUST_G && day <= this.lastDay) {
        const taken = Math.min(this.left, need);
        this.left -= taken;
        need -= taken;
      }
      if (need <= DUST_G || this.whole === 0 || day > this.keepsDay) break;
      this.open(day);
    }
    return need;
  }

  private open(day: number): void {
    this.value += this.valueOpen();
    this.left = (this.table.items[this.item] as CoverItem).massG;
    this.lastDay = Math.min(this.keepsDay, day + (this.path.source[this.opening] as Source).openedDays);
    if (--this.whole === 0) this.nextItem();
  }

  private valueOpen(): number {
    if (this.left <= DUST_G) return 0;
    return this.left * (this.lastDay >= this.problem.days - 1 ? this.worth.opened : this.worth.wasted);
  }

  /** Adds what is left of this opening and gives the worth of all that is left so far. */
  close(): number {
    this.value += this.valueOpen();
    this.left = 0;
    const each = this.opening >= 0 && this.keepsDay >= this.problem.days - 1 ? this.worth.unopened : this.worth.wasted;
    while (this.whole > 0) {
      this.value += each * this.whole * (this.table.items[this.item] as CoverItem).massG;
      this.nextItem();
    }
    return this.value;
  }
}

import type { MenuCooking, MenuDish, MenuMinutes, MenuProblem, MenuSitting } from "../problem.ts";

/** Tells the minutes of dishes cooked at once, by an order of work. */
export type TimeTogether = (dishes: MenuCooking["dishes"]) => MenuCooking;

/** Portions that differ by less are the same. */
const SLACK = 1e-6;

interface Group {
  readonly day: number;
  readonly sittings: readonly number[];
}

/**
 * What is cooked at once for sittings that share a cooking, kept up to date: by how many minutes such cookings are too
 * long, and the washing between their dishes on each day.
 */
export class CookedAtOnce {
  overElapsed = 0;
  readonly washMinutes: Float64Array;
  private readonly problem: MenuProblem;
  private readonly groups: readonly Group[];
  private readonly groupOf: Int32Array;
  /** The dish whose cooking begins at a sitting, -1 for none, and its portions. */
  private readonly dishAt: Int32Array;
  private readonly sizeAt: Float64Array;
  private readonly over: Float64Array;
  private readonly wash: Float64Array;
  private readonly journal: { sitting: number; dish: number; size: number }[] = [];
  /** What is known, by the first dish of each cooking. */
  private readonly known = new Map<number, MenuCooking[]>();

  constructor(problem: MenuProblem) {
    this.problem = problem;
    const { sittings, days, cookings = [] } = problem;
    const labels = [...new Set(sittings.flatMap(({ together }) => together ?? []))];
    this.groups = labels.map((label) => {
      const of = sittings.flatMap(({ together }, k) => (together === label ? [k] : []));
      return { day: (sittings[of[0] as number] as MenuSitting).day, sittings: of };
    });
    this.groupOf = Int32Array.from(sittings, ({ together }) =>
      together === undefined ? -1 : labels.indexOf(together),
    );
    this.dishAt = new Int32Array(sittings.length).fill(-1);
    this.sizeAt = new Float64Array(sittings.length);
    this.over = new Float64Array(labels.length);
    this.wash = new Float64Array(labels.length);
    this.washMinutes = new Float64Array(days);
    for (const cooking of cookings) this.add(cooking);
  }

  private add(cooking: MenuCooking): void {
    const first = cooking.dishes[0]?.dish ?? -1;
    const own = this.known.get(first);
    if (own === undefined) this.known.set(first, [cooking]);
    else own.push(cooking);
  }

  /** Each cooking of several dishes: the sitting it is cooked for that has the fewest minutes at hand, and its minutes. */
  readMinutes(): { readonly sitting: number; readonly minutes: number }[] {
    return this.groups.flatMap(({ sittings }) => {
      const cooked = sittings.filter((k) => this.dishAt[k] !== -1);
      if (cooked.length < 2) return [];
      const minutesOf = (k: number): number => (this.problem.sittings[k] as MenuSitting).minutes;
      const [sitting] = cooked.sort((a, b) => minutesOf(a) - minutesOf(b));
      return [{ sitting: sitting as number, minutes: this.minutesOf(cooked) }];
    });
  }

  /** Asks about all that is cooked at once now and is not known yet; true where there was any. */
  learn(timeTogether: TimeTogether): boolean {
    let learned = false;
    this.groups.forEach(({ sittings }, group) => {
      const cooked = sittings.filter((k) => this.dishAt[k] !== -1);
      if (cooked.length < 2 || this.isKnown(cooked)) return;
      learned = true;
      const dishes = cooked.map((k) => ({ dish: this.dishAt[k] as number, portions: this.sizeAt[k] as number }));
      this.add(timeTogether(dishes));
      this.reckonGroup(group);
    });
    if (learned) this.addUp();
    return learned;
  }

  /** True where what is cooked for a sitting is judged here. */
  has(sitting: number): boolean {
    return this.groupOf[sitting] !== -1;
  }

  /** Begins a move: `undo` goes back to here. */
  begin(): void {
    this.journal.length = 0;
  }

  /** A cooking begins at a sitting (1) or does so no more (-1). */
  count(sitting: number, dish: number, size: number, sign: number): void {
    this.journal.push({ sitting, dish: this.dishAt[sitting] as number, size: this.sizeAt[sitting] as number });
    this.dishAt[sitting] = sign > 0 ? dish : -1;
    this.sizeAt[sitting] = size;
  }

  undo(): void {
    const { journal } = this;
    const touched = journal.length > 0;
    for (let i = journal.length - 1; i >= 0; i--) {
      const { sitting, dish, size } = journal[i] as (typeof journal)[number];
      this.dishAt[sitting] = dish;
      this.sizeAt[sitting] = size;
    }
    if (touched) this.reckon();
  }

  /** Brings the sums up to date after a move. */
  reckon(): void {
    if (this.journal.length === 0) return;
    for (const { sitting } of this.journal) this.reckonGroup(this.groupOf[sitting] as number);
    this.addUp();
  }

  private addUp(): void {
    this.overElapsed = this.over.reduce((sum, over) => sum + over, 0);
    this.washMinutes.fill(0);
    this.groups.forEach(({ day }, group) => {
      this.washMinutes[day] = (this.washMinutes[day] as number) + (this.wash[group] as number);
    });
  }

  private reckonGroup(group: number): void {
    const { sittings } = this.groups[group] as Group;
    const cooked = sittings.filter((k) => this.dishAt[k] !== -1);
    this.wash[group] = 0;
    this.over[group] = 0;
    if (cooked.length === 0) return;
    const atHand = Math.min(...cooked.map((k) => (this.problem.sittings[k] as MenuSitting).minutes));
    const over = this.minutesOf(cooked) - atHand;
    if (over > 1e-9) this.over[group] = over;
    for (const { washMinutes } of this.listKnown(cooked))
      this.wash[group] = Math.max(this.wash[group] as number, washMinutes);
  }

  private minutesOf(cooked: readonly number[]): number {
    const known = this.listKnown(cooked).map(({ elapsedMinutes }) => elapsedMinutes);
    return Math.max(this.leastMinutes(cooked), ...known);
  }

  /** The longest dish or the greatest load; one dish after the other where nothing is known and that counts. */
  private leastMinutes(cooked: readonly number[]): number {
    const of = (k: number, { fixed, perPortion }: MenuMinutes): number =>
      fixed + perPortion * (this.sizeAt[k] as number);
    const dishes = cooked.map((k) => this.problem.dishes[this.dishAt[k] as number] as MenuDish);
    const alone = cooked.map((k, i) => of(k, (dishes[i] as MenuDish).elapsed));
    const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
    if (this.problem.isApart && cooked.length > 1 && !this.isKnown(cooked)) return sum(alone);
    const things = Math.max(...dishes.map(({ loads = [] }) => loads.length));
    const loads = Array.from({ length: things }, (_, thing) =>
      sum(cooked.map((k, i) => of(k, dishes[i]?.loads?.[thing] ?? { fixed: 0, perPortion: 0 }))),
    );
    return Math.max(...alone, ...loads);
  }

  /** What is known that holds for this cooking. */
  private listKnown(cooked: readonly number[]): MenuCooking[] {
    if (cooked.length < 2) return [];
    const firsts = cooked.flatMap((k) => this.known.get(this.dishAt[k] as number) ?? []);
    return firsts.filter((cooking) => this.holds(cooking, cooked, this.isAsMuch));
  }

  private isKnown(cooked: readonly number[]): boolean {
    return this.listKnown(cooked).some(
      (cooking) => cooking.dishes.length === cooked.length && this.holds(cooking, cooked, this.isSame),
    );
  }

  private holds({ dishes }: MenuCooking, cooked: readonly number[], fits: (size: number, of: number) => boolean) {
    return dishes.every(({ dish, portions }) =>
      cooked.some((k) => this.dishAt[k] === dish && fits(this.sizeAt[k] as number, portions)),
    );
  }

  private readonly isAsMuch = (size: number, portions: number): boolean => size >= portions - SLACK;
  private readonly isSame = (size: number, portions: number): boolean => Math.abs(size - portions) <= SLACK;
}

/**
 * Atoms by how often they took part in recent conflicts: a binary heap, most active first.
 *
 * What was popped comes back when the decisions made since are undone.
 * **Source**: Moskewicz, Madigan, Zhao, Zhang, Malik 2001, "Chaff", DAC 38 (activities that decay).
 */
export class ActivityQueue {
  readonly activity: Float64Array;
  private readonly heap: Int32Array;
  private readonly place: Int32Array;
  private size = 0;
  private readonly popped: Int32Array;
  private readonly poppedLevel: Int32Array;
  private poppedSize = 0;
  private step = 1;
  private readonly decay: number;

  constructor(atoms: number, decay: number) {
    this.activity = new Float64Array(atoms);
    this.heap = new Int32Array(atoms);
    this.place = new Int32Array(atoms).fill(-1);
    this.popped = new Int32Array(atoms);
    this.poppedLevel = new Int32Array(atoms);
    this.decay = decay;
  }

  isEmpty(): boolean {
    return this.size === 0;
  }

  bump(atom: number): void {
    const raised = (this.activity[atom] as number) + this.step;
    this.activity[atom] = raised;
    if (raised > 1e100) this.rescale();
    const at = this.place[atom] as number;
    // -2 marks an atom that was popped: it comes back by itself.
    if (at >= 0) this.rise(at);
    else if (at === -1) this.insert(atom);
  }

  decayAll(): void {
    this.step /= this.decay;
  }

  /** The most active atom, taken out at this decision level. */
  pop(level: number): number {
    const top = this.heap[0] as number;
    this.place[top] = -2;
    this.popped[this.poppedSize] = top;
    this.poppedLevel[this.poppedSize++] = level;
    const moved = this.heap[--this.size] as number;
    if (this.size > 0) this.sink(moved);
    return top;
  }

  /** Brings back what was popped at this level or above. */
  backTo(level: number): void {
    while (this.poppedSize > 0 && (this.poppedLevel[this.poppedSize - 1] as number) >= level) {
      this.insert(this.popped[--this.poppedSize] as number);
    }
  }

  private insert(atom: number): void {
    this.heap[this.size] = atom;
    this.place[atom] = this.size;
    this.rise(this.size++);
  }

  private rise(at: number): void {
    const { heap, place, activity } = this;
    const atom = heap[at] as number;
    const own = activity[atom] as number;
    let i = at;
    while (i > 0) {
      const parent = (i - 1) >> 1;
      const above = heap[parent] as number;
      if ((activity[above] as number) >= own) break;
      heap[i] = above;
      place[above] = i;
      i = parent;
    }
    heap[i] = atom;
    place[atom] = i;
  }

  private sink(atom: number): void {
    const { heap, place, activity, size } = this;
    const own = activity[atom] as number;
    let i = 0;
    for (let child = 1; child < size; child = 2 * i + 1) {
      const right = child + 1;
      if (right < size && (activity[heap[right] as number] as number) > (activity[heap[child] as number] as number))
        child++;
      const below = heap[child] as number;
      if ((activity[below] as number) <= own) break;
      heap[i] = below;
      place[below] = i;
      i = child;
    }
    heap[i] = atom;
    place[atom] = i;
  }

  private rescale(): void {
    for (let atom = 0; atom < this.activity.length; atom++)
      this.activity[atom] = (this.activity[atom] as number) * 1e-100;
    this.step *= 1e-100;
  }
}

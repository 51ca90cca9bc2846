import { createRandomSource } from "halfloaf/quantity";
import type { WorkDish, WorkKit, WorkProblem, WorkStep, WorkUse, WorkWait } from "halfloaf/work";

const RING = 0;
const POT = 1;
const PAN = 2;

/** Collects one meal while its dishes are written down. */
class MealDraft {
  readonly steps: WorkStep[] = [];
  readonly dishes: WorkDish[] = [];
  readonly waits: WorkWait[] = [];
  readonly uses: WorkUse[] = [];
  private readonly random: () => number;
  private readonly preparations: readonly [number, number];

  constructor(random: () => number, preparations: readonly [number, number]) {
    this.random = random;
    this.preparations = preparations;
  }

  between(low: number, high: number): number {
    return low + Math.floor((high - low + 1) * this.random());
  }

  pick<T>(list: readonly T[]): T {
    return list[this.between(0, list.length - 1)] as T;
  }

  step(name: string, minutes: number, hands: 0 | 1 | 2, more: Partial<WorkStep> = {}): number {
    const dish = this.dishes.length;
    return this.steps.push({ id: `${dish} ${name}`, dish, minutes, hands, ...more }) - 1;
  }

  /** Things made ready before a step, in any order and with no hold: weighing, peeling, opening. */
  prepare(before: number): void {
    for (const name of ["weigh out", "wash and peel", "open and drain", "grate"].slice(
      0,
      this.between(...this.preparations),
    )) {
      this.wait(this.step(name, this.between(1, 4), 2), before);
    }
  }

  /** Steps in a row, with the longest wait after each but the last (undefined = any) and what a minute of it weighs. */
  chain(steps: readonly number[], most: readonly (number | undefined)[], weights: readonly number[] = []): void {
    for (const [k, from] of steps.slice(0, -1).entries()) this.wait(from, steps[k + 1] as number, most[k], weights[k]);
  }

  wait(from: number, to: number, mostMinutes?: number, weight?: number): void {
    this.waits.push({
      from,
      to,
      leastMinutes: 0,
      ...(mostMinutes === undefined ? {} : { mostMinutes }),
      ...(weight ? { weight } : {}),
    });
  }

  use(kinds: readonly number[], from: number, to: number): void {
    for (const kind of kinds) this.uses.push({ kind, from, to });
  }

  finish(id: string, last: number, holdMinutes: number): void {
    this.prepare(this.steps.findIndex(({ dish }) => dish === this.dishes.length));
    this.dishes.push({ id, last, holdMinutes, holdWeight: 3 });
  }
}

/** Dishes of our own with invented times; each writes its steps into the draft. */
const KINDS: readonly ((draft: MealDraft) => void)[] = [
  function lentilPot(d) {
    const cut = d.step("cut onion and carrot", d.between(5, 9), 2, { board: "ready" });
    const soften = d.step("soften", d.between(5, 8), 1);
    const simmer = d.step("simmer", d.between(20, 35), 0);
    const season = d.step("season", 2, 2);
    d.chain([cut, soften, simmer, season], [undefined, 2, 20], [0, 0, 1]);
    d.use([RING, POT], soften, simmer);
    d.finish("lentil pot", season, d.between(12, 20));
  },
  function crackedWheat(d) {
    const water = d.step("heat water", d.between(6, 10), 0);
    const swell = d.step("cook wheat", d.between(10, 15), 0);
    const rest = d.step("let stand", 5, 0);
    const loosen = d.step("loosen", 1, 2);
    d.chain([water, swell, rest, loosen], [5, 0, 10], [0, 0, 1]);
    d.use([RING], water, swell);
    d.use([POT], water, loosen);
    d.finish("cracked wheat", loosen, d.between(8, 15));
  },
  function rootTray(d) {
    const tempC = d.pick([180, 200, 200, 220]);
    const cut = d.step("cut roots", d.between(7, 12), 2, { board: "ready" });
    const oil = d.step("oil and salt", 2, 2);
    const bake = d.step("bake", d.between(28, 45), 0, { oven: { tempC, shelves: 1 } });
    const turn = d.step("tip onto a dish", 1, 2);
    d.chain([cut, oil, bake, turn], [undefined, 30, 8], [0, 0, 2]);
    d.finish("root tray", turn, d.between(8, 15));
  },
  function chickenTray(d) {
    const tempC = d.pick([180, 200]);
    const joint = d.step("cut and rub chicken", d.between(6, 10), 2, { board: "raw" });
    const bake = d.step("bake through", d.between(40, 60), 0, { oven: { tempC, shelves: 1 } });
    const rest = d.step("rest", 8, 0);
    const carve = d.step("carve", d.between(4, 7), 2);
    d.chain([joint, bake, rest, carve], [30, 0, 12], [0, 0, 2]);
    d.finish("chicken tray", carve, d.between(8, 14));
  },
  function eggPan(d) {
    const cut = d.step("cut greens", d.between(3, 6), 2, { board: "ready" });
    const beat = d.step("beat eggs", 2, 2);
    const fry = d.step("set in the pan", d.between(5, 8), 1);
    const slice = d.step("cut in wedges", 2, 2);
    d.wait(cut, fry);
    d.wait(beat, fry, 20);
    d.wait(fry, slice, 5, 2);
    d.use([RING, PAN], fry, fry);
    d.finish("egg pan", slice, d.between(6, 12));
  },
  function panFish(d) {
    const trim = d.step("trim fish", d.between(4, 6), 2, { board: "raw" });
    const fry = d.step("fry", d.between(6, 9), 1);
    const lift = d.step("lift out", 1, 2);
    d.chain([trim, fry, lift], [20, 1], [0, 3]);
    d.use([RING, PAN], fry, lift);
    d.finish("pan fish", lift, d.between(4, 8));
  },
  function cabbageSlaw(d) {
    const shred = d.step("shred cabbage", d.between(5, 9), 2, { board: "ready" });
    const dress = d.step("stir dressing", 3, 2);
    const mix = d.step("mix", 2, 2);
    d.wait(shred, mix);
    d.wait(dress, mix);
    d.finish("cabbage slaw", mix, d.between(20, 40));
  },
  function flatbread(d) {
    const knead = d.step("knead", d.between(7, 10), 2);
    const rest = d.step("rest dough", d.between(20, 30), 0);
    const roll = d.step("roll out", d.between(4, 6), 2);
    const bake = d.step("bake in the pan", d.between(10, 14), 1);
    d.chain([knead, rest, roll, bake], [0, 40, 6]);
    d.use([RING, PAN], bake, bake);
    d.finish("flatbread", bake, d.between(12, 20));
  },
  function loaf(d) {
    const mix = d.step("mix dough", d.between(8, 11), 2);
    const rise = d.step("rise", d.between(40, 55), 0);
    const shape = d.step("shape", 3, 2);
    const prove = d.step("prove", 15, 0);
    const bake = d.step("bake", d.between(20, 28), 0, { oven: { tempC: 220, shelves: 1 } });
    const cool = d.step("cool", 10, 0);
    d.chain([mix, rise, shape, prove, bake, cool], [0, 20, 0, 15, 2]);
    d.finish("loaf", cool, 90);
  },
  function tomatoSauce(d) {
    const cut = d.step("cut garlic", d.between(2, 4), 2, { board: "ready" });
    const fry = d.step("warm in oil", 3, 1);
    const reduce = d.step("reduce", d.between(12, 20), 1);
    d.chain([cut, fry, reduce], [undefined, 1]);
    d.use([RING, POT], fry, reduce);
    d.finish("tomato sauce", reduce, d.between(12, 20));
  },
  function meatballs(d) {
    const mix = d.step("mix mince", d.between(5, 8), 2, { board: "raw" });
    const form = d.step("form", d.between(5, 8), 2);
    const brown = d.step("brown", d.between(8, 12), 1);
    const finish = d.step("cook through in the oven", d.between(10, 15), 0, { oven: { tempC: 180, shelves: 1 } });
    d.chain([mix, form, brown, finish], [15, 30, 5], [0, 0, 1]);
    d.use([RING, PAN], brown, brown);
    d.finish("meatballs", finish, d.between(8, 14));
  },
  function noodlesInBroth(d) {
    const cut = d.step("cut leek", d.between(3, 5), 2, { board: "ready" });
    const broth = d.step("heat broth", d.between(8, 12), 0);
    const noodles = d.step("cook noodles", d.between(4, 7), 1);
    const ladle = d.step("ladle", 2, 2);
    d.wait(cut, noodles);
    d.wait(broth, noodles, 15, 1);
    d.wait(noodles, ladle, 1, 3);
    d.use([RING], broth, noodles);
    d.use([POT], broth, ladle);
    d.finish("noodles in broth", ladle, d.between(4, 8));
  },
];

const FIRST_STEPS = 8;
const MOST_STEPS = 44;

/**
 * A made-up meal of several dishes with 8 to 44 steps, the same for the same seed. A crowded one has more dishes for
 * its steps, as nothing is weighed or peeled: up to twelve that all want the cook at the end.
 */
export function generateMeal(seed: number, isCrowded = false): WorkProblem {
  const random = createRandomSource(seed + 1);
  const draft = new MealDraft(random, isCrowded ? [0, 0] : [1, 4]);
  const wanted = FIRST_STEPS + (seed % (MOST_STEPS - FIRST_STEPS - 5));
  while (draft.steps.length < wanted) draft.pick(KINDS)(draft);
  const kit: WorkKit[] = [
    { id: "ring", count: draft.between(2, 4) },
    { id: "pot", count: draft.between(2, 3) },
    { id: "pan", count: draft.between(1, 2) },
  ];
  return {
    cooks: 1,
    steps: draft.steps,
    dishes: draft.dishes,
    waits: draft.waits,
    kit,
    uses: draft.uses,
    oven: { shelves: 2, roomC: 20, warmCPerMinute: 20, coolCPerMinute: 10 },
    board: { count: 1, washMinutes: 3, washWeight: 10 },
  };
}

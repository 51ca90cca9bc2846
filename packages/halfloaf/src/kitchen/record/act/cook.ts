import { type Choose, type ChosenFood, type Dish, type Making, makingsOf } from "../../../dish/index.ts";
import type { Food, FoodTable } from "../../../food/index.ts";
import type { CivilDate } from "../../../quantity/index.ts";
import { isGoneOff, type LotState, MASS_TOLERANCE_G, type Movement, take } from "../../../stores/index.ts";
import type { SittingKind } from "../../datedSittings.ts";
import type { EventOf } from "../event.ts";
import type { Pen } from "../Pen.ts";
import type { RecordState } from "../recordState.ts";

/** A cooking that was done. */
export interface CookWish {
  readonly dish: Dish;
  readonly portions: number;
  readonly on: CivilDate;
  readonly sitting?: SittingKind;
  /** Position of the batch in the accepted week. */
  readonly batch?: number;
  /** What stood for each making; by default the first of its foods of which the stores had enough, no optional ones. */
  readonly choose?: Choose;
  /** What was really used where that differed: g as purchased by food, 0 for what was left out. */
  readonly really?: Readonly<Record<string, number>>;
  /** Who ate of it at once, and how many portions; without `eater` a guest. */
  readonly plates?: readonly { readonly eater?: string; readonly portions: number }[];
  /** How long its steps took. */
  readonly steps?: EventOf<"cooked">["steps"];
  /** Portions of each box that goes into the freezer. */
  readonly boxes?: readonly number[];
}

/** The events of a cooking: the cooking itself, what of it was frozen, and the plates where any were eaten at once. */
export interface CookingWritten {
  readonly cooked: EventOf<"cooked">;
  readonly boxed: readonly EventOf<"moved">[];
  readonly eaten?: EventOf<"eaten">;
}

/**
 * A cooking as events. Its makings leave the lots first expired first out, as purchased, and become a lot of portions in
 * the fridge that keeps as the dish says; what is eaten at once leaves it again. Each box becomes a lot of its own in the
 * freezer, as long as there are portions for it beside the plates. What the stores don't have is noted as unbooked, and so
 * is what went in to taste. Throws where the portions are not positive, or where plates are given without
 * the sitting.
 */
export function cook(state: RecordState, foods: FoodTable, wish: CookWish, pen: Pen): CookingWritten {
  const { dish, portions, on, sitting, batch, steps = [], plates = [] } = wish;
  if (!(portions > 0)) throw new RangeError(`${portions} is no number of portions`);
  const { uses, unbooked } = takeMakings(state, foods, wish);
  const cooked = pen.write({
    kind: "cooked",
    on,
    lot: pen.nameLot(dish.id),
    dish: dish.id,
    portions,
    portionG: dish.portionMassG,
    keeps: dish.keeps.freezerDays === undefined ? { fridgeDays: dish.keeps.fridgeDays } : pickDays(dish),
    uses,
    ...(unbooked.length > 0 && { unbooked }),
    ...(sitting !== undefined && { sitting }),
    ...(batch !== undefined && { batch }),
    ...(steps.length > 0 && { steps }),
  });
  const boxed = freeze(cooked, wish, pen);
  if (plates.length === 0) return { cooked, boxed };
  if (sitting === undefined) throw new RangeError("plates are eaten at a sitting");
  const served = plates.map(({ eater, portions: share }) => {
    const plate = { lot: cooked.lot, massG: share * dish.portionMassG };
    return eater === undefined ? plate : { eater, ...plate };
  });
  return { cooked, boxed, eaten: pen.write({ kind: "eaten", on, sitting, plates: served }) };
}

/** Portions closer than this are the same: adding up shares loses far less. */
const PORTION_TOLERANCE = 1e-9;

function freeze({ lot, on }: EventOf<"cooked">, wish: CookWish, pen: Pen): EventOf<"moved">[] {
  const { dish, portions, plates = [], boxes = [] } = wish;
  let rest = plates.reduce((left, plate) => left - plate.portions, portions);
  return boxes.flatMap((box) => {
    if (box > rest + PORTION_TOLERANCE) return [];
    rest -= box;
    const part = { massG: box * dish.portionMassG, lot: pen.nameLot(dish.id) };
    return [pen.write({ kind: "moved", on, lot, to: "freezer", part })];
  });
}

function pickDays({ keeps: { fridgeDays, freezerDays } }: Dish): EventOf<"cooked">["keeps"] {
  return { fridgeDays, freezerDays };
}

type Uses = EventOf<"cooked">["uses"];
type Unbooked = NonNullable<EventOf<"cooked">["unbooked"]>;

/** What leaves the lots for a cooking, and what went in that no lot had. */
function takeMakings(
  state: RecordState,
  foods: FoodTable,
  wish: CookWish,
): { readonly uses: Uses; readonly unbooked: Unbooked } {
  const uses: Uses = [];
  const unbooked: Unbooked = [];
  for (const [id, massG] of listWanted(state, foods, wish)) {
    const food = foods.get(id);
    if (massG === undefined || food === undefined)
      unbooked.push(massG === undefined ? { food: id } : { food: id, massG });
    else if (massG > MASS_TOLERANCE_G) {
      const { movements, shortG } = takeUpTo(state.lots.values(), food, massG, wish.on);
      uses.push(...toUses(movements));
      if (shortG > MASS_TOLERANCE_G) unbooked.push({ food: id, massG: shortG });
    }
  }
  return { uses, unbooked };
}

/** g as purchased by food, each food once; undefined where it went in to taste or its mass is not known. */
function listWanted(
  state: RecordState,
  foods: FoodTable,
  { dish, portions, on, choose, really = {} }: CookWish,
): Map<string, number | undefined> {
  const chosen = choose ?? chooseFromStores(state, foods, { dish, portions, on });
  const wanted = new Map<string, number | undefined>();
  for (const amount of makingsOf(dish, foods, chosen)) {
    const before = wanted.get(amount.food) ?? 0;
    if (amount.ok) wanted.set(amount.food, before + amount.purchasedG.middle * portions);
    else if (!wanted.has(amount.food)) wanted.set(amount.food, undefined);
  }
  for (const [food, massG] of Object.entries(really)) wanted.set(food, massG);
  return wanted;
}

/**
 * What stands for each making of a cooking, in the order of the dish: what was chosen, else what the stores have enough of that
 * day; what is left out is not there.
 */
export function listTakenMakings(
  state: RecordState,
  foods: FoodTable,
  { dish, portions, on, choose }: Pick<CookWish, "dish" | "portions" | "on"> & { readonly choose?: Choose | undefined },
): readonly { readonly making: Making; readonly chosen: ChosenFood }[] {
  const chooses = choose ?? chooseFromStores(state, foods, { dish, portions, on });
  return dish.makings.flatMap((making) => {
    const chosen = chooses(making);
    return chosen === undefined ? [] : [{ making, chosen }];
  });
}

/** The first food of each making that the stores had enough of that day, its own food where none was; no optional ones. */
function chooseFromStores(
  state: RecordState,
  foods: FoodTable,
  { dish, portions, on }: Pick<CookWish, "dish" | "portions" | "on">,
): Choose {
  const goodG = goodMasses(state.lots.values(), on);
  return (making) => {
    if (making.optional) return undefined;
    const options: ChosenFood[] = [making, ...making.alternatives];
    const had = options.find((option) => {
      const [amount] = makingsOf({ ...dish, makings: [making] }, foods, () => option);
      return amount?.ok && amount.purchasedG.middle * portions <= (goodG.get(option.food) ?? 0) + MASS_TOLERANCE_G;
    });
    return had ?? making;
  };
}

/** g of each food that are known to be good on a day. */
function goodMasses(lots: Iterable<LotState>, on: CivilDate): Map<string, number> {
  const goodG = new Map<string, number>();
  for (const { food, keeps, leftG, since } of lots) {
    if (food === undefined || since > on || !keeps?.ok || isGoneOff(keeps, on)) continue;
    goodG.set(food, (goodG.get(food) ?? 0) + leftG);
  }
  return goodG;
}

/** Takes as much as the good lots have, and says how much they fall short. */
function takeUpTo(
  lots: Iterable<LotState>,
  food: Food,
  massG: number,
  on: CivilDate,
): { readonly movements: readonly Movement[]; readonly shortG: number } {
  const all = [...lots];
  const taken = take(all, food, massG, on);
  if (taken.ok) return { movements: taken.movements, shortG: 0 };
  const thereG = massG - taken.shortG;
  const part = thereG > MASS_TOLERANCE_G ? take(all, food, thereG, on) : undefined;
  return { movements: part?.ok ? part.movements : [], shortG: part?.ok ? taken.shortG : massG };
}

/** Movements of taking as the uses of a cooking: what was opened and moved goes with what was used. */
function toUses(movements: readonly Movement[]): Uses {
  return movements.flatMap((movement): Uses => {
    if (movement.kind !== "used") return [];
    const { lot, massG } = movement;
    const opens = movements.some((each) => each.kind === "opened" && each.lot === lot);
    const moved = movements.find((each) => each.kind === "moved" && each.lot === lot);
    const to = moved?.kind === "moved" ? moved.to : undefined;
    return [{ lot, massG, ...(opens && { opens }), ...(to !== undefined && { movesTo: to }) }];
  });
}

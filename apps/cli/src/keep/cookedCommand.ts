import type { Dish } from "halfloaf/dish";
import { type SittingKind, sharePortions } from "halfloaf/kitchen";
import { type CookWish, cook, menuOn, toCookWish } from "halfloaf/kitchen/record";
import { findDish } from "../card/findDish.ts";
import type { ExitCode } from "../exitCodes.ts";
import type { Terminal } from "../output/Terminal.ts";
import { type Found, refuse } from "../words/Fault.ts";
import {
  tellManyDishes,
  tellNoAmount,
  tellNoSittingNamed,
  tellNothingToCook,
  tellNoWeekThen,
} from "../words/keepFaultWords.ts";
import { findEater } from "./findEater.ts";
import { type AskedItem, amountG, findItem } from "./Item.ts";
import { isAwayAt } from "./isAwayAt.ts";
import type { KeepAsk } from "./KeepAsk.ts";
import type { OpenKeep } from "./openKeep.ts";
import { runKeep } from "./runKeep.ts";
import { writeAct } from "./writeAct.ts";

/** A cooking that was done. */
export interface CookedAsk extends KeepAsk {
  /** Ids or titles; none = what the accepted week has for the day and is not cooked yet. */
  readonly dishes: readonly string[];
  readonly portions?: number;
  readonly sitting?: SittingKind;
  /** What was really used where that differed. */
  readonly really: readonly AskedItem[];
  /** Who ate at once and how many portions: an eater, or "guest". */
  readonly ate: readonly AskedItem[];
  /** True: all ate at once who were to eat of it at that sitting. */
  readonly ateAsPlanned: boolean;
}

/** Books cookings: makings leave the stores first expired first out and become portions that keep as the dish says. */
export function cookedCommand(ask: CookedAsk, terminal: Terminal): Promise<ExitCode> {
  return runKeep(ask, terminal, async (open) => {
    const wishes = findWishes(ask, open);
    if (!wishes.ok) return wishes;
    const [first, ...others] = wishes.value;
    const single = ask.portions !== undefined || ask.really.length > 0 || ask.ate.length > 0;
    if (first === undefined)
      return refuse(
        menuOn(open.state, open.day) === undefined ? tellNoWeekThen(open.day, "name the dish") : tellNothingToCook(),
      );
    if (single && others.length > 0) return refuse(tellManyDishes());
    return writeAct(open, terminal.page, (pen) => {
      const rows = wishes.value.flatMap((wish) => {
        // Each cooking takes of what those before it left.
        const { cooked, boxed, eaten } = cook(open.kept.events.state, open.tables.foods, wish, pen);
        open.kept.events.add([cooked]);
        return [cooked, ...boxed, ...(eaten === undefined ? [] : [eaten])];
      });
      return { ok: true, value: { rows } };
    });
  });
}

function findWishes(ask: CookedAsk, open: OpenKeep): Found<CookWish[]> {
  const dishes = ask.dishes.map((word) => findDish(word, open.tables.dishes));
  const really = readReally(ask, open);
  const ate = readAte(ask, open);
  const faults = [...dishes, really, ate].flatMap((one) => (one.ok ? [] : one.faults));
  if (faults.length > 0 || !really.ok || !ate.ok) return { ok: false, faults };
  const named = dishes.flatMap((one) => (one.ok ? [one.value] : []));
  const told = ask.portions === undefined ? {} : { portions: ask.portions };
  const bare =
    named.length === 0
      ? openBatches(ask, open).map((wish) => ({ ...wish, ...told }))
      : named.map((dish) => toWish(dish, ask, open));
  if (ate.value.length > 0 && bare.some(({ sitting }) => sitting === undefined)) return refuse(tellNoSittingNamed());
  const wishes = bare.map((wish): CookWish => {
    const plates = ate.value.length > 0 ? ate.value : ask.ateAsPlanned ? plannedPlates(wish, open) : [];
    return { ...wish, really: really.value, plates };
  });
  return { ok: true, value: wishes };
}

/** A batch of the accepted week that is cooked and not bought cooked, with its place. */
function openBatches(ask: CookedAsk, open: OpenKeep, dish?: Dish): CookWish[] {
  const week = menuOn(open.state, open.day)?.week;
  const done = [...open.state.cookings.values()];
  return (week?.batches ?? []).flatMap((batch, at): CookWish[] => {
    const isIt =
      batch.putBy === undefined &&
      (dish === undefined ? batch.date === open.day : batch.dish === dish.id) &&
      (ask.sitting === undefined || batch.kind === ask.sitting) &&
      !done.some((one) => one.dish === batch.dish && one.batch === at && one.on >= (week?.from ?? ""));
    const own = isIt ? open.tables.dishes.find(({ id }) => id === batch.dish) : undefined;
    const wish = own === undefined || week === undefined ? undefined : toCookWish(week, at, own);
    return wish === undefined ? [] : [{ ...wish, on: open.day }];
  });
}

/** A dish as the week has it nearest to the day, else by itself. */
function toWish(dish: Dish, ask: CookedAsk, open: OpenKeep): CookWish {
  const week = menuOn(open.state, open.day)?.week;
  const dayOf = ({ batch }: CookWish): string => week?.batches[batch ?? -1]?.date ?? "";
  const planned = openBatches(ask, open, dish);
  const batch = planned.find((wish) => dayOf(wish) === open.day) ?? planned[0];
  const portions = ask.portions ?? batch?.portions ?? dish.portions;
  if (batch !== undefined) return { ...batch, portions, ...(ask.sitting !== undefined && { sitting: ask.sitting }) };
  return { dish, portions, on: open.day, ...(ask.sitting !== undefined && { sitting: ask.sitting }) };
}

function readReally({ really }: CookedAsk, open: OpenKeep): Found<Record<string, number>> {
  const masses: Record<string, number> = {};
  for (const asked of really) {
    const { amount } = asked;
    const item = findItem(asked.name, open);
    if (!item.ok) return item;
    if (amount === undefined) return refuse(tellNoAmount(asked.text));
    const food =
      item.value.kind === "lot" ? item.value.lot.food : item.value.kind === "food" ? item.value.food : undefined;
    if (food === undefined) return refuse(tellNoAmount(asked.text));
    masses[food] = amountG(amount, { kind: "food", food }, open);
  }
  return { ok: true, value: masses };
}

type Plates = NonNullable<CookWish["plates"]>;

function readAte({ ate }: CookedAsk, open: OpenKeep): Found<Plates> {
  const found = ate.map(({ name, amount }): Found<Plates[number]> => {
    const portions = amount?.value ?? 1;
    if (name.trim().toLowerCase() === "guest") return { ok: true, value: { portions } };
    const eater = findEater(name, open.edited);
    return eater.ok ? { ok: true, value: { eater: eater.value, portions } } : eater;
  });
  const faults = found.flatMap((one) => (one.ok ? [] : one.faults));
  return faults.length > 0
    ? { ok: false, faults }
    : { ok: true, value: found.flatMap((one) => (one.ok ? [one.value] : [])) };
}

/** The plates that the week has of a batch at the sitting it is cooked for, without those of who is told to be away. */
function plannedPlates({ batch, sitting }: CookWish, open: OpenKeep): Plates {
  const week = menuOn(open.state, open.day)?.week;
  const sittings = (week?.sittings ?? []).filter(
    (one) => one.batch === batch && one.kind === sitting && one.date === open.day && batch !== undefined,
  );
  return sittings
    .flatMap(sharePortions)
    .filter(({ eater }) => sitting === undefined || !isAwayAt(open.state, { on: open.day, sitting }, eater))
    .map(({ eater, portions }) =>
      open.edited.eaters.some(({ id }) => id === eater) ? { eater, portions } : { portions },
    );
}

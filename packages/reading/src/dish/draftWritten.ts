import type { Dish } from "halfloaf/dish";
import { told } from "../method/DraftStep.ts";
import type { DishDraft } from "./DishDraft.ts";
import type { DishText } from "./DishText.ts";

/** A draft of a dish that this program wrote: every field is told. */
export function draftWritten(dish: Dish, { form, makings, method, unread }: DishText): DishDraft {
  const places = new Map<string, number[]>();
  for (const [at, { food, alternatives }] of dish.makings.entries()) {
    for (const id of [food, ...alternatives.map((each) => each.food)]) places.set(id, [...(places.get(id) ?? []), at]);
  }
  return {
    form,
    id: told(dish.id),
    title: told(dish.title),
    cooking: told(dish.cooking),
    manner: told(dish.manner),
    fits: told(dish.fits),
    main: told(dish.main),
    portions: told(dish.portions),
    portionMassG: told(dish.portionMassG),
    ...(dish.statedMinutes === undefined ? {} : { statedMinutes: told(dish.statedMinutes) }),
    makings: dish.makings.map((making, at) => ({
      passage: makings[at] ?? { text: making.food, path: ["makings", at] },
      name: making.food,
      food: told(making.food),
      offers: [making.food],
      amount: told(making.amount),
      ...(making.as === undefined ? {} : { as: told(making.as) }),
      ...(making.cut === undefined ? {} : { cut: told(making.cut) }),
      ...(making.retention === undefined ? {} : { retention: told(making.retention) }),
      optional: told(making.optional),
      alternatives: told(making.alternatives),
      unread: [],
    })),
    method: dish.method.map((step, at) => ({
      id: step.id,
      text: step.text,
      path: method[at]?.path ?? ["method", at],
      start: 0,
      end: step.text.length,
      kind: told(step.kind),
      minutes: told(step.minutes),
      hands: told(step.hands),
      kit: told(step.kit),
      ...(step.tempC === undefined ? {} : { tempC: told(step.tempC) }),
      after: told(step.after),
      ahead: told(step.ahead),
      ...(step.holdMinutes === undefined ? {} : { holdMinutes: told(step.holdMinutes) }),
      makings: told([...new Set(step.foods.flatMap((food) => places.get(food) ?? []))]),
      foods: told(step.foods),
    })),
    keeps: told(dish.keeps),
    travels: told(dish.travels),
    served: told(dish.served),
    cautions: told(dish.cautions),
    ...(dish.note === undefined ? {} : { note: told(dish.note) }),
    unread,
    issues: [],
  };
}

import type { DishChoices, DraftOptions } from "@halfloaf/reading";
import {
  chooseFoods,
  type DishDraft,
  type DishText,
  type DraftMaking,
  type DraftStep,
  draftDish,
  type Field,
  type MakingChoice,
  toDish,
} from "@halfloaf/reading";
import { foodName } from "halfloaf/food";
import { tellOpen } from "../../words/readWords.ts";
import type { Doubt, ReadDish, ReadMaking, ReadStep } from "../ReadReport.ts";

/** A dish as texts tell it, with what a person settled, beside what of it went into which field. */
export function toReadDish(text: DishText, choices: DishChoices, options: DraftOptions): ReadDish {
  const draft = chooseFoods(draftDish(text, options), choices, options);
  const made = toDish(draft, choices, options);
  const { title, portions, portionMassG, main, statedMinutes } = draft;
  const settled = new Set(Object.keys(choices));
  return {
    id: choices.id ?? draft.id.value,
    ...takeField("title", choices.title ?? title?.value),
    ...takeField("portions", choices.portions ?? portions?.value),
    ...takeField("portionMassG", portionMassG?.value),
    ...(main && { main: named(main.value, options) }),
    ...takeField("statedMinutes", statedMinutes?.value),
    manner: draft.manner.value,
    fits: [...draft.fits.value],
    cooking: draft.cooking.value,
    doubts: doubtsOf(draft, [
      "title",
      "portions",
      "portionMassG",
      "main",
      "statedMinutes",
      "manner",
      "fits",
      "cooking",
      "keeps",
      "travels",
      "served",
    ]).filter(({ field }) => !settled.has(field)),
    makings: draft.makings.map((making, at) => toReadMaking(making, at, choices.makings?.[at], options)),
    steps: draft.method.map(toReadStep),
    unread: draft.unread.map((passage) => passage.text),
    issues: [...draft.issues].map(toMisfit),
    open: made.ok
      ? []
      : made.issues.map((issue) =>
          tellOpen(
            issue,
            draft.makings.map(({ passage }) => passage.text),
          ),
        ),
    ...(made.ok && { dish: made.value }),
  };
}

/** A making as read, under the number by which it is settled. */
export function toReadMaking(
  making: DraftMaking,
  at: number,
  settled: MakingChoice | undefined,
  options: DraftOptions,
): ReadMaking {
  const choice = settled === "left-out" ? undefined : settled;
  const amount = choice?.amount ?? making.amount?.value;
  const doubts = doubtsOf(making, ["food", "amount", "as", "cut", "retention", "optional"]);
  return {
    number: at + 1,
    text: making.passage.text,
    ...takeField("heading", making.passage.heading),
    ...(settled === "left-out" && { leftOut: true as const }),
    name: making.name,
    ...(making.food && { food: named(making.food.value, options) }),
    offers: making.offers.map((id) => named(id, options)),
    ...(amount !== undefined && { amount }),
    ...(making.as && choice?.amount === undefined && { as: making.as.value }),
    ...takeField("cut", making.cut?.value),
    optional: making.optional.value,
    alternatives: making.alternatives.value.map(({ food }) => named(food, options)),
    doubts: choice?.amount === undefined ? doubts : doubts.filter(({ field }) => field !== "amount" && field !== "as"),
    // What is part of the name of the food that was found went into it.
    unread: making.unread.filter((piece) => !nameOf(making.food?.value, options).includes(piece.toLowerCase())),
  };
}

function toReadStep(step: DraftStep): ReadStep {
  return {
    id: step.id,
    text: step.text,
    kind: step.kind.value,
    minutes: { ...step.minutes.value },
    hands: step.hands.value,
    kit: [...step.kit.value],
    ...takeField("tempC", step.tempC?.value),
    after: [...step.after.value],
    ...takeField("holdMinutes", step.holdMinutes?.value),
    ahead: step.ahead.value,
    doubts: doubtsOf(step, ["kind", "minutes", "hands", "kit", "tempC", "after", "ahead", "holdMinutes", "makings"]),
  };
}

function doubtsOf<Draft extends DishDraft | DraftMaking | DraftStep>(
  draft: Draft,
  fields: readonly (keyof Draft & string)[],
): Doubt[] {
  return fields.flatMap((field): Doubt[] => {
    const { sure, reason } = (draft[field] ?? { sure: "sure" }) as Field<unknown>;
    return sure === "sure" ? [] : [{ field, sure, reason: reason ?? "" }];
  });
}

function nameOf(food: string | undefined, options: DraftOptions): string {
  return food === undefined ? "" : named(food, options).name.toLowerCase();
}

function named(id: string, { foods, english }: DraftOptions): { id: string; name: string } {
  return { id, name: foodName(foods.get(id), english) ?? id };
}

function toMisfit<Path>({
  path,
  ...issue
}: {
  readonly path: readonly Path[];
  readonly code: string;
  readonly expected: string;
  readonly received: string;
}) {
  return { code: issue.code, path: [...path], expected: issue.expected, received: issue.received };
}

function takeField<Key extends string, Value>(key: Key, value: Value | undefined): { readonly [name in Key]?: Value } {
  return (value === undefined ? {} : { [key]: value }) as { readonly [name in Key]?: Value };
}

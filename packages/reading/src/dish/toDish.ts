import { checkDish, Dish, type Making, type Step } from "halfloaf/dish";
import { type Issue, type Parsed, parseWith } from "halfloaf/quantity";
import type { DraftStep } from "../method/DraftStep.ts";
import type { DishDraft, DraftMaking, DraftOptions } from "./DishDraft.ts";
import { withFood } from "./readMaking.ts";
import { reckonMain, reckonPortionMassG } from "./reckonWhole.ts";

/** What a person settles of one making; "left-out" takes it out of the dish. */
export type MakingChoice = "left-out" | Partial<Pick<Making, "food" | "amount" | "as" | "cut" | "optional">>;
/** What a person settles of one step; "left-out" takes it out of the method. */
export type StepChoice =
  | "left-out"
  | Partial<Pick<Step, "text" | "kind" | "minutes" | "hands" | "kit" | "tempC" | "after" | "holdMinutes" | "ahead">>;

/** What a person settles of a draft; what is absent stays as drafted. Makings and steps go by their positions in the draft. */
export interface DishChoices extends Partial<Omit<Dish, "makings" | "method">> {
  readonly makings?: Readonly<Record<number, MakingChoice>>;
  readonly steps?: Readonly<Record<number, StepChoice>>;
}

/**
 * The draft with what was chosen put in: a chosen food brings its own amount where the line tells it in its pieces, and what
 * follows from the foods (the main one, the mass of a portion) is reckoned again unless it was told.
 */
export function chooseFoods(
  draft: DishDraft,
  choices: DishChoices,
  options: Pick<DraftOptions, "foods" | "english">,
): DishDraft {
  const makings = draft.makings.map((making, at) => {
    const choice = choices.makings?.[at];
    if (choice === undefined || choice === "left-out" || choice.food === undefined) return making;
    return withFood(making, choice.food, options, "sure");
  });
  const kept = makings.filter((_, at) => choices.makings?.[at] !== "left-out");
  const portions = choices.portions ?? draft.portions?.value;
  const main = draft.main?.sure === "sure" ? draft.main : reckonMain(kept, options.foods);
  const portionMassG =
    draft.portionMassG?.sure === "sure" ? draft.portionMassG : reckonPortionMassG(kept, portions, options.foods);
  return { ...draft, makings, ...(main && { main }), ...(portionMassG && { portionMassG }) };
}

/**
 * The dish of a draft with what a person chose, or everything that still keeps it from being one.
 *
 * Guesses are taken over as drafted; who shows the draft shows them first. A food or amount that is in doubt, portions that
 * aren't told and a title that is missing are never guessed: issues `food-unsure` (expected: the nearest foods), `amount-unsure`,
 * `portions-unsaid`, `title-unsaid`, `mass-unknown`, `makings-none`, `method-none`, with paths into the draft. A dish that is
 * given passes the schema and `checkDish`; the issues of these are given as they are.
 */
export function toDish(
  draft: DishDraft,
  choices: DishChoices,
  options: Pick<DraftOptions, "foods" | "english">,
): Parsed<Dish> {
  const settled = chooseFoods(draft, choices, options);
  const makings = settled.makings.map((making, at) => toMaking(making, at, choices.makings?.[at], options));
  const issues = [...missingOf(settled, choices), ...makings.flatMap((each) => each.issues)];
  if (issues.length > 0) return { ok: false, issues };
  const { makings: _, steps: __, ...own } = choices;
  const dish = {
    ...ownFields(settled),
    ...own,
    makings: makings.flatMap(({ making }) => making ?? []),
    method: toMethod(
      settled.method,
      choices.steps ?? {},
      makings.map(({ making }) => making),
    ),
  };
  const parsed = parseWith(Dish, dish);
  if (!parsed.ok) return parsed;
  const faults = checkDish(parsed.value, options.foods);
  return faults.length === 0 ? parsed : { ok: false, issues: faults };
}

function missingOf(draft: DishDraft, choices: DishChoices): Issue[] {
  const missing = (code: string, key: string, expected: string, received = ""): Issue => ({
    code,
    path: [key],
    expected,
    received,
  });
  const leftOut = (chosen: Readonly<Record<number, unknown>> | undefined, at: number) => chosen?.[at] === "left-out";
  const { title, main, portions, portionMassG } = { ...draft, ...choices };
  return [
    ...(title === undefined ? [missing("title-unsaid", "title", "a title")] : []),
    ...(portions === undefined
      ? [missing("portions-unsaid", "portions", "a number of portions", draft.yieldText)]
      : []),
    ...(portions !== undefined && (portionMassG === undefined || main === undefined)
      ? [missing("mass-unknown", "portionMassG", "a making whose mass is known")]
      : []),
    ...(draft.makings.every((_, at) => leftOut(choices.makings, at))
      ? [missing("makings-none", "makings", "a making")]
      : []),
    ...(draft.method.every((_, at) => leftOut(choices.steps, at)) ? [missing("method-none", "method", "a step")] : []),
  ];
}

function ownFields(draft: DishDraft): Record<string, unknown> {
  const { form, yieldText, makings, method, unread, issues, ...fields } = draft;
  return Object.fromEntries(Object.entries(fields).map(([key, field]) => [key, field.value]));
}

function toMaking(
  draft: DraftMaking,
  at: number,
  choice: MakingChoice | undefined,
  options: Pick<DraftOptions, "foods" | "english">,
): { readonly making?: Making; readonly issues: readonly Issue[] } {
  if (choice === "left-out") return { issues: [] };
  const issue = (code: string, key: string, expected: string, received: string): Issue => ({
    code,
    path: ["makings", at, key],
    expected,
    received,
  });
  const food = draft.food?.value;
  const amount = choice?.amount ?? draft.amount?.value;
  const issues = [
    ...(food === undefined
      ? [issue("food-unsure", "food", draft.offers.join(", ") || "a food of the table", draft.name)]
      : []),
    ...(food !== undefined && !options.foods.has(food)
      ? [issue("food-unknown", "food", "a food of the table", food)]
      : []),
    ...(amount === undefined && !(food === undefined && isToldOfNearest(draft, options))
      ? [issue("amount-unsure", "amount", "an amount", draft.passage.text)]
      : []),
  ];
  if (food === undefined || amount === undefined || issues.length > 0) return { issues };
  const { cut, as, retention, optional, alternatives } = draft;
  const making: Making = {
    food,
    amount,
    ...(as !== undefined && choice?.amount === undefined ? { as: as.value } : {}),
    ...(cut === undefined ? {} : { cut: cut.value }),
    ...(retention === undefined ? {} : { retention: retention.value }),
    optional: optional.value,
    alternatives: [...alternatives.value],
  };
  return { making: choice === undefined ? making : { ...making, ...choice, food, amount }, issues: [] };
}

/** True where the amount follows once a food is chosen, as it does for the nearest: "4 slices" of one bread or the other. */
function isToldOfNearest(draft: DraftMaking, options: Pick<DraftOptions, "foods" | "english">): boolean {
  return draft.offers[0] !== undefined && withFood(draft, draft.offers[0], options, "likely").amount !== undefined;
}

/** The steps; what waited for one that is left out waits for what that one waited for. */
function toMethod(
  drafts: readonly DraftStep[],
  choices: Readonly<Record<number, StepChoice>>,
  makings: readonly (Making | undefined)[],
): Step[] {
  const left = new Map(drafts.filter((_, at) => choices[at] === "left-out").map((step) => [step.id, step.after.value]));
  const follow = (ids: readonly string[], seen: ReadonlySet<string> = new Set()): string[] =>
    ids.flatMap((id) => {
      const before = left.get(id);
      if (before === undefined) return [id];
      return seen.has(id) ? [] : follow(before, new Set([...seen, id]));
    });
  return drafts.flatMap((step, at) => {
    const choice = choices[at];
    if (choice === "left-out") return [];
    const foods = step.foods?.value ?? step.makings.value.flatMap((place) => makings[place]?.food ?? []);
    const whole = { ...toStep(step, foods), ...choice };
    return [{ ...whole, after: [...new Set(follow(whole.after))] }];
  });
}

function toStep(step: DraftStep, foods: readonly string[]): Step {
  return {
    id: step.id,
    text: step.text,
    kind: step.kind.value,
    minutes: step.minutes.value,
    hands: step.hands.value,
    kit: [...step.kit.value],
    ...(step.tempC === undefined ? {} : { tempC: step.tempC.value }),
    after: [...step.after.value],
    ...(step.holdMinutes === undefined ? {} : { holdMinutes: step.holdMinutes.value }),
    ahead: step.ahead.value,
    foods: [...new Set(foods)],
  };
}

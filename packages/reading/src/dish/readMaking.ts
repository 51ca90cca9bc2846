import type { Making } from "halfloaf/dish";
import { findFoodOfChoice } from "../find/findFoodOfChoice.ts";
import type { MakingsChoice, MakingsLine } from "../line/makingsLine.ts";
import { readMakingsLine } from "../line/readMakingsLine.ts";
import { reckoned, told } from "../method/DraftStep.ts";
import type { DraftMaking, DraftOptions } from "./DishDraft.ts";
import type { Passage } from "./DishText.ts";
import { toMakingAmount } from "./toMakingAmount.ts";

type Alternative = Making["alternatives"][number];

/** The foods nearest to a name, and the one that is meant beyond doubt. */
interface Offers {
  readonly offers: readonly string[];
  readonly sure?: string;
}

/** The makings that passages tell; a line that only heads others stands over those after it. */
export function readMakings(passages: readonly Passage[], options: DraftOptions): DraftMaking[] {
  const makings: DraftMaking[] = [];
  let heading: string | undefined;
  for (const passage of passages) {
    const line = readMakingsLine(passage.text);
    if (line.kind === "heading") heading = line.heading.text;
    if (line.kind !== "making") continue;
    const over = line.heading?.text ?? passage.heading ?? heading;
    const whole = over === undefined ? passage : { ...passage, heading: over };
    for (const each of splitPair(line, passage.text, options)) makings.push(readMaking(whole, each, options));
  }
  return makings;
}

/**
 * "Salt and pepper", "1 tsp each cumin and paprika": two makings, where no amount is told or that of each, the whole names
 * no food, and each half is one beyond doubt.
 */
function splitPair(line: MakingsLine, text: string, options: DraftOptions): MakingsLine[] {
  const [first, ...others] = line.choices;
  const names = first.name.text.split(/ (?:and|&) /);
  const isOfEach = /\beach\b/i.test(text.slice(0, first.name.span.start));
  if (
    (first.amount !== undefined && !isOfEach) ||
    others.length > 0 ||
    names.length !== 2 ||
    findOffers(line, first, options).sure !== undefined
  )
    return [line];
  const halves = names.map((text) => ({ ...first, name: { ...first.name, text } }));
  if (halves.some((choice) => findOffers(line, choice, options).sure === undefined)) return [line];
  return halves.map((choice) => ({ ...line, choices: [choice] }));
}

function readMaking(passage: Passage, line: MakingsLine, options: DraftOptions): DraftMaking {
  const [first, ...others] = line.choices;
  const { offers, sure } = findOffers(line, first, options);
  const taken = others.map((choice) => ({ choice, alternative: toAlternative(line, choice, options) }));
  const cut = [...(first.part === undefined ? [] : [first.part]), ...line.preparation]
    .map(({ text }) => text)
    .join(", ");
  const making: DraftMaking = {
    passage,
    line,
    name: first.name.text,
    offers,
    ...(cut === "" ? {} : { cut: told(cut) }),
    optional: isOptional(line, passage.heading),
    alternatives: reckoned(
      taken.flatMap(({ alternative }) => alternative ?? []),
      "likely",
      "alternatives-by-name",
    ),
    unread: [
      ...first.states.map(({ text }) => text).filter((text) => !isOfFood(text, first.name.text, sure, options)),
      ...line.notes.map(({ text }) => text),
      ...taken.flatMap(({ choice, alternative }) => (alternative === undefined ? [choice.name.text] : [])),
    ],
  };
  return withFood(making, sure, options, "likely");
}

/** True for a state that the names of the found food tell as well: "tinned" of tomatoes that are found as tinned ones. */
function isOfFood(state: string, name: string, food: string | undefined, { index }: DraftOptions): boolean {
  if (food === undefined) return false;
  const { fold } = index.tongue;
  const told = index.names
    .filter((each) => each.food.id === food)
    .flatMap(({ words, kept, qualifiers }) => [...words, ...kept, ...qualifiers]);
  // A word may be written otherwise before a name, as "ground" is before a meat.
  const own = fold(`${state} ${name}`).slice(0, fold(state).length);
  return own.every((word) => told.includes(word));
}

/** The making with a food for it, and the amount that its line tells of that food; without a food the amount stays open. */
export function withFood(
  making: DraftMaking,
  food: string | undefined,
  options: Pick<DraftOptions, "foods" | "english">,
  sure: "likely" | "sure",
): DraftMaking {
  const { food: _, amount: __, as: ___, ...rest } = making;
  const field = food === undefined ? {} : { food: sure === "sure" ? told(food) : reckoned(food, sure, "food-by-name") };
  const { line } = making;
  if (line === undefined) return { ...making, ...field };
  const row = food === undefined ? undefined : options.foods.get(food);
  return { ...rest, ...field, ...toMakingAmount(line, line.choices[0], row, options.english) };
}

function findOffers(line: MakingsLine, choice: MakingsChoice, { index, english }: DraftOptions): Offers {
  const finding = findFoodOfChoice(index, line, choice, english);
  const offers = finding.nearest.map(({ food }) => food);
  return finding.kind === "found" ? { offers, sure: finding.best.food } : { offers };
}

/** An alternative without an amount of its own takes that of the food it stands in for. */
function toAlternative(line: MakingsLine, choice: MakingsChoice, options: DraftOptions): Alternative | undefined {
  const amount = choice.amount ?? line.choices[0].amount;
  const whole = amount === undefined ? choice : { ...choice, amount };
  const { sure: food } = findOffers(line, whole, options);
  if (food === undefined) return undefined;
  const found = toMakingAmount(line, whole, options.foods.get(food), options.english);
  if (found === undefined) return undefined;
  return { food, amount: found.amount.value, ...(found.as === undefined ? {} : { as: found.as.value }) };
}

function isOptional({ optional, purpose }: MakingsLine, heading = ""): DraftMaking["optional"] {
  if (optional !== undefined || /\b(?:optional|if (?:you )?(?:like|want(?:ed)?))\b/i.test(heading)) return told(true);
  return /garnish|serve|decorate|scatter|sprinkle/i.test(purpose?.text ?? "")
    ? reckoned(true, "guess", "optional-by-purpose")
    : reckoned(false, "likely", "optional-unsaid");
}

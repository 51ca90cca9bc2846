import { NAME_ENDS } from "../line/lineWords.ts";
import type { MakingsChoice, MakingsLine } from "../line/makingsLine.ts";
import type { English } from "../line/toAmount.ts";
import { UNIT_WORDS } from "../line/unitWords.ts";
import type { FoodIndex } from "./FoodIndex.ts";
import { type FoodFinding, type FoodQuery, findFood } from "./findFood.ts";
import type { Standing } from "./foodSynonyms.ts";

/**
 * Finds the food that a choice of a makings line means, with all that the line says of it: states, preparation, pack,
 * unit. Where juice is asked of a fruit, the juice is looked for. Where "and" joins the names of two foods of the table
 * and no food bears the whole name, both are offered, as unsure: a line holds one food. Lists put the noun first, so what
 * follows it after a comma may belong to its name ("sugar, brown").
 */
export function findFoodOfChoice(
  index: FoodIndex,
  line: Pick<MakingsLine, "preparation" | "notes" | "purpose">,
  choice: MakingsChoice,
  english: English,
): FoodFinding {
  const query = toQuery(line, choice, english);
  const whole = turnedRound(index, line, query) ?? findFood(index, query);
  if (whole.kind === "found" || !choice.together) return whole;
  const apart = choice.together.map(({ text }) => findFood(index, { ...query, name: text }));
  const found = apart.flatMap((finding) => (finding.kind === "found" ? [finding.best] : []));
  const [first] = found;
  return first && found.length === apart.length ? { kind: "unsure", best: first, nearest: found.slice(0, 3) } : whole;
}

/**
 * The food that the name means with what follows it put before it, where that surely is another one. Where a word that
 * nobody understands follows, it may be of a food that the table has not: then nothing is sure.
 */
function turnedRound(
  index: FoodIndex,
  { notes, purpose }: Pick<MakingsLine, "notes" | "purpose">,
  query: FoodQuery,
): FoodFinding | undefined {
  // What was understood, such as "chopped", is done to the food and is no part of its name.
  // "Plus extra to serve" begins with a word that ends a name, so it is a remark.
  const strange = notes
    .filter(
      ({ reason, text }) => reason === "not-understood" && !NAME_ENDS.has(text.split(" ")[0]?.toLowerCase() ?? ""),
    )
    .map(({ text }) => text);
  const followers = purpose === undefined ? strange : [...strange, purpose.text.replace(/^for /i, "")];
  const plain = findFood(index, query);
  for (const text of followers.filter((each) => !each.includes(" "))) {
    const turned = findFood(index, { ...query, name: `${text} ${query.name}` });
    if (turned.kind === "found" && turned.best.food !== plain.nearest[0]?.food) return turned;
  }
  return plain.kind === "found" && strange.length > 0 ? { ...plain, kind: "unsure" } : undefined;
}

function toQuery(
  { preparation }: Pick<MakingsLine, "preparation">,
  choice: MakingsChoice,
  english: English,
): FoodQuery {
  const unit = choice.amount?.told[0]?.parts[0]?.unit;
  const states = choice.states.map(({ text }) => text);
  const prepared = preparation.map(({ text }) => text);
  const part = unit !== undefined && UNIT_WORDS[unit].kind === "part" ? UNIT_WORDS[unit].forms.slice(0, 1) : [];
  const asked = choice.part?.text ?? "";
  const juice = /\bjuice\b/i.test(asked) && !/\b(?:zest|rind|peel)\b/i.test(asked);
  return {
    name: juice ? `${choice.name.text} juice` : choice.name.text,
    said: [...states, ...part],
    prepared,
    standing: standingOf(choice, [...states, ...prepared]),
    tinned: unit === "tin" || unit === "can",
    english,
  };
}

const BUNCHED = new Set(["sprig", "leaf", "bunch", "handful", "stalk", "stem", "branch", "strand"]);
const CUT = /\b(?:chopped|torn|shredded|picked|minced|snipped|leaves|grated|peeled|fresh)\b/i;

function standingOf(choice: MakingsChoice, said: readonly string[]): Standing {
  const part = choice.amount?.told[0]?.parts[0];
  if (said.some((text) => CUT.test(text)) || (part?.unit !== undefined && BUNCHED.has(part.unit))) return "bunch";
  if (part === undefined) return "spoon";
  if (part.unit === undefined) return "counted";
  if (part.unit === "teaspoon" || part.unit === "tablespoon") return "spoon";
  return UNIT_WORDS[part.unit].kind === "loose" ? "spoon" : "bunch";
}
